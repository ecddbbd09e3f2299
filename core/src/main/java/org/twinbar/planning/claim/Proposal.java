package org.twinbar.planning.claim;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.twinbar.method.Property;
import org.twinbar.specimen.PrintOrientation;

/**
 * A question that a bench can answer, as the guide proposes it.
 *
 * @param topic what the claim says
 * @param name the question in a few words
 * @param method name of the test
 * @param property what is compared
 * @param expect {@code higher}, {@code lower} or {@code same}
 * @param claimed size that the claim names
 * @param worth smallest change worth having
 * @param level for a level: what parts must clear, and the share of them that must
 * @param orientation how the specimens stand on the bed
 * @param stated what is the same for all specimens, by the name of an input or a word
 * @param shape what is printed
 * @param usualScatter of specimens that are made alike; common practice
 * @param looksLike what the answer will look like, in a sentence
 */
public record Proposal(
        String topic,
        String name,
        String method,
        Property property,
        String expect,
        Optional<String> claimed,
        Optional<String> worth,
        Optional<Level> level,
        Optional<PrintOrientation> orientation,
        Map<String, String> stated,
        String shape,
        OptionalDouble usualScatter,
        String looksLike) {

    /**
     * What parts must clear.
     *
     * @param at the level; empty for a yes or no
     * @param of share of parts that must clear it, such as {@code 90%}
     */
    public record Level(Optional<String> at, String of) {}

    public Proposal {
        stated = Map.copyOf(stated);
    }
}
