package org.twinbar.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.twinbar.finding.Finding;
import org.twinbar.finding.Finding.Kind;
import org.twinbar.statistics.PlannedEffect;
import org.twinbar.statistics.Power;
import org.twinbar.statistics.SampleSize;

/**
 * How many specimens a comparison of two equal groups takes, and what they can be expected to show.
 *
 * <p>Power is the chance that the verdict is "supported" if the true effect is the expected one:
 * the noncentral t with 2n − 2 degrees of freedom of {@link Power}, on the side of the expected
 * effect, for a two-sided 95 % interval. The verdict itself reads an interval that lets each group
 * have its own spread; {@link SimulatedPower} shows what that costs few specimens.
 *
 * @param effect what is planned
 * @param perGroup specimens in each group; print runs where a run is the unit
 * @param power chance of "supported" with that many
 * @param smallestEffectAt80 effect found with 80 %, on the scale of the expected one; empty where
 *     the scatter hides any
 * @param findings what a person should know
 */
public record Sizing(
        PlannedEffect effect,
        int perGroup,
        double power,
        OptionalDouble smallestEffectAt80,
        List<Finding> findings) {

    /** What is wanted unless something else is said; common practice, no source. */
    public static final double USUAL_POWER = 0.8;

    /** On one side: the verdict reads a two-sided interval of 95 %. */
    static final double ALPHA_ONE_SIDED = 0.025;

    private static final int MOST_PER_GROUP = 100_000;

    /** Beyond this the groups' own spreads cost less than a simulation can see. */
    private static final int MOST_SIMULATED = 60;

    /** How many more specimens are tried to make up for the groups' own spreads. */
    private static final int MOST_MORE = 6;

    private static final Kind LOWER = Kind.note(
            "power-of-own-spreads",
            "The verdict lets each group have its own spread: %s simulated studies with %s per group came out supported in %s %%, not %s %%%s.");
    private static final Kind THREE = Kind.note(
            "few-per-group",
            "Three per group are the fewest that a verdict rests on; one that breaks wrongly leaves too few, so make one or two more.");

    public Sizing {
        findings = List.copyOf(findings);
    }

    /**
     * Returns the fewest specimens per group that reach a power.
     *
     * @param seed of the simulated studies
     * @throws PlanException unless 0.025 < power < 1 and a number that can be made is enough
     */
    public static Sizing forPower(PlannedEffect effect, double power, long seed) {
        if (!(power > ALPHA_ONE_SIDED && power < 1)) {
            throw new PlanException(
                    "The power must lie above 2.5 %% and below 100 %%, not at %s %%."
                            .formatted(perCent(power)));
        }
        if (Power.of(effect, MOST_PER_GROUP, ALPHA_ONE_SIDED) < power) {
            throw new PlanException(
                    "More than 100 000 specimens per group would be needed: the expected effect lies too close to the one worth having for this scatter.");
        }
        SampleSize size = Power.perGroup(effect, power, ALPHA_ONE_SIDED);
        return of(effect, size.perGroup(), power, seed);
    }

    /**
     * Returns what a number of specimens per group can be expected to show.
     *
     * @param seed of the simulated studies
     * @throws PlanException unless 3 ≤ n ≤ 100 000
     */
    public static Sizing forNumber(PlannedEffect effect, int perGroup, long seed) {
        if (perGroup < Power.FEWEST_PER_GROUP || perGroup > MOST_PER_GROUP) {
            throw new PlanException("A group has from %s to 100 000 specimens, not %s."
                    .formatted(Power.FEWEST_PER_GROUP, perGroup));
        }
        return of(effect, perGroup, USUAL_POWER, seed);
    }

    private static Sizing of(PlannedEffect effect, int perGroup, double wanted, long seed) {
        double power = Power.of(effect, perGroup, ALPHA_ONE_SIDED);
        List<Finding> findings = new ArrayList<>();
        if (perGroup == Power.FEWEST_PER_GROUP) {
            findings.add(THREE.with());
        }
        if (perGroup <= MOST_SIMULATED) {
            lower(effect, perGroup, power, wanted, seed).ifPresent(findings::add);
        }
        return new Sizing(
                effect,
                perGroup,
                power,
                Power.smallestEffect(effect, perGroup, USUAL_POWER, ALPHA_ONE_SIDED),
                findings);
    }

    private static java.util.Optional<Finding> lower(
            PlannedEffect effect, int perGroup, double power, double wanted, long seed) {
        SimulatedPower simulated = SimulatedPower.of(effect, perGroup, seed);
        if (!simulated.isBelow(power)) {
            return java.util.Optional.empty();
        }
        String wayOut = "";
        for (int more = 1; power >= wanted && more <= MOST_MORE; more++) {
            if (SimulatedPower.of(effect, perGroup + more, seed).share() >= wanted) {
                wayOut = "; %s per group reach %s %%".formatted(perGroup + more, perCent(wanted));
                break;
            }
        }
        return java.util.Optional.of(LOWER.with(
                SimulatedPower.STUDIES,
                perGroup,
                perCent(simulated.share()),
                perCent(power),
                wayOut));
    }

    private static String perCent(double share) {
        return String.format(Locale.ROOT, "%.0f", 100 * share);
    }
}
