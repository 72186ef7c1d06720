package counterstep.export.dita;

import counterstep.export.Print;
import counterstep.export.guide.ActionRow;
import counterstep.export.guide.Blank;
import counterstep.export.guide.PhaseBlock;
import counterstep.export.guide.PhotoBlock;
import counterstep.export.guide.Sentences;
import counterstep.export.guide.StepBlock;
import counterstep.export.guide.ToolTag;
import counterstep.export.markdown.PhotoFiles;
import counterstep.model.Step;
import java.net.URI;
import java.net.URISyntaxException;
import java.util.List;
import java.util.Optional;

/** Sets the steps, each phase under a line of its own, each action as a substep. */
final class StepSetter {
    private final Xml xml;
    private final Print print;
    private final PhotoFiles photos;
    private final TextSetter text;

    StepSetter(Xml xml, Print print, PhotoFiles photos) {
        this.xml = xml;
        this.print = print;
        this.photos = photos;
        this.text = new TextSetter(xml);
    }

    /** All steps; nothing where there is none, since a list of steps must hold one. */
    void set(List<PhaseBlock> phases) {
        if (phases.isEmpty()) {
            return;
        }
        xml.open("steps");
        for (PhaseBlock phase : phases) {
            xml.element("stepsection", phase.title() + ", " + phase.range());
            phase.steps().forEach(this::step);
        }
        xml.close();
    }

    private void step(StepBlock block) {
        Step step = print.procedure().steps().get(block.number() - 1);
        xml.open("step", "id", step.id().value());
        new Notices(xml).set(step.hazards());
        xml.element("cmd", command(block));
        tools(block.tools());
        if (!block.text().isEmpty()) {
            xml.open("info");
            text.blocks(block.text().children());
            xml.close();
        }
        block.photos().forEach(photo -> photo(block.number(), photo));
        actions(block.actions());
        block.remarks().forEach(this::info);
        xml.stated("stepresult", Sentences.begun(String.join("; ", block.then())));
        xml.close();
    }

    private static String command(StepBlock block) {
        if (!block.title().isBlank()) {
            return block.title().strip();
        }
        return block.actions().isEmpty()
                ? "Step " + block.number()
                : Sentences.begun(block.actions().get(0).words());
    }

    private void tools(List<ToolTag> tools) {
        List<String> labels = tools.stream().map(ToolTag::label).toList();
        if (!labels.isEmpty()) {
            info("Tool: " + String.join(", ", labels));
        }
    }

    private void actions(List<ActionRow> actions) {
        if (actions.isEmpty()) {
            return;
        }
        xml.open("substeps");
        for (ActionRow action : actions) {
            xml.open("substep").element("cmd", Sentences.begun(told(action)));
            tools(action.tools());
            action.blank().map(StepSetter::reading).ifPresent(this::info);
            xml.close();
        }
        xml.close();
    }

    /** Verb and item, the numbers on the photo that point at it, and how. */
    private static String told(ActionRow action) {
        StringBuilder told = new StringBuilder((action.verb() + " " + action.what()).strip());
        action.callouts().forEach(number -> told.append(" (").append(number).append(')'));
        String details = Sentences.listed(action.details());
        told.append(details.isEmpty() ? "" : action.what().isEmpty() ? " " : ", ");
        return told.append(details).toString();
    }

    /** A paragraph, since bare words would run on from the command. */
    private void info(String words) {
        xml.open("info").element("p", words).close();
    }

    private static String reading(Blank blank) {
        if (blank.drawn()) {
            return blank.label();
        }
        String label = blank.label().isBlank() ? "reading" : blank.label();
        return (label + ": ________ " + blank.unit()).strip();
    }

    private void photo(int number, PhotoBlock photo) {
        Optional<String> path = photos.place(number, photo);
        if (path.isEmpty()) {
            String lost = photo.picture().trouble() + ": " + photo.file();
            info("[ " + lost + "; " + photo.alternative() + " ]");
            return;
        }
        xml.open("info").open("fig");
        xml.stated("title", photo.seenFrom().isBlank() ? "" : "Seen from " + photo.seenFrom());
        xml.open("image", "href", address(path.get()), "placement", "break", "scalefit", "yes");
        xml.element("alt", photo.alternative()).close();
        xml.close().close();
    }

    private static String address(String path) {
        try {
            return new URI(null, null, path, null).toASCIIString();
        } catch (URISyntaxException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
