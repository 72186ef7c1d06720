package counterstep.export.markdown;

import static counterstep.export.markdown.Inline.escaped;

import counterstep.export.guide.ActionRow;
import counterstep.export.guide.Blank;
import counterstep.export.guide.HazardBlock;
import counterstep.export.guide.PhotoBlock;
import counterstep.export.guide.StepBlock;
import counterstep.export.guide.ToolTag;
import java.util.List;
import java.util.stream.Collectors;

/** Sets one step: notices first, then title, tool, text, a box for each action, photos. */
final class StepSetter {
    private final Lines lines;
    private final PhotoFiles photos;

    StepSetter(Lines lines, PhotoFiles photos) {
        this.lines = lines;
        this.photos = photos;
    }

    void set(StepBlock step) {
        lines.block(("### " + step.number() + ". " + escaped(step.title())).strip());
        hazards(lines, step.hazards());
        lines.block(tools(step.tools()));
        lines.block(TextSetter.set(step.text()));
        lines.list(step.actions().stream().map(StepSetter::action).toList());
        for (PhotoBlock photo : step.photos()) {
            lines.block(photo(step, photo));
        }
        step.remarks().forEach(remark -> lines.block(escaped(remark)));
        lines.block(String.join("; ", step.then()));
    }

    /** The notices, each a quotation that begins with its signal word. */
    static void hazards(Lines lines, List<HazardBlock> hazards) {
        for (HazardBlock hazard : hazards) {
            String words = escaped(String.join(" ", hazard.sentences()));
            lines.block("> **" + hazard.signal().name() + "**: " + words);
        }
    }

    private static String tools(List<ToolTag> tools) {
        return tools.isEmpty() ? "" : "Tool: " + labels(tools);
    }

    private static String labels(List<ToolTag> tools) {
        return tools.stream().map(tool -> escaped(tool.label())).collect(Collectors.joining(", "));
    }

    private static String action(ActionRow action) {
        StringBuilder line = new StringBuilder("[ ] **" + action.verb() + "**");
        String what = escaped(action.what());
        String details = escaped(String.join(", ", action.details()));
        line.append(what.isEmpty() ? "" : " " + what);
        line.append(details.isEmpty() ? "" : (what.isEmpty() ? " " : ", ") + details);
        action.callouts().forEach(number -> line.append(" (").append(number).append(')'));
        if (!action.tools().isEmpty()) {
            line.append("; tool: ").append(labels(action.tools()));
        }
        boolean bare = what.isEmpty() && details.isEmpty();
        action.blank().ifPresent(blank -> line.append(bare ? " " : "; ").append(reading(blank)));
        return line.toString();
    }

    private static String reading(Blank blank) {
        String label = blank.label().isBlank() ? "reading" : escaped(blank.label());
        if (blank.drawn()) {
            return label;
        }
        return (label + ": \\_\\_\\_\\_\\_\\_\\_\\_ " + escaped(blank.unit())).strip();
    }

    private String photo(StepBlock step, PhotoBlock photo) {
        String seen = photo.seenFrom().isBlank() ? "" : "seen from " + escaped(photo.seenFrom());
        String words = escaped(photo.alternative());
        return photos.place(step.number(), photo)
                .map(
                        path ->
                                "!["
                                        + words
                                        + "](<"
                                        + address(path)
                                        + ">)"
                                        + (seen.isEmpty() ? "" : "\\\n" + seen))
                .orElseGet(
                        () ->
                                "[ %s: %s; %s ]"
                                        .formatted(
                                                photo.picture().trouble(),
                                                escaped(photo.file()),
                                                words)
                                        .replaceFirst("^\\[", "\\\\[")
                                        .replaceFirst("\\]$", "\\\\]"));
    }

    /** The path as it may stand between pointed brackets. */
    private static String address(String path) {
        return path.replace(" ", "%20").replace("<", "%3C").replace(">", "%3E");
    }
}
