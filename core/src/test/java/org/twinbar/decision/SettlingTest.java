package org.twinbar.decision;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.twinbar.quantity.Unit;
import org.twinbar.statistics.Count;
import org.twinbar.statistics.Estimate;
import org.twinbar.statistics.HazardRatio;
import org.twinbar.statistics.Lifetime;
import org.twinbar.statistics.ShareDifference;
import org.twinbar.statistics.Stratum;

class SettlingTest {

    private static final Subject DRY = new Subject("leak-free", Unit.ONE, "cups");
    private static final Subject LEAK = new Subject("leak", Unit.of("h"), "cups");
    private static final Subject GLOSS = new Subject("gloss", Unit.ONE, "cups");

    private static Comparison compare(Question question, List<Observation> specimens) {
        return Comparing.of(question, specimens, "plain", "coated");
    }

    private static List<Observation> answers(int plain, int coated, int of) {
        List<Observation> all = new ArrayList<>();
        for (int i = 0; i < of; i++) {
            all.add(Observation.of("P" + i, "plain", new Observed.YesNo(i < plain)));
            all.add(Observation.of("C" + i, "coated", new Observed.YesNo(i < coated)));
        }
        return all;
    }

    @Test
    void asksForMoreCupsWhereThreeAndThreeTellNothing() {
        Question drier = Question.of(DRY, Effect.SHARE, Expectation.HIGHER);
        Comparison comparison = compare(drier, answers(0, 3, 3));
        assertThat(comparison.verdict()).isEqualTo(Verdict.OPEN);
        Needed.Specimens needed = (Needed.Specimens) comparison.needed();
        // METHODS.md E: the best that 4 and 4 can do is p = 0.029, 3 and 3 only 0.10.
        assertThat(needed.perGroup()).isEqualTo(4);
        assertThat(needed.power()).isEqualTo(1);
        assertThat(comparison.reasons())
                .contains(
                        "About 4 specimens per group would settle it, if the true shares are as seen.");
    }

    @Test
    void reckonsWithTheClaimedShareToo() {
        Question drier = Question.of(DRY, Effect.SHARE, Expectation.HIGHER)
                .withWorth(0.1)
                .withClaimed(0.5);
        Comparison comparison = compare(drier, answers(2, 5, 8));
        Needed.Specimens claimed = comparison.needed().ifClaimHolds().orElseThrow();
        assertThat(claimed.perGroup())
                .isLessThan(((Needed.Specimens) comparison.needed()).perGroup());
        assertThat(comparison.reasons())
                .anyMatch(
                        reason -> reason.startsWith("If the claimed size were the true one, about "
                                + claimed.perGroup() + " specimens per group"));
    }

    /** The staircase of supporting outcomes against the rule asked of each outcome. */
    @ParameterizedTest
    @EnumSource(names = {"HIGHER", "LOWER"})
    void countsNoOutcomeThatTheRuleDoesNot(Expectation expectation) {
        for (double worth : new double[] {0, 0.1}) {
            Question question = Question.of(DRY, Effect.SHARE, expectation);
            question = worth > 0 ? question.withWorth(worth) : question;
            double treated = expectation == Expectation.HIGHER ? 0.8 : 0.25;
            SharesProspect prospect = new SharesProspect(question, treated, 1 - treated);
            for (int n = 3; n <= 24; n += 3) {
                double sum = 0;
                for (int x = 0; x <= n; x++) {
                    for (int y = 0; y <= n; y++) {
                        Estimate found =
                                ShareDifference.guarded(new Count(x, n), new Count(y, n), 0.95);
                        boolean supported = VerdictRule.read(found.low(), found.high(), question)
                                == Verdict.SUPPORTED;
                        sum += supported
                                ? binomial(n, x, treated) * binomial(n, y, 1 - treated)
                                : 0;
                    }
                }
                assertThat(prospect.supported(n))
                        .as("%s per group", n)
                        .isCloseTo(sum, within(1e-10));
            }
        }
    }

    private static double binomial(int n, int x, double share) {
        double chance = 1;
        for (int i = 1; i <= x; i++) {
            chance *= (n - x + i) / (double) i * share;
        }
        return chance * StrictMath.pow(1 - share, n - x);
    }

