package counterstep.export.dita;

import counterstep.export.guide.Sentences;
import counterstep.model.Hazard;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Sets hazards, the most severe first, as the hazard statements of DITA. */
final class Notices {
    private final Xml xml;

    Notices(Xml xml) {
        this.xml = xml;
    }

    void set(List<Hazard> hazards) {
        hazards.stream()
                .sorted(Comparator.comparing(Hazard::signal).reversed())
                .forEach(this::statement);
    }

    private void statement(Hazard hazard) {
        String type = hazard.signal().name().toLowerCase(Locale.ROOT);
        if (hazard.hazard().isBlank() || hazard.avoidance().isBlank()) {
            incomplete(type, hazard);
            return;
        }
        xml.open("hazardstatement", "type", type).open("messagepanel");
        xml.element("typeofhazard", Sentences.closed(hazard.hazard()));
        xml.stated("consequence", Sentences.closed(hazard.consequence()));
        xml.element("howtoavoid", Sentences.closed(hazard.avoidance()));
        xml.close().close();
    }

    /** A hazard statement must say what and how to avoid it; a note must not. */
    private void incomplete(String type, Hazard hazard) {
        List<String> said =
                List.of(
                        Sentences.closed(hazard.hazard()),
                        Sentences.closed(hazard.consequence()),
                        Sentences.closed(hazard.avoidance()));
        xml.element("note", String.join(" ", said).strip(), "type", type);
    }
}
