package counterstep.export.table;

import counterstep.export.Exporter;
import counterstep.export.Print;
import counterstep.export.guide.Guide;
import counterstep.store.OutputFolder;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Tools, parts, fasteners and steps as NAME.tools.csv, NAME.parts.csv and so on. */
public final class CsvTables implements Exporter {
    @Override
    public String id() {
        return "csv";
    }

    @Override
    public String name() {
        return "Tables, CSV";
    }

    @Override
    public List<Path> write(Print print, OutputFolder folder) {
        Guide guide = Guide.of(print);
        return Stream.of(
                        NeedTables.tools(guide),
                        NeedTables.parts(guide),
                        FastenerColumns.table(guide),
                        StepColumns.table(print, guide))
                .map(
                        table ->
                                folder.write(
                                        print.baseName() + "." + table.name() + ".csv",
                                        Csv.of(table)))
                .toList();
    }
}
