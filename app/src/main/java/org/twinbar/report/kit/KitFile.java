package org.twinbar.report.kit;

import java.nio.charset.StandardCharsets;
import java.util.function.Supplier;

/**
 * A file of the kit, made when it is asked for.
 *
 * @param name within the kit, folders included
 */
public record KitFile(String name, Supplier<byte[]> content) {

    static KitFile text(String name, String text) {
        return new KitFile(name, () -> text.getBytes(StandardCharsets.UTF_8));
    }
}
