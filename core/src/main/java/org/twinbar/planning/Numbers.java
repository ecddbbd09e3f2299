package org.twinbar.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.TreeSet;
import org.twinbar.finding.Figures;
import org.twinbar.finding.Finding;
import org.twinbar.finding.Finding.Kind;

/**
 * What so many specimens can tell, and what they take: a row for each number.
 *
 * @param rows the fewest first
 * @param enough fewest per group that reach the power; empty where none of those tried does
 * @param power that is wanted
 * @param method how the chance is reckoned, in words
 * @param findings what a person should know
 */
public record Numbers(
        List<Row> rows, OptionalInt enough, double power, String method, List<Finding> findings) {

    /** No verdict rests on fewer. */
    public static final int FEWEST = 3;

    /** Beyond this nobody makes specimens by hand; common practice, no source. */
    public static final int MOST = 200;

    private static final Kind MANY = Kind.warning(
            "plan-too-many",
            "Even %s per group reach a chance of only %s %%: expect a larger effect, ask for a smaller one worth having, or make specimens that scatter less.");
    private static final Kind RESOLUTION = Kind.warning(
            "plan-coarse-bench",
            "The bench reads in steps of %s, against a scatter of %s: its steps hide part of the scatter, and the numbers here take %s as scatter instead.");

    /**
     * One number of specimens.
     *
     * @param perGroup specimens in each group
     * @param power chance of "supported" if what is expected is true
     * @param smallest effect found with 80 %, on the scale of the aim, where there is one
     * @param cost of all groups together
     */
    public record Row(int perGroup, double power, OptionalDouble smallest, Effort.Cost cost) {}

    /**
     * How specimens are grouped.
     *
     * @param all groups of the plan
     * @param taking groups that take resin
     */
    public record Groups(int all, int taking) {}

    public Numbers {
        rows = List.copyOf(rows);
        findings = List.copyOf(findings);
    }

    /**
     * Returns the table of an aim.
     *
     * @param power that is wanted
     * @throws PlanException unless 0.025 < power < 1
     */
    public static Numbers of(Aim aim, double power, Groups groups, Effort effort) {
        return of(aim, power, groups, effort, OptionalInt.empty());
    }

    /**
     * Returns the table with a row for a number that somebody has in mind.
     *
     * @param mind the number; none where nobody has one
     * @throws PlanException unless 0.025 < power < 1 and the number lies from 3 to 200
     */
    public static Numbers of(
            Aim aim, double power, Groups groups, Effort effort, OptionalInt mind) {
        if (mind.isPresent() && (mind.getAsInt() < FEWEST || mind.getAsInt() > MOST)) {
            throw new PlanException("A group has from %s to %s specimens here, not %s."
                    .formatted(FEWEST, MOST, mind.getAsInt()));
        }
        if (!(power > Sizing.ALPHA_ONE_SIDED && power < 1)) {
            throw new PlanException(
                    "The power must lie above 2.5 %% and below 100 %%, not at %s %%."
                            .formatted(100 * power));
        }
        OptionalInt enough = aim.fewest(power);
        List<Row> rows = new ArrayList<>();
        for (int number : shown(enough, mind)) {
            rows.add(new Row(
                    number,
                    aim.power(number),
                    aim.smallest(number),
                    effort.of(groups.all() * number, groups.taking() * number)));
        }
        List<Finding> findings = enough.isPresent()
                ? List.of()
                : List.of(MANY.with(MOST, Figures.two(100 * aim.power(MOST))));
        return new Numbers(rows, enough, power, aim.method(), findings);
    }

    private static Iterable<Integer> shown(OptionalInt enough, OptionalInt mind) {
        int most = enough.orElse(MOST);
        TreeSet<Integer> shown = new TreeSet<>();
        mind.ifPresent(shown::add);
        for (int number : new int[] {3, 4, 5, 6, 8, 10, 12, 15, 20, 30, 50, 100, 200}) {
            if (number < 2 * most) {
                shown.add(number);
            }
        }
        shown.add(most);
        return shown;
    }

    /** Returns the row of a number, where the table has it. */
    public Optional<Row> row(int perGroup) {
        return rows.stream().filter(it -> it.perGroup() == perGroup).findFirst();
    }

    /**
     * Returns the scatter that a bench sees: no less than √3 of one reading's standard uncertainty
     * from resolution, below which equal readings would pass for no scatter at all.
     *
     * <p>u = d/√12, s at least √3·u = d/2. Source: DESIGN.md, rule 5.
     *
     * @param scatter of specimens
     * @param step d, smallest step of the values, in the same unit; 0 where it plays no part
     */
    public static double seenScatter(double scatter, double step) {
        return Math.max(scatter, step / 2);
    }

    /** Returns what is to be said of a bench's steps. */
    public static List<Finding> resolution(double scatter, double step) {
        return seenScatter(scatter, step) > scatter
                ? List.of(RESOLUTION.with(
                        Figures.three(step),
                        Figures.three(scatter),
                        Figures.three(seenScatter(scatter, step))))
                : List.of();
    }
}
