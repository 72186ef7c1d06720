package counterstep.editor.form;

import java.util.function.Function;
import javax.swing.JComponent;
import javax.swing.JTextField;

/**
 * A line of text that means something: a count, a length, a time. What has no meaning is outlined,
 * says why in its tip, and changes nothing.
 *
 * @param <T> what it means
 */
public final class ParsedInput<T> implements Input<T> {
    private final String label;
    private final Format<T> format;
    private final JTextField field = new JTextField();
    private final HandIn handIn;
    private T value;

    /**
     * How a value reads and is read.
     *
     * @param write value to text
     * @param read text to value; throws {@link IllegalArgumentException} with a reason
     * @param <T> the value
     */
    public record Format<T>(Function<T, String> write, Function<String, T> read) {}

    /**
     * A field showing {@code start}, which runs {@code changed} when another value is handed in.
     */
    public ParsedInput(String label, Format<T> format, T start, Runnable changed) {
        this.label = label;
        this.format = format;
        this.value = start;
        this.handIn = HandIn.attach(field, () -> take(changed));
        field.getAccessibleContext().setAccessibleName(label);
        field.setText(format.write().apply(start));
    }

    /** The same under a name that tests find it by. */
    public ParsedInput<T> named(String name) {
        field.setName(name);
        return this;
    }

    private void take(Runnable changed) {
        try {
            value = format.read().apply(field.getText().strip());
            told("");
            changed.run();
        } catch (IllegalArgumentException refused) {
            told(refused.getMessage());
        }
    }

    private void told(String reason) {
        field.putClientProperty("JComponent.outline", reason.isEmpty() ? null : "error");
        field.setToolTipText(reason.isEmpty() ? null : reason);
    }

    @Override
    public String label() {
        return label;
    }

    @Override
    public JComponent component() {
        return field;
    }

    @Override
    public void show(T shown) {
        value = shown;
        told("");
        handIn.show(field, format.write().apply(shown));
    }

    @Override
    public T value() {
        return value;
    }
}