    /** The quick look at one ratio against the whole interval. */
    @Test
    void looksAtOneRatioAsTheIntervalDoes() {
        Random random = new Random(11);
        int below = 0;
        for (int study = 0; study < 400; study++) {
            List<Lifetime> ours = lives(random, 0.03, study % 3 == 0);
            List<Lifetime> others = lives(random, 0.12, study % 3 == 0);
            List<Stratum> strata = study % 2 == 0
                    ? List.of(new Stratum(ours, others))
                    : List.of(
                            new Stratum(ours.subList(0, 4), others.subList(0, 5)),
                            new Stratum(ours.subList(4, 9), others.subList(5, 9)));
            HazardRatio ratio = HazardRatio.of(strata, 0.95);
            for (double worth : new double[] {0.5, 1}) {
                boolean quick = HazardRatio.liesBelow(worth, strata, 0.95);
                boolean whole = ratio instanceof HazardRatio.Known known
                        && known.estimate().high() < worth;
                assertThat(quick).as("study %s, seed 11", study).isEqualTo(whole);
                below += quick ? 1 : 0;
            }
            boolean above =
                    ratio instanceof HazardRatio.Known known && known.estimate().low() > 1;
            assertThat(HazardRatio.liesAbove(1, strata, 0.95)).isEqualTo(above);
        }
        assertThat(below).isBetween(100, 700);
    }

    private static List<Lifetime> lives(Random random, double rate, boolean looks) {
        List<Lifetime> lives = new ArrayList<>();
        for (int i = 0; i < 9; i++) {
            double time = -StrictMath.log(1 - random.nextDouble()) / rate;
            double whole = Math.floor(time);
            lives.add(
                    time > 24
                            ? Lifetime.censored(24)
                            : looks
                                    ? Lifetime.between(whole, whole + 1)
                                    : Lifetime.event(whole + 1));
        }
        return lives;
    }

    @Test
    void simulatesRatesAndSaysSo() {
        Question slower = Question.of(LEAK, Effect.RATE, Expectation.LOWER)
                .withClaimed(0.9)
                .withWorth(0.2);
        List<Observation> cups = new ArrayList<>(Specimens.of("plain", 2, 5, 9, 14));
        cups.addAll(Specimens.of("coated", 20));
        for (int i = 0; i < 4; i++) {
            cups.add(Observation.of("D" + i, "coated", new Observed.AtLeast(24)));
            cups.add(Observation.of("E" + i, "plain", new Observed.AtLeast(24)));
        }
        Comparison comparison = compare(slower, cups);
        assertThat(comparison.verdict()).isNotEqualTo(Verdict.SUPPORTED);
        Needed.Specimens needed = (Needed.Specimens) comparison.needed();
        assertThat(needed.method()).isEqualTo("250 simulated studies");
        assertThat(needed.power()).isBetween(0.8, 0.95);
        assertThat(needed.ifClaimHolds().orElseThrow().perGroup()).isBetween(3, 60);
        assertThat(compare(slower, cups).needed()).isEqualTo(needed);
    }

