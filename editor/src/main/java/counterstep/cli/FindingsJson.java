package counterstep.cli;

import counterstep.check.Finding;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Findings as other programs read them, steps and items by id. */
final class FindingsJson {
    private FindingsJson() {}

    static Map<String, Object> of(List<Finding> findings) {
        return Map.of("findings", findings.stream().map(FindingsJson::one).toList());
    }

    private static Map<String, Object> one(Finding finding) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("check", finding.check());
        json.put("severity", finding.severity().word());
        json.put("message", finding.message());
        json.put("steps", finding.steps().stream().map(Object::toString).toList());
        json.put("items", finding.items().stream().map(Object::toString).toList());
        json.put("witness", Optional.empty());
        json.put("fix", Optional.empty());
        json.put("waived", finding.waived().isPresent());
        return json;
    }
}
