package org.twinbar.study.calculation;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.twinbar.study.table.Handed;
import org.twinbar.study.table.Upload;

/**
 * The worked example of a method, as the manual shows it: invented readings that look like real
 * ones.
 *
 * @param table of its specimens
 * @param curves that the table names
 */
record WorkedExample(Upload table, Handed curves) {

    private static final String FOLDER = "/examples/";

    /** Returns the example of a method that comes with Twinbar; methods of one's own have none. */
    static Optional<WorkedExample> of(String method) {
        String folder = FOLDER + method + "/";
        return Optional.ofNullable(bytes(folder + "specimens.csv"))
                .map(table ->
                        new WorkedExample(Upload.of("the worked example", table), (name, from) -> {
                            byte[] curve = bytes(folder + "curves/" + name);
                            if (curve == null) {
                                throw from.refuse("the example has no curve '%s'".formatted(name));
                            }
                            return Upload.of(name, curve);
                        }));
    }

    private static byte @Nullable [] bytes(String name) {
        try (InputStream in = WorkedExample.class.getResourceAsStream(name)) {
            return in == null ? null : in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
