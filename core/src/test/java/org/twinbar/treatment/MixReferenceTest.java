package org.twinbar.treatment;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.twinbar.Checks;
import org.twinbar.treatment.Pouring.Pour;

/** METHODS.md G-1 to G-7 (rows 69 to 74 of section M). */
class MixReferenceTest {

    private final Checks checks = Checks.of(getClass());
    private final Recipe twoToOne =
            Recipe.of(Recipe.By.VOLUME, List.of(2.0, 1.0), List.of(1.15, 0.98));
    private final Batch twenty = twoToOne.ofTotal(20);
    private final Scale tenth = new Scale(0.1);

    @Test
    void agreesOnTheRatioByMass() {
        checks.row("69-ratio").expects(twoToOne.massRatio(1));
        checks.row("69-phr").expects(twoToOne.partsPerHundred(1));
        checks.row("70-a").expects(twenty.grams().get(0));
        checks.row("70-b").expects(twenty.grams().get(1));
    }

    @Test
    void agreesOnWhatTheScaleAllows() {
        checks.row("71-tenth").expects(100 * twenty.worstRatioError(tenth));
        checks.row("71-hundredth").expects(100 * twenty.worstRatioError(new Scale(0.01)));
        checks.row("71-standard").expects(100 * twenty.standardRatioError(tenth, 0, 1));
        checks.row("g-3-rounded").expects(100 * twenty.onScale(tenth).worstRatioError(tenth));
    }

    @Test
    void agreesOnTheSmallestBatch() {
        checks.row("72-resolution").expects(tenth.smallestBatchByResolution(twoToOne, 0.02));
        checks.row("g-3-smallest").expects(tenth.smallestBatch(twoToOne, 0.02));
    }

    @Test
    void agreesOnFilms() {
        Film film = new Film(12_000, 1.10);
        checks.row("73-needed").expects(film.needed(150, 0.85));
        checks.row("73-batch").expects(film.batch(150, 0.85, 6, 0.1));
        checks.row("73-film").expects(film.thickness(0.90));
        checks.row("74-wet").expects(Film.wet(100, 0.6));
    }

    @Test
    void agreesOnThinner() {
        Thinner thinner = twenty.thinner(0.10);
        checks.row("g-7-density").expects(twoToOne.density());
        checks.row("g-7-volume").expects(thinner.millilitres());
        checks.row("g-7-mass").expects(thinner.grams(0.87));
    }

    @Test
    void agreesOnHowFarARatioInTheCupIsKnown() {
        checks.row("pouring-tared")
                .expects(uncertaintyPercent(
                        Pouring.Reading.TARED, new Pour(0, 14.1), new Pour(1, 6.2)));
        checks.row("pouring-running")
                .expects(uncertaintyPercent(
                        Pouring.Reading.RUNNING, new Pour(0, 14.1), new Pour(1, 20.3)));
        checks.row("pouring-again")
                .expects(uncertaintyPercent(
                        Pouring.Reading.RUNNING,
                        new Pour(0, 14.1),
                        new Pour(1, 20.9),
                        new Pour(0, 22.8)));
    }

    @Test
    void agreesOnHowACupIsSaved() {
        Pouring cup = new Pouring(twenty, List.of(new Pour(0, 15)), Pouring.Reading.TARED, tenth);
        checks.row("pouring-saved").expects(cup.still(1));
    }

    private double uncertaintyPercent(Pouring.Reading reading, Pour... pours) {
        Pouring cup = new Pouring(twenty, List.of(pours), reading, tenth);
        return 100 * cup.reached().get(0).uncertainty();
    }
}
