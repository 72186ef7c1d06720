package counterstep.study;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Runs the whole study, prints its page, and writes it to the file named. */
public final class Mutations {
    private Mutations() {}

    /** Takes the file to write. */
    public static void main(String[] arguments) throws IOException {
        List<Row> rows = new Study(Bases.all()).rows(Kinds.all(), Mutations::tell);
        Page page = new Page(rows);
        System.out.print(page.table() + page.untold());
        Files.writeString(Path.of(arguments[0]), page.text());
    }

    private static void tell(Row row) {
        System.err.printf("%6d %s%n", row.made(), row.kind().name());
    }
}
