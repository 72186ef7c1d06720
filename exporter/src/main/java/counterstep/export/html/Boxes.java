package counterstep.export.html;

import counterstep.export.guide.StepBlock;

/** Sets the boxes that are ticked when something is done. */
final class Boxes {
    private final Markup markup;
    private final Medium medium;
    private int lines;

    Boxes(Markup markup, Medium medium) {
        this.markup = markup;
        this.medium = medium;
    }

    /** The box of a step. */
    void step(StepBlock step) {
        switch (medium) {
            case BROWSER -> {
                String name = "done-" + step.number();
                String label = "Step " + step.number() + " is done";
                markup.open(
                        "input",
                        "type",
                        "checkbox",
                        "class",
                        "box",
                        "id",
                        name,
                        "aria-label",
                        label);
            }
            case PAPER -> markup.element("span", "", "class", "box");
        }
    }

    /** A line of its own with a box before it. */
    void line(String line) {
        lines++;
        markup.open("li");
        switch (medium) {
            case BROWSER -> {
                markup.open("label");
                String name = "tried-" + lines;
                markup.open("input", "type", "checkbox", "class", "box", "id", name).text(" ");
                markup.element("span", line).close();
            }
            case PAPER -> {
                markup.element("span", "", "class", "box");
                markup.element("span", line);
            }
        }
        markup.close();
    }

    /** How many are ticked, and a button that clears them: the script fills and shows it. */
    void count() {
        if (medium == Medium.BROWSER) {
            markup.open("p", "class", "ticked", "id", "ticked", "hidden", "");
            markup.element("span", "", "role", "status").text(" ");
            markup.element("button", "Clear the ticks", "type", "button").close();
        }
    }
}
