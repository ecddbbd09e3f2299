package org.twinbar.study;

import java.util.List;
import java.util.Optional;
import org.twinbar.decision.Effect;
import org.twinbar.decision.Expectation;
import org.twinbar.finding.Finding;
import org.twinbar.planning.Numbers;

/**
 * What so many specimens can tell, and what they take, for each number.
 *
 * @param numbers the table; its smallest effects are on the scale of the effect, those of no change
 *     and of a level as sizes
 * @param effect as which number
 * @param expectation which way
 * @param sizes what changes and the scatter are told as
 * @param unit of the property; empty for a plain number
 * @param scatter that was reckoned with; none where parts pass or don't, or their order is read
 * @param assuming what else is taken for true, as parts of a sentence
 * @param findings what a person should know
 */
public record NumbersTold(
        Numbers numbers,
        Effect effect,
        Expectation expectation,
        Sizes sizes,
        String unit,
        Optional<Scatter> scatter,
        List<String> assuming,
        List<Finding> findings) {

    /** What changes and the scatter are told as. */
    public enum Sizes {
        /** Shares of the control's value, of the mean or of all parts. */
        RELATIVE,
        AMOUNTS
    }

    /**
     * A scatter.
     *
     * @param value over the mean for a ratio, else in the unit
     * @param origin where it comes from
     * @param words the same in words, such as {@code of older, 4 degrees of freedom}
     */
    public record Scatter(double value, Origin origin, String words) {}

    /** Where a scatter comes from. */
    public enum Origin {
        GIVEN,
        EARLIER_STUDIES,
        /** Common practice, no source. */
        USUAL_FOR_THE_TEST
    }

    public NumbersTold {
        assuming = List.copyOf(assuming);
        findings = List.copyOf(findings);
    }
}
