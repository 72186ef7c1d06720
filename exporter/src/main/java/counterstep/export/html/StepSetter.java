package counterstep.export.html;

import counterstep.export.guide.ActionRow;
import counterstep.export.guide.HazardBlock;
import counterstep.export.guide.StepBlock;
import counterstep.export.guide.ToolTag;
import counterstep.export.picture.EncodedPicture;
import counterstep.export.shape.DriveShape;
import counterstep.export.shape.ItemShape;
import counterstep.model.Part;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Sets one step: number and box in the margin, notices, tool, what to do, photos at the right. */
final class StepSetter {
    private final Markup markup;
    private final Boxes boxes;
    private final PhotoSetter photos;

    StepSetter(
            Markup markup, Medium medium, Boxes boxes, Function<EncodedPicture, String> address) {
        this.markup = markup;
        this.boxes = boxes;
        this.photos = new PhotoSetter(markup, medium, address);
    }

    void set(StepBlock step) {
        String number = Integer.toString(step.number());
        String kind = step.photos().isEmpty() ? "step" : "step with-photo";
        markup.open("li", "class", kind, "value", number, "id", "step-" + number);
        markup.open("div", "class", "margin");
        markup.element("span", number, "class", "number");
        boxes.step(step);
        markup.close();
        markup.open("div", "class", "work");
        tags(step.tools());
        hazards(step.hazards());
        markup.element("h3", title(step));
        if (!step.text().isEmpty()) {
            markup.open("div", "class", "text");
            new TextSetter(markup).set(step.text());
            markup.close();
        }
        actions(step.actions());
        step.remarks().forEach(remark -> markup.element("p", remark, "class", "remark"));
        then(step.then());
        markup.close();
        photos(step);
        markup.close();
    }

    static String title(StepBlock step) {
        return step.title().isBlank() ? "Step " + step.number() : step.title();
    }

    private void tags(List<ToolTag> tools) {
        if (tools.isEmpty()) {
            return;
        }
        markup.open("p", "class", "tools");
        tools.forEach(this::tag);
        markup.close();
    }

    private void tag(ToolTag tool) {
        markup.open("span", "class", "tool").text("tool: ");
        markup.mark(tool.drive().map(DriveShape::of));
        markup.text(tool.label()).close().text(" ");
    }

    /** The notices, each with its signal word in a black block. */
    void hazards(List<HazardBlock> hazards) {
        for (HazardBlock hazard : hazards) {
            markup.open("div", "class", "hazard");
            markup.element("strong", hazard.signal().name(), "class", "signal");
            markup.element("p", String.join(" ", hazard.sentences())).close();
        }
    }

    private void actions(List<ActionRow> actions) {
        if (actions.isEmpty()) {
            return;
        }
        markup.open("ul", "class", "actions");
        actions.forEach(this::action);
        markup.close();
    }

    private void action(ActionRow action) {
        markup.open("li");
        markup.element("span", action.verb(), "class", "verb").text(" ");
        markup.open("span");
        action.tools().forEach(this::tag);
        markup.mark(action.item().filter(item -> !(item instanceof Part)).map(ItemShape::of));
        String details = String.join(", ", action.details());
        markup.text(action.what());
        markup.text(action.what().isEmpty() || details.isEmpty() ? "" : ", ").text(details);
        if (!action.callouts().isEmpty()) {
            String numbers =
                    action.callouts().stream()
                            .map(number -> "(" + number + ")")
                            .collect(Collectors.joining(" "));
            markup.text(" ").element("span", numbers, "class", "callouts");
        }
        action.blank()
                .ifPresent(
                        blank -> {
                            markup.text(" ").open("span", "class", "reading");
                            markup.text(blank.label());
                            if (!blank.drawn()) {
                                markup.text(" ").element("span", "", "class", "blank");
                                markup.text(" " + blank.unit());
                            }
                            markup.close();
                        });
        markup.close().close();
    }

    private void then(List<String> then) {
        if (then.isEmpty()) {
            return;
        }
        markup.open("p", "class", "then");
        then.forEach(part -> markup.element("span", part).text(" "));
        markup.close();
    }

    private void photos(StepBlock step) {
        if (step.photos().isEmpty()) {
            return;
        }
        markup.open("div", "class", "photos");
        step.photos().forEach(photos::set);
        markup.close();
    }
}
