package org.twinbar.decision;

import java.util.List;
import java.util.Optional;

/**
 * The same gain counted per part and per material: a coated bar carries more because it is thicker,
 * or because it is better.
 *
 * @param bases the gain on each basis that was asked
 * @param expected what the added section alone would give, as a ratio; where it is known
 * @param excess what was measured per part over what the added section explains, as a ratio
 * @param words both, in a sentence
 */
public record Material(
        List<OnBasis> bases, Optional<Gain> expected, Optional<Gain> excess, String words) {

    /**
     * The gain on one basis.
     *
     * @param words the basis, such as {@code per part}
     */
    public record OnBasis(String words, Found found) {}

    /** A ratio with its interval. */
    public record Gain(double ratio, Amount low, Amount high) {}

    public Material {
        bases = List.copyOf(bases);
    }
}
