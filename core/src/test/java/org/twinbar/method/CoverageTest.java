package org.twinbar.method;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.twinbar.finding.Figures;

/**
 * Whether each method's stated uncertainty covers the truth as often as it says; and
 * docs/methods-coverage.md, which tells what was found.
 *
 * <p>With the system property {@code twinbar.update} the page is made anew instead.
 */
class CoverageTest {

    private static final long SEED = 527;

    /** Four binomial standard deviations below 95 % of 400. */
    private static final int FEWEST_HELD = 362;

    private static final Path PAGE = Path.of(System.getProperty("basedir", "core"))
            .toAbsolutePath()
            .resolveSibling("docs")
            .resolve("methods-coverage.md");

    private static final String HEAD = """
            # Does the stated uncertainty cover the truth?

            For each test method, %s specimens were simulated whose truth is known, with errors drawn as
            the bench is said to have them. The table tells in how many of them the 95 %% interval of the one
            specimen held the truth, by how much its value lay beside it on average (bias), how far values
            scattered about it, and the standard uncertainty that Twinbar stated. 380 are expected; more is
            caution, and fewer than %s cannot be chance: the tests fail.

            The page is made by `./check --update` from seed %s. The simulated specimens stand beside the
            tests of each method, in classes whose names end in `Sweeps`.

            | method | property | what was wrong with the readings | held, of %s | mean truth | bias | scatter | stated u |
            |---|---|---|---|---|---|---|---|
            """;

    private static final String BOUNDS = """

            ## And where a result is a bound?

            A result may be "at least", "below" or "between", and that is a statement too. Here %s specimens each
            were drawn where it is hardest to keep: the truth lies at the very end that is stated, or anywhere
            between two looks, or about the limit of detection. The first number tells in how many the truth lay
            within the ends as they stand. Where an end is itself a reading, that is one half at its very edge, as
            it must be; the second number lets each end be off by its own stated uncertainty, and 380 are
            expected of it.

            | method | property | what is said | what was wrong with the readings | as it stands | with its uncertainty |
            |---|---|---|---|---|---|
            """;

    private static List<Swept> all = List.of();
    private static List<Bounded> bounds = List.of();

    @BeforeAll
    static void simulate() {
        List<Swept> found = new ArrayList<>();
        List<Bounded> bounded = new ArrayList<>();
        for (TestMethod method : Methods.builtIn().all()) {
            for (Sweep sweep : Sweeps.of(method)) {
                found.add(new Swept(method, sweep, sweep.run(SEED)));
            }
            for (BoundSweep sweep : Sweeps.boundsOf(method)) {
                bounded.add(new Bounded(method, sweep, sweep.run(SEED)));
            }
        }
        all = found;
        bounds = bounded;
    }

    @Test
    void statedUncertaintyCoversTheTruthAsOftenAsItSays() {
        assertThat(all)
                .isNotEmpty()
                .allSatisfy(swept -> assertThat(swept.found().held())
                        .as(swept.row())
                        .isGreaterThanOrEqualTo(FEWEST_HELD));
    }

    @Test
    void theTruthLiesWithinWhatIsSaidOfIt() {
        assertThat(bounds)
                .isNotEmpty()
                .allSatisfy(bounded -> assertThat(bounded.found().withDoubt())
                        .as(bounded.row())
                        .isGreaterThanOrEqualTo(FEWEST_HELD));
    }

    /** Ranks have no uncertainty to state; every other method has simulated specimens. */
    @Test
    void everyMethodThatMeasuresIsSimulated() {
        for (TestMethod method : Methods.builtIn().all()) {
            boolean ranks = method.description().properties().stream()
                    .allMatch(property -> property.scale() == Property.Scale.RANK);
            assertThat(ranks || !Sweeps.of(method).isEmpty())
                    .as("%s has simulated specimens", method.description().name())
                    .isTrue();
        }
    }

    /** A value that lies aside by more than its uncertainty has an error that nobody states. */
    @Test
    void valuesAreNotBiased() {
        assertThat(all)
                .allSatisfy(swept -> assertThat(Math.abs(swept.found().bias()))
                        .as(swept.row())
                        .isLessThan(0.5 * swept.found().stated()));
    }

    @Test
    void thePageTellsWhatIsFound() throws IOException {
        StringBuilder page =
                new StringBuilder(HEAD.formatted(Sweep.RUNS, FEWEST_HELD, SEED, Sweep.RUNS));
        all.forEach(swept -> page.append(swept.row()));
        page.append(BOUNDS.formatted(Sweep.RUNS));
        bounds.forEach(bounded -> page.append(bounded.row()));
        if (Boolean.getBoolean("twinbar.update")) {
            Files.writeString(PAGE, page);
        }
        assertThat(PAGE)
                .as("read what changed, then run ./check --update")
                .exists()
                .hasContent(page.toString());
    }

    private record Swept(TestMethod method, Sweep sweep, Sweep.Found found) {

        String row() {
            return "| %s | `%s` | %s | %s | %s | %s | %s | %s |\n"
                    .formatted(
                            method.description().name(),
                            sweep.property().column(),
                            sweep.errors(),
                            found.held(),
                            Figures.three(found.truth()),
                            Figures.two(found.bias()),
                            Figures.two(found.scatter()),
                            Figures.two(found.stated()));
        }
    }

    private record Bounded(TestMethod method, BoundSweep sweep, BoundSweep.Found found) {

        String row() {
            return "| %s | `%s` | %s | %s | %s | %s |\n"
                    .formatted(
                            method.description().name(),
                            sweep.property().column(),
                            sweep.known(),
                            sweep.errors(),
                            found.asSaid(),
                            found.withDoubt());
        }
    }
}
