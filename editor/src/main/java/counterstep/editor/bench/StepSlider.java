package counterstep.editor.bench;

import java.util.List;
import javax.swing.JSlider;

/** A slider over the steps of a document, with the phases marked under it. */
final class StepSlider extends JSlider {
    /**
     * Where a phase begins.
     *
     * @param step number of its first step
     * @param word its name
     */
    record Mark(int step, String word) {}

    private List<Mark> marks = List.of();

    StepSlider() {
        super(1, 1, 1);
        setName("bench step");
        getAccessibleContext().setAccessibleName("After which step");
        setOpaque(false);
    }

    void show(int steps, List<Mark> phases, int value) {
        marks = phases;
        setMaximum(steps);
        setExtent(0);
        setMajorTickSpacing(Math.max(1, steps / 10));
        setValue(value);
        repaint();
    }

    List<Mark> marks() {
        return marks;
    }

    @Override
    public void updateUI() {
        setUI(new StepSliderLook(this));
    }
}