    @Test
    void tellsWhoWatchedCupsThatNeverLeakedToWatchLonger() {
        List<Observation> cups = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            cups.add(Observation.of("P" + i, "plain", new Observed.AtLeast(24)));
            cups.add(Observation.of("C" + i, "coated", new Observed.AtLeast(24)));
        }
        Comparison comparison = compare(Question.of(LEAK, Effect.RATE, Expectation.LOWER), cups);
        assertThat(((Needed.None) comparison.needed()).reason()).startsWith("Watch longer");
    }

    /** Studies of the real rule, drawn here in another way, against the prospect. */
    @Test
    void simulatesRanksByTheRealRule() {
        double[] plain = {1, 2, 2, 3, 3, 4};
        double[] coated = {2, 3, 3, 4, 4, 5};
        Question higher = Question.of(GLOSS, Effect.RANK, Expectation.HIGHER);
        Comparison comparison = compare(higher, Specimens.of("plain", plain, "coated", coated));
        Needed.Specimens needed = (Needed.Specimens) comparison.needed();
        Random random = new Random(5);
        int supported = 0;
        for (int study = 0; study < 400; study++) {
            double[] ours = new double[needed.perGroup()];
            double[] others = new double[needed.perGroup()];
            for (int i = 0; i < ours.length; i++) {
                ours[i] = coated[random.nextInt(6)];
                others[i] = plain[random.nextInt(6)];
            }
            Judgement judged = Comparing.judge(
                    higher, Specimens.of("plain", others, "coated", ours), "plain", "coated");
            supported += judged.verdict() == Verdict.SUPPORTED ? 1 : 0;
        }
        // Three standard errors of the difference of two simulated shares.
        assertThat(supported / 400.0).isCloseTo(needed.power(), within(0.12));
    }

    @Test
    void asksForPrintRunsWhereTheyAreWhatCounts() {
        double[] runs = {40, 46, 43, 50};
        double[] effects = {1.0, 4.5, 2.0, 6.5};
        List<Observation> bars = new ArrayList<>();
        for (int run = 0; run < 4; run++) {
            for (int i = 0; i < 3; i++) {
                Block block = new Block("print run", "R" + run);
                bars.add(Observation.of("P" + run + i, "plain", runs[run] + 0.7 * i)
                        .inBlock(block));
                bars.add(Observation.of("C" + run + i, "coated", runs[run] + effects[run] + 0.7 * i)
                        .inBlock(block));
            }
        }
        Question question = Question.of(Specimens.STRENGTH, Effect.DIFFERENCE, Expectation.HIGHER)
                .withWorth(1);
        Comparison comparison = compare(question, bars);
        assertThat(comparison.verdict()).isEqualTo(Verdict.OPEN);
        Needed.Specimens needed = (Needed.Specimens) comparison.needed();
        int runsNeeded = needed.blocks().orElseThrow().number();
        assertThat(needed.perGroup()).isEqualTo(3 * runsNeeded);
        assertThat(needed.words())
                .isEqualTo("%s print runs (%s specimens per group)"
                        .formatted(runsNeeded, 3 * runsNeeded));
        assertThat(comparison.reasons()).anyMatch(reason -> reason.contains(needed.words()));
    }

    @Test
    void countsUnitsWhereARunHasOneTreatment() {
        List<Observation> bars = new ArrayList<>();
        double[] runs = {40, 43, 46, 45, 43, 48};
        for (int run = 0; run < 6; run++) {
            for (int i = 0; i < 5; i++) {
                bars.add(Observation.of(
                                "S" + run + i,
                                run % 2 == 0 ? "plain" : "coated",
                                runs[run] + 0.3 * i)
                        .inUnit("run " + run));
            }
        }
        Comparison comparison =
                compare(Question.of(Specimens.STRENGTH, Effect.RATIO, Expectation.HIGHER), bars);
        assertThat(comparison.treated().n()).isEqualTo(3);
        Needed.Specimens needed = (Needed.Specimens) comparison.needed();
        assertThat(needed.blocks().orElseThrow().kind()).isEqualTo("unit");
        assertThat(needed.perGroup())
                .isEqualTo(5 * needed.blocks().orElseThrow().number());
    }

    @Test
    void reckonsAClaimOfNoChange() {
        List<Observation> alike =
                Specimens.of("plain", new double[] {42, 44, 41, 43, 45}, "coated", new double[] {
                    43, 41, 45, 42, 44
                });
        Comparison comparison =
                compare(Question.same(Specimens.STRENGTH, Effect.RATIO, 0.05), alike);
        assertThat(comparison.verdict()).isEqualTo(Verdict.OPEN);
        Needed.Specimens needed = (Needed.Specimens) comparison.needed();
        assertThat(needed.perGroup()).isBetween(8, 14);
        assertThat(comparison.reasons())
                .anyMatch(reason -> reason.startsWith("If there were no change"));
    }

    @Test
    void asksForAsManyBarsAsTheWorseOfBothLimitsTakes() {
        double[] values = {61.8, 63.1, 62.4, 64.0, 62.9};
        Question level = Question.level(Specimens.STRENGTH, new Level(59, 0.9), Expectation.HIGHER);
        Comparison comparison = Comparing.level(level, Specimens.of("coated", values), "coated");
        assertThat(comparison.verdict()).isEqualTo(Verdict.OPEN);
        Needed.Specimens needed = (Needed.Specimens) comparison.needed();
        assertThat(needed.perGroup()).isBetween(5, 14);
        assertThat(comparison.reasons())
                .anyMatch(reason -> reason.contains("specimens would settle it"));
        Question beyond =
                Question.level(Specimens.STRENGTH, new Level(62, 0.9), Expectation.HIGHER);
        Comparison hopeless = Comparing.level(beyond, Specimens.of("coated", values), "coated");
        assertThat(((Needed.None) hopeless.needed()).reason()).startsWith("As far as was seen");
    }
}
