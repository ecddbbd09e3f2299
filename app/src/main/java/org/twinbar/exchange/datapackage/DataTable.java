package org.twinbar.exchange.datapackage;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * A table of a package.
 *
 * @param name lower case; its file is called so too
 * @param says what it holds, in a sentence
 * @param key the columns that tell its rows apart
 * @param references columns that name rows of other tables
 * @param rows cells in the order of the fields; an empty one is a missing value
 */
public record DataTable(
        String name,
        String says,
        List<Field> fields,
        List<String> key,
        List<Reference> references,
        List<List<String>> rows) {

    /** Columns that name a row of another table by its own columns. */
    public record Reference(List<String> columns, String table, List<String> theirs) {
        public Reference {
            columns = List.copyOf(columns);
            theirs = List.copyOf(theirs);
        }

        /** Returns columns that are called the same in both tables. */
        public static Reference to(String table, String... columns) {
            return new Reference(List.of(columns), table, List.of(columns));
        }
    }

    public DataTable {
        fields = List.copyOf(fields);
        key = List.copyOf(key);
        references = List.copyOf(references);
        rows = rows.stream().map(List::copyOf).toList();
        Set<List<String>> seen = new HashSet<>();
        for (List<String> row : rows) {
            if (row.size() != fields.size()) {
                throw new IllegalArgumentException("%s has %s columns, a row has %s cells"
                        .formatted(name, fields.size(), row.size()));
            }
            if (!key.isEmpty() && !seen.add(keyOf(fields, key, row))) {
                throw new IllegalArgumentException(
                        "%s has two rows %s".formatted(name, keyOf(fields, key, row)));
            }
        }
    }

    /** Returns the cells of a row that tell it apart. */
    public List<String> keyOf(List<String> row) {
        return keyOf(fields, key, row);
    }

    private static List<String> keyOf(List<Field> fields, List<String> key, List<String> row) {
        List<String> names = fields.stream().map(Field::name).toList();
        return key.stream().map(names::indexOf).map(row::get).toList();
    }

    public String path() {
        return "data/" + name + ".csv";
    }
}
