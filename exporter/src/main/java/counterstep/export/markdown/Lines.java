package counterstep.export.markdown;

import java.util.List;

/** Markdown in the making, block by block with an empty line between. */
public final class Lines {
    private final StringBuilder out = new StringBuilder();

    /** One block; nothing where it is empty. */
    public Lines block(String block) {
        if (!block.isBlank()) {
            out.append(out.length() == 0 ? "" : "\n").append(block.stripTrailing()).append('\n');
        }
        return this;
    }

    /** A list, one line an entry; nothing where there is none. */
    public Lines list(List<String> entries) {
        return block(String.join("\n", entries.stream().map(entry -> "- " + entry).toList()));
    }

    @Override
    public String toString() {
        return out.toString();
    }
}
