package counterstep.json;

import counterstep.model.Hazard;
import java.util.Map;

/** Hazards in a file. */
final class HazardFormat {
    private HazardFormat() {}

    static Hazard read(Value value, Known known) {
        Fields fields = value.fields();
        return new Hazard(
                fields.need("signal").word(Vocabulary.SIGNAL),
                fields.text("hazard"),
                fields.text("consequence"),
                fields.text("avoidance"),
                fields.list("items", known::item),
                fields.extras());
    }

    static Map<String, Object> write(Hazard hazard) {
        return new Out()
                .put("signal", hazard.signal().name())
                .text("hazard", hazard.hazard())
                .text("consequence", hazard.consequence())
                .text("avoidance", hazard.avoidance())
                .ids("items", hazard.items())
                .with(hazard.extras());
    }
}
