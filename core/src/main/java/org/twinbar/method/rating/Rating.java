package org.twinbar.method.rating;

import java.util.Arrays;
import java.util.List;
import org.twinbar.finding.Figures;
import org.twinbar.finding.Finding;
import org.twinbar.instrument.Kind;
import org.twinbar.method.Answering;
import org.twinbar.method.Ask;
import org.twinbar.method.Caution;
import org.twinbar.method.Description;
import org.twinbar.method.Input;
import org.twinbar.method.Limits;
import org.twinbar.method.Outcome;
import org.twinbar.method.Property;
import org.twinbar.method.Property.Scale;
import org.twinbar.method.Readings;
import org.twinbar.method.TestMethod;
import org.twinbar.method.Words;

/** Ratings of one part by several people. */
public final class Rating implements TestMethod {

    static final Input RATING = Input.of(
                    "rating", "What each rater gave, in steps of the scale", "", Kind.NONE)
            .within(Limits.ANY);
    static final String NOT_BLIND = "no";
    static final Words BLIND =
            new Words("blind", "Whether no rater knew the group", List.of("yes", NOT_BLIND));

    static final Property MEDIAN =
            Property.of("rating", "Rating, median of raters", "", Scale.RANK);

    static final Finding.Kind FEW_RATERS = Finding.Kind.note(
            "few-raters", "Rated by %s; take 5 raters or more, each alone and in a random order.");
    static final Finding.Kind ONE_PART = Finding.Kind.note(
            "raters-are-no-parts",
            "%s raters looked at one part: they tell how surely this part is rated, and count as one"
                    + " part in any comparison.");
    static final Finding.Kind APART = Finding.Kind.warning(
            "raters-disagree",
            "The raters lie from %s to %s, their middle half over %s steps: agree on examples of"
                    + " each step before rating again.");
    static final Finding.Kind KNEW = Finding.Kind.serious(
            "raters-knew-the-group",
            "The raters knew which group the part was of; who knows what was coated sees what a coat"
                    + " should do.");
    static final Finding.Kind BLIND_UNKNOWN = Finding.Kind.note(
            "blinding-not-stated", "Whether the raters knew the group was not noted.");

    private static final Description DESCRIPTION = new Description(
            "rating",
            1,
            "Panel rating",
            "No standard: the median of several raters on a scale of steps, compared by rank.",
            List.of(
                    Ask.required("What did each rater give?", List.of(RATING)),
                    Ask.optional("Did no rater know the group?", List.of(BLIND))),
            List.of(),
            List.of(),
            List.of(MEDIAN),
            List.of(new Caution("Who rates by touch may cut a finger on a raw edge, or react to a"
                    + " coat that is not cured: deburr, and wear gloves on fresh resin.")));

    private static final int ENOUGH_RATERS = 5;

    /** A middle half that is wider than this many steps is no agreement; our own. */
    private static final double WIDEST_HALF = 1;

    @Override
    public Description description() {
        return DESCRIPTION;
    }

    @Override
    public List<Answering> answering() {
        return RatingClaims.ANSWERING;
    }

    @Override
    public Outcome calculate(Readings readings) {
        Outcome.Builder out = Outcome.of(DESCRIPTION);
        if (!readings.has(RATING)) {
            return out.restMissing("nobody rated it").build();
        }
        double[] ratings = readings.each(RATING);
        Arrays.sort(ratings);
        out.value(MEDIAN, quantile(ratings, 0.5));
        if (readings.atRest()) {
            findings(readings, ratings, out);
        }
        return out.build();
    }

    /** Returns a quantile of sorted values, straight between neighbours at p(n − 1). */
    static double quantile(double[] sorted, double p) {
        double place = p * (sorted.length - 1);
        int before = (int) Math.floor(place);
        int after = (int) Math.ceil(place);
        return sorted[before] + (sorted[after] - sorted[before]) * (place - before);
    }

    private static void findings(Readings readings, double[] sorted, Outcome.Builder out) {
        int raters = sorted.length;
        if (raters < ENOUGH_RATERS) {
            out.found(FEW_RATERS.with(raters == 1 ? "1 person" : raters + " people"));
        }
        if (raters > 1) {
            out.found(ONE_PART.with(raters));
        }
        double half = quantile(sorted, 0.75) - quantile(sorted, 0.25);
        if (half > WIDEST_HALF) {
            out.found(APART.with(
                    Figures.two(sorted[0]), Figures.two(sorted[raters - 1]), Figures.two(half)));
        }
        if (!readings.has(BLIND)) {
            out.found(BLIND_UNKNOWN.with());
        } else if (readings.word(BLIND).equals(NOT_BLIND)) {
            out.found(KNEW.with());
        }
    }
}
