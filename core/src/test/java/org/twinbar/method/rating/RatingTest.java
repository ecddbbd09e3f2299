package org.twinbar.method.rating;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.twinbar.finding.Finding;
import org.twinbar.instrument.Bench;
import org.twinbar.method.Methods;
import org.twinbar.method.Property;
import org.twinbar.method.Readings;
import org.twinbar.method.Result;
import org.twinbar.method.Yield;

class RatingTest {

    private static Readings.Builder rated(double... ratings) {
        return Readings.of("R1", "plain", Bench.usual()).number(Rating.RATING, ratings);
    }

    private static Result result(Readings.Builder readings) {
        return Result.of(new Rating(), readings.build());
    }

    private static String text(Readings.Builder readings, String code) {
        Result result = result(readings);
        return result.findings().stream()
                .filter(finding -> finding.code().equals(code))
                .map(Finding::text)
                .findFirst()
                .orElseThrow(() -> new AssertionError(code + " is not in " + result.findings()));
    }

    @Test
    void isFoundByItsServiceEntry() {
        assertThat(Methods.builtIn().named("rating")).get().isInstanceOf(Rating.class);
    }

    @Test
    void manyRatersAreOneValueAndTheirOrderDoesNotMatter() {
        Yield.Value median = new Yield.Value(4);
        assertThat(result(rated(4, 5, 1, 4, 4)).yields().get(Rating.MEDIAN)).isEqualTo(median);
        assertThat(result(rated(1, 4, 4, 4, 5)).yields().get(Rating.MEDIAN)).isEqualTo(median);
    }

    @Test
    void onlyTheOrderOfRatingsCounts() {
        assertThat(Rating.MEDIAN.scale()).isEqualTo(Property.Scale.RANK);
        // A step that is stretched beyond the median does not move it.
        assertThat(result(rated(1, 2, 3, 4, 50)).yields().get(Rating.MEDIAN))
                .isEqualTo(new Yield.Value(3));
    }

    @Test
    void findings() {
        assertThat(text(rated(3), "few-raters")).startsWith("Rated by 1 person;");
        assertThat(text(rated(3, 4), "few-raters")).startsWith("Rated by 2 people;");
        assertThat(text(rated(3, 4), "raters-are-no-parts")).startsWith("2 raters looked at one");
        assertThat(text(rated(1, 1, 3, 5, 5), "raters-disagree"))
                .startsWith("The raters lie from 1.0 to 5.0, their middle half over 4.0 steps");
        assertThat(text(rated(3, 3, 3, 3, 3), "blinding-not-stated")).startsWith("Whether");
        assertThat(text(rated(3).word(Rating.BLIND, "no"), "raters-knew-the-group"))
                .startsWith("The raters knew");
    }
}
