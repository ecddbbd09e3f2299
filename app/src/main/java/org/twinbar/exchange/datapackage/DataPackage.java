package org.twinbar.exchange.datapackage;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import org.twinbar.exchange.Source;

/**
 * What is to be written as a package.
 *
 * @param name what it goes by; other letters than those of a name are replaced
 * @param id the same for every package of the same thing
 * @param contributors who entered something, as they named themselves
 * @param licence that it is published under, where its makers said so
 * @param own what its maker adds to the descriptor under a name of its own
 * @param readme for a person who opens it
 * @param files as they came, byte for byte
 */
public record DataPackage(
        String name,
        String id,
        String title,
        String description,
        List<String> contributors,
        Optional<Licence> licence,
        Own own,
        String readme,
        List<DataTable> tables,
        List<RawFile> files) {

    /** What the maker of a package adds to its descriptor. */
    public record Own(String key, ObjectNode value) {}

    /**
     * A file as it came.
     *
     * @param path where it stands in the package
     * @param title what it was called before
     * @param sha256 of its bytes
     */
    public record RawFile(String path, String title, String sha256, long bytes, Source source) {}

    public DataPackage {
        contributors = List.copyOf(contributors);
        tables = List.copyOf(tables);
        files = List.copyOf(files);
    }
}
