package org.twinbar.study;

import java.util.List;
import java.util.Optional;
import org.twinbar.exchange.InputException;
import org.twinbar.exchange.Source;
import org.twinbar.exchange.Spelling;
import org.twinbar.exchange.datapackage.OpenPackage;
import org.twinbar.exchange.datapackage.Resource;
import org.twinbar.study.table.Handed;
import org.twinbar.study.table.Upload;

/** A package that somebody made without Twinbar: a table of specimens, and curves perhaps. */
public final class HandmadePackage {

    private static final String SPECIMENS = "specimens";

    private HandmadePackage() {}

    /**
     * Returns the path of the table of specimens.
     *
     * @param wanted name or path of its resource, where somebody said it
     * @throws InputException where there is no such table, several could be it, or its bytes are
     *     not those that the descriptor tells of
     */
    public static String specimens(OpenPackage open, Optional<String> wanted) {
        List<Resource> resources = open.resources();
        List<String> names = resources.stream().map(Resource::name).toList();
        if (wanted.isPresent()) {
            String name = wanted.get();
            return resources.stream()
                    .filter(it -> it.name().equals(name) || it.path().equals(name))
                    .findFirst()
                    .map(Resource::path)
                    .orElseThrow(() -> new InputException("%s has no resource '%s' among %s%s"
                            .formatted(
                                    open.place(),
                                    name,
                                    String.join(", ", names),
                                    Spelling.hint(name, names))));
        }
        Optional<Resource> named = open.resource(SPECIMENS);
        if (named.isPresent()) {
            return named.get().path();
        }
        List<Resource> tables = resources.stream().filter(Resource::isTable).toList();
        if (tables.size() == 1) {
            return tables.get(0).path();
        }
        throw new InputException(
                "%s: which resource holds the specimens? Name one of %s with --specimens"
                        .formatted(open.place(), String.join(", ", names)));
    }

    /**
     * Returns the files of a package by their paths in it.
     *
     * @throws InputException where the bytes of one are not those that the descriptor tells of
     */
    public static Handed files(OpenPackage open) {
        for (Resource resource : open.resources()) {
            open.damage(resource).ifPresent(words -> {
                throw new InputException("%s: %s".formatted(open.place(), words));
            });
        }
        return (name, from) -> {
            String path = name.startsWith("./") ? name.substring(2) : name;
            Source source = open.file(path)
                    .orElseThrow(() -> from.refuse("the package lacks the file '%s'%s"
                            .formatted(path, Spelling.hint(path, open.paths()))));
            return Upload.of(source);
        };
    }
}
