package org.twinbar.exchange.datapackage;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * A file of a package as its descriptor tells of it.
 *
 * @param name lower case, one of a kind
 * @param title what it is called for people, else its path
 * @param hash what its bytes should come to, where that is said
 * @param bytes how many it should have, where that is said
 * @param columns of its schema; none where it has none
 */
public record Resource(
        String name,
        String path,
        String title,
        Optional<String> hash,
        OptionalLong bytes,
        List<String> columns) {
    public Resource {
        columns = List.copyOf(columns);
    }

    /** Whether its descriptor tells of columns. */
    public boolean isTable() {
        return !columns.isEmpty();
    }
}
