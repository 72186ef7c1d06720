package counterstep.cli;

import counterstep.check.Finding;
import counterstep.check.StateWords;
import counterstep.ledger.Witness;
import counterstep.ledger.Witness.Reading;
import counterstep.model.Index;
import counterstep.model.Item;
import counterstep.model.StepId;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A finding as other programs read it, steps and items by id. */
final class FindingJson {
    private FindingJson() {}

    static Map<String, Object> of(Finding finding, Optional<String> fix, Index index) {
        Map<String, Object> json = fault(finding);
        json.put("witness", finding.witness().map(witness -> witness(witness, index)));
        json.put("fix", fix);
        json.put("waived", finding.waived().isPresent());
        return json;
    }

    /** What is wrong, and where. */
    static Map<String, Object> fault(Finding finding) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("check", finding.check());
        json.put("severity", finding.severity().word());
        json.put("message", finding.message());
        json.put("steps", ids(finding.steps()));
        json.put("items", ids(finding.items()));
        return json;
    }

    private static Map<String, Object> witness(Witness witness, Index index) {
        Item about = index.item(witness.about());
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("first", ids(witness.first()));
        json.put("then", witness.then().map(StepId::toString));
        json.put("about", about.id().toString());
        json.put(
                "readings",
                witness.readings().stream().map(reading -> reading(about, reading)).toList());
        json.put("bound", witness.bound());
        return json;
    }

    private static Map<String, Object> reading(Item about, Reading reading) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("after", reading.after().toString());
        json.put("state", StateWords.of(about, reading.state()));
        return json;
    }

    private static List<String> ids(Collection<?> ids) {
        return ids.stream().map(Object::toString).toList();
    }
}
