package org.twinbar.method;

import java.util.Optional;
import org.twinbar.uncertainty.Budget;

/**
 * What may be wrong with the ends between which a property is known to lie.
 *
 * @param lower of a lower bound, or of the lower one of two
 * @param upper of an upper bound, or of the upper one of two
 */
public record Ends(Optional<Budget> lower, Optional<Budget> upper) {

    private static final Ends NONE = new Ends(Optional.empty(), Optional.empty());

    /** Returns what is known of a property's ends; nothing where it has none. */
    public static Ends of(Result result, Property property) {
        return result.ends().getOrDefault(property, NONE);
    }

    static Ends of(Yield yield, Budget lower, Budget upper) {
        boolean hasLower = yield instanceof Yield.AtLeast || yield instanceof Yield.Between;
        boolean hasUpper = yield instanceof Yield.Below || yield instanceof Yield.Between;
        return new Ends(
                hasLower ? Optional.of(lower) : Optional.empty(),
                hasUpper ? Optional.of(upper) : Optional.empty());
    }

    /** Returns the standard uncertainty of the lower end; 0 where nothing is known of it. */
    public double lowerU() {
        return lower.map(Budget::u).orElse(0.0);
    }

    /** Returns the standard uncertainty of the upper end; 0 where nothing is known of it. */
    public double upperU() {
        return upper.map(Budget::u).orElse(0.0);
    }

    boolean any() {
        return lower.isPresent() || upper.isPresent();
    }
}
