package counterstep.export.table;

import java.util.List;

/**
 * A table, without format.
 *
 * @param name what it holds, the middle of its file name: 'tools'
 * @param columns their names; a unit stands in the name
 * @param rows cells, as many in each row as there are columns
 */
record Table(String name, List<String> columns, List<List<String>> rows) {
    /** Refuses a row of another length; copies the lists. */
    Table {
        columns = List.copyOf(columns);
        rows = rows.stream().map(List::copyOf).toList();
        for (List<String> row : rows) {
            if (row.size() != columns.size()) {
                throw new IllegalArgumentException(name + ": " + row + " under " + columns);
            }
        }
    }
}
