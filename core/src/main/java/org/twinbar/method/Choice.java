package org.twinbar.method;

import java.util.List;

/** A way of the calculation that a person may choose, such as chord or regression. */
public record Choice(String name, String label, List<String> allowed, String preset)
        implements Named {

    public Choice {
        allowed = List.copyOf(allowed);
        if (!allowed.contains(preset)) {
            throw new IllegalArgumentException(
                    "preset %s of %s is none of %s".formatted(preset, name, allowed));
        }
    }
}
