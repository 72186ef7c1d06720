package counterstep.export.html;

import counterstep.export.guide.Guide;
import counterstep.export.guide.HazardBlock;
import counterstep.export.guide.NeedRow;
import counterstep.export.guide.PhaseBlock;
import counterstep.export.guide.PlainText;
import counterstep.export.guide.StepBlock;
import counterstep.export.guide.ToolRow;
import counterstep.json.JsonText;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * What the guide says to machines that read pages: a HowTo of schema.org as JSON-LD (W3C), a
 * section for each phase. Photos are left out: they have no address of their own.
 */
final class LinkedData {
    /** What ends a script, or is no sign that a page may have. */
    private static final Pattern NOT_PLAIN = Pattern.compile("[&<>\\p{C}\\p{Zl}\\p{Zp}]");

    private LinkedData() {}

    /** The element, for the head of a page; nothing in it can end it. */
    static String element(Guide guide, String name, String language) {
        String json = JsonText.compact(howTo(guide, name, language));
        return "<script type=\"application/ld+json\">" + closedIn(json) + "</script>";
    }

    private static String closedIn(String json) {
        return NOT_PLAIN.matcher(json).replaceAll(found -> escaped(found.group()));
    }

    private static String escaped(String signs) {
        return signs.chars().mapToObj("\\\\u%04x"::formatted).collect(Collectors.joining());
    }

    private static Map<String, Object> howTo(Guide guide, String name, String language) {
        Map<String, Object> fields = new LinkedHashMap<>();
        fields.put("@context", "https://schema.org");
        fields.putAll(typed("HowTo"));
        fields.put("name", name);
        put(fields, "description", guide.title().summary());
        fields.put("inLanguage", language);
        guide.imprint().revisions().stream()
                .findFirst()
                .ifPresent(
                        newest -> {
                            put(fields, "version", newest.number());
                            put(fields, "dateModified", newest.date());
                        });
        fields.put("identifier", guide.imprint().fingerprint());
        put(fields, "tool", guide.tools().stream().map(LinkedData::tool).toList());
        put(fields, "supply", guide.needs().stream().map(LinkedData::supply).toList());
        List<Map<String, Object>> steps = new ArrayList<>(tips(guide.cautions()));
        guide.phases().forEach(phase -> steps.add(section(phase)));
        fields.put("step", steps);
        return fields;
    }

    private static Map<String, Object> tool(ToolRow row) {
        Map<String, Object> fields = typed("HowToTool");
        fields.put("name", row.name());
        return fields;
    }

    private static Map<String, Object> supply(NeedRow row) {
        Map<String, Object> fields = typed("HowToSupply");
        fields.put("name", row.name());
        put(fields, "requiredQuantity", row.amount());
        return fields;
    }

    private static Map<String, Object> section(PhaseBlock phase) {
        Map<String, Object> fields = typed("HowToSection");
        fields.put("name", phase.title());
        fields.put("itemListElement", phase.steps().stream().map(LinkedData::step).toList());
        return fields;
    }

    private static Map<String, Object> step(StepBlock step) {
        Map<String, Object> fields = typed("HowToStep");
        fields.put("position", step.number());
        fields.put("name", StepSetter.title(step));
        fields.put("url", "#step-" + step.number());
        List<Map<String, Object>> parts = new ArrayList<>(tips(step.hazards()));
        String text = PlainText.written(step.text());
        Map<String, Object> direction = typed("HowToDirection");
        direction.put("text", text.isBlank() ? StepSetter.title(step) : text);
        parts.add(direction);
        fields.put("itemListElement", parts);
        return fields;
    }

    /** A notice is no direction, and must not be lost: schema.org has tips for that. */
    private static List<Map<String, Object>> tips(List<HazardBlock> hazards) {
        return hazards.stream().map(LinkedData::tip).toList();
    }

    private static Map<String, Object> tip(HazardBlock hazard) {
        Map<String, Object> fields = typed("HowToTip");
        fields.put("text", hazard.signal().name() + ": " + String.join(" ", hazard.sentences()));
        return fields;
    }

    private static Map<String, Object> typed(String type) {
        Map<String, Object> fields = new LinkedHashMap<>();
        fields.put("@type", type);
        return fields;
    }

    private static void put(Map<String, Object> fields, String name, String value) {
        if (!value.isBlank()) {
            fields.put(name, value);
        }
    }

    private static void put(Map<String, Object> fields, String name, List<?> values) {
        if (!values.isEmpty()) {
            fields.put(name, values);
        }
    }
}
