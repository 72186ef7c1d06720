package counterstep.editor.exporting;

import counterstep.editor.form.ChoiceInput;
import counterstep.editor.form.Question;
import counterstep.export.Exporter;
import counterstep.export.catalogue.Catalogue;
import java.awt.BorderLayout;
import java.awt.Component;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JLabel;
import javax.swing.JPanel;

/** Asks what to export, in which form and where to, and shows what it will look like. */
public final class ExportQuestion {
    private final Consumer<String> remember;
    private final LeafStack stack = new LeafStack();
    private final ChoiceInput<Exporter> shown;
    private final ExportForm form;
    private final Leaves leaves;
    private Optional<Question> question = Optional.empty();

    /**
     * A question, not asked yet.
     *
     * @param near where the files go if no other folder is chosen
     * @param habit what was remembered last; may be empty
     * @param remember told what to remember
     */
    public ExportQuestion(Exported document, Path near, String habit, Consumer<String> remember) {
        this.remember = remember;
        this.leaves = new Leaves(document);
        Habit last = Habit.ofText(habit);
        this.shown =
                new ChoiceInput<>("Preview of", Catalogue.all(), Exporter::name, this::render)
                        .named("shown format");
        this.form = new ExportForm(last, near, this::look, this::changed, this::ready);
        shown.show(last.formats().isEmpty() ? Catalogue.all().get(0) : last.formats().get(0));
    }

    /** Asks, and waits for the answer; empty where nothing is to be written. */
    public Optional<ExportOrder> ask(Component owner) {
        JLabel label = new JLabel(shown.label());
        label.setLabelFor(shown.component());
        JPanel above = new JPanel(new BorderLayout(8, 0));
        above.add(label, BorderLayout.LINE_START);
        above.add(shown.component(), BorderLayout.CENTER);
        JPanel right = new JPanel(new BorderLayout(0, 8));
        right.add(above, BorderLayout.NORTH);
        right.add(stack, BorderLayout.CENTER);
        JPanel content = new JPanel(new BorderLayout(24, 0));
        content.add(form, BorderLayout.LINE_START);
        content.add(right, BorderLayout.CENTER);
        render();
        question = Optional.of(new Question(owner, "Export", content, "Write the files"));
        ready();
        boolean agreed = question.get().ask();
        leaves.close();
        if (!agreed) {
            return Optional.empty();
        }
        List<Exporter> chosen = form.chosen();
        remember.accept(new Habit(chosen, form.choices()).text());
        return form.folder().map(folder -> new ExportOrder(chosen, form.choices(), folder));
    }

    private void ready() {
        question.ifPresent(
                asked -> asked.ready(!form.chosen().isEmpty() && form.folder().isPresent()));
    }

    private void look(Exporter format) {
        if (!shown.value().equals(format)) {
            shown.show(format);
            render();
        }
    }

    private void changed() {
        ready();
        render();
    }

    private void render() {
        stack.waiting();
        leaves.make(shown.value(), form.choices(), stack::clear, stack::add);
    }
}
