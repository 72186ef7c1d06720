package counterstep.editor.blocks;

import counterstep.editor.desk.DeskState;
import counterstep.editor.form.Form;
import counterstep.editor.form.Question;
import counterstep.editor.form.TextInput;
import counterstep.editor.form.TickInput;
import counterstep.editor.theme.Palette;
import counterstep.editor.theme.Type;
import counterstep.editor.theme.WrappedText;
import counterstep.excerpt.Block;
import counterstep.model.Procedure;
import counterstep.model.StepId;
import java.awt.Component;
import java.awt.Dimension;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/** Asks what goes into a block, and what it is called. */
final class KeepQuestion {
    private static final int WIDTH = 420;

    private final Procedure open;
    private final Set<StepId> selected;
    private final TextInput name = new TextInput("Name", () -> {}).named("block.name");
    private final TickInput steps;
    private final TickInput tools;
    private final TickInput cautions;
    private final WrappedText said = new WrappedText(Palette.SOFT, Type.SMALL);
    private final Predicate<String> taken;
    private final Question question;

    /**
     * A question, not asked yet.
     *
     * @param taken whether a block of that name is kept already
     */
    KeepQuestion(Component owner, DeskState state, Predicate<String> taken) {
        this.open = state.procedure();
        this.selected = state.selection().steps();
        this.taken = taken;
        int toolCount = open.tools().size();
        int cautionCount = open.titleBlock().cautions().size();
        steps = tick(counted(selected.size(), "selected step"), !selected.isEmpty());
        tools = tick(counted(toolCount, "tool") + " of the tool list", selected.isEmpty());
        cautions = tick(counted(cautionCount, "caution") + " of the whole work", false);
        said.setText(" ");
        said.heightAt(WIDTH);
        Form form = new Form().add(name).add(steps).add(tools).add(cautions).wide(said).end();
        form.setPreferredSize(new Dimension(WIDTH, form.getPreferredSize().height + 20));
        if (selected.size() == 1) {
            name.show(open.step(selected.iterator().next()).title());
        }
        question = new Question(owner, "Keep as block", form, "Keep");
        name.whileTyping(this::judge);
        judge();
    }

    private TickInput tick(String words, boolean on) {
        TickInput tick = new TickInput(words, this::judge);
        tick.show(on);
        return tick;
    }

    private static String counted(int count, String word) {
        return count == 1 ? "the " + word : "the " + count + " " + word + "s";
    }

    private void judge() {
        boolean something = !Block.contents(block()).equals("empty");
        boolean named = name.value().chars().anyMatch(Character::isLetterOrDigit);
        said.setText(
                !something
                        ? "There is nothing in it yet: select steps, or tick what goes in."
                        : named && taken.test(name.value())
                                ? "Takes the place of the block of that name."
                                : "Holds " + Block.contents(block()) + ".");
        question.ready(something && named);
    }

    private Procedure block() {
        return Block.of(
                open,
                new Block.Choice(
                        steps.value() ? selected : Set.of(), tools.value(), cautions.value()),
                name.value());
    }

    /** The block, or empty if it was cancelled. */
    Optional<Procedure> ask() {
        return question.ask() ? Optional.of(block()) : Optional.empty();
    }
}
