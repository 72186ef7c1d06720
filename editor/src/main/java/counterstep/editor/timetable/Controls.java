package counterstep.editor.timetable;

import counterstep.crew.CrewWords;
import counterstep.edit.SetCrew;
import counterstep.editor.desk.Desk;
import counterstep.editor.form.ChoiceInput;
import counterstep.editor.theme.PlainText;
import counterstep.model.Crew;
import java.awt.BorderLayout;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.BoxLayout;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;

/** Who works and in which order, and how long that takes in one sentence. */
final class Controls {
    private final JPanel whole = new JPanel(new BorderLayout(12, 0));
    private final JLabel summary = PlainText.in(new JLabel());
    private final ChoiceInput<Crew> crew;
    private final ChoiceInput<Course> course;

    /**
     * Sets the crew of the document on a desk.
     *
     * @param turned runs when another order is wanted
     */
    Controls(Desk desk, Runnable turned) {
        crew =
                new ChoiceInput<Crew>(
                                "Crew",
                                CrewWords.offered(Crew.ONE),
                                CrewWords::name,
                                () -> desk.apply(new SetCrew(crew().value())))
                        .named("timetable crew");
        course =
                new ChoiceInput<>("Order", List.of(Course.values()), Course::words, turned)
                        .named("timetable order");
        summary.putClientProperty("FlatLaf.styleClass", "small");
        summary.setName("timetable summary");
        summary.setHorizontalAlignment(JLabel.TRAILING);
        JPanel choices = new JPanel();
        choices.setLayout(new BoxLayout(choices, BoxLayout.LINE_AXIS));
        choices.setOpaque(false);
        for (JComponent choice : List.of(crew.component(), course.component())) {
            choice.putClientProperty("FlatLaf.styleClass", "small");
            choices.add(choice);
        }
        whole.setOpaque(false);
        whole.setBorder(BorderFactory.createEmptyBorder(2, 16, 2, 16));
        whole.add(summary, BorderLayout.CENTER);
        whole.add(choices, BorderLayout.LINE_END);
    }

    private ChoiceInput<Crew> crew() {
        return crew;
    }

    JComponent component() {
        return whole;
    }

    Course course() {
        return course.value();
    }

    /** To the other order. */
    void turn() {
        course.show(course() == Course.PAGE ? Course.SHORTEST : Course.PAGE);
    }

    void show(Crew now, String words) {
        crew.offer(CrewWords.offered(now));
        crew.show(now);
        summary.setText(words);
        summary.setToolTipText(words.isEmpty() ? null : words); // Swing's word for none
    }
}
