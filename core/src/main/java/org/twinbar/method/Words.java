package org.twinbar.method;

import java.util.List;

/**
 * A word that is noted on each specimen.
 *
 * @param allowed the words that may stand there; empty where any text may
 */
public record Words(String name, String label, List<String> allowed) implements Named {
    public Words {
        allowed = List.copyOf(allowed);
    }
}
