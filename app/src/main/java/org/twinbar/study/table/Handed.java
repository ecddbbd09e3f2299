package org.twinbar.study.table;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.twinbar.exchange.Place;
import org.twinbar.exchange.Spelling;

/** Files that belong to a table and are found by the names that it gives them. */
@FunctionalInterface
public interface Handed {

    /**
     * @param name as the table gives it
     * @param from where it stands there
     * @throws org.twinbar.exchange.InputException where there is no such file, or its name leads
     *     out of the folder
     */
    Upload find(String name, Place from);

    /** Returns nothing at all. */
    static Handed nothing() {
        return (name, from) -> {
            throw from.refuse("the file '%s' was not handed in".formatted(name));
        };
    }

    /** Returns files of a folder and of the folders in it. */
    static Handed in(Path folder) {
        return (name, from) -> {
            Path file = inside(folder, name, from);
            if (!Files.isRegularFile(file)) {
                throw from.refuse("the file '%s' is not in %s".formatted(name, words(folder)));
            }
            return Upload.of(name, file);
        };
    }

    /** Returns files that were handed in together, by their name without folders if need be. */
    static Handed among(List<Upload> uploads) {
        Map<String, Upload> byName = new HashMap<>();
        uploads.forEach(upload -> byName.put(upload.name(), upload));
        uploads.forEach(upload -> byName.putIfAbsent(last(upload.name()), upload));
        return (name, from) -> {
            Upload whole = byName.get(name);
            Upload found = whole == null ? byName.get(last(name)) : whole;
            if (found == null) {
                throw from.refuse("the file '%s' was not handed in%s"
                        .formatted(name, Spelling.hint(name, byName.keySet())));
            }
            return found;
        };
    }

    private static String last(String name) {
        return name.substring(Math.max(name.lastIndexOf('/'), name.lastIndexOf('\\')) + 1);
    }

    private static Path inside(Path folder, String name, Place from) {
        try {
            // An empty path, the current folder, is no beginning of any other.
            Path whole = folder.toAbsolutePath().normalize();
            Path file = whole.resolve(name).normalize();
            boolean within = file.startsWith(whole)
                    && (!Files.exists(file) || file.toRealPath().startsWith(whole.toRealPath()));
            if (within) {
                return file;
            }
        } catch (IOException | java.nio.file.InvalidPathException e) {
            throw from.refuse("'%s' is not the name of a file".formatted(name));
        }
        throw from.refuse("'%s' leads out of %s".formatted(name, words(folder)));
    }

    private static String words(Path folder) {
        return folder.toString().isEmpty() ? "the current folder" : "the folder " + folder;
    }
}
