package counterstep.cli;

import counterstep.review.Mending.Mended;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What was mended and what is found, as other programs read it. */
final class CheckJson {
    private CheckJson() {}

    static Map<String, Object> of(Checked checked) {
        Map<String, Object> json = new LinkedHashMap<>();
        checked.to().ifPresent(to -> json.put("mended", mended(to, checked.mended())));
        json.put(
                "findings",
                checked.review().findings().stream()
                        .map(one -> FindingJson.of(one, checked.fix(one), checked.index()))
                        .toList());
        return json;
    }

    private static Map<String, Object> mended(Path to, List<Mended> fixes) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("file", to.toString());
        json.put("fixes", fixes.stream().map(CheckJson::applied).toList());
        return json;
    }

    private static Map<String, Object> applied(Mended one) {
        Map<String, Object> json = FindingJson.fault(one.finding());
        json.put("fix", one.fix().name());
        return json;
    }
}
