package org.twinbar.planning.resolving;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.twinbar.finding.Finding;
import org.twinbar.instrument.Bench;
import org.twinbar.instrument.Instrument;
import org.twinbar.method.Property;
import org.twinbar.method.Readings;
import org.twinbar.method.Result;
import org.twinbar.planning.PlanException;
import org.twinbar.planning.resolving.Resolution.Lever;
import org.twinbar.planning.resolving.Resolution.Part;
import org.twinbar.planning.resolving.Resolution.Shared;
import org.twinbar.statistics.Power;
import org.twinbar.uncertainty.Budget;
import org.twinbar.uncertainty.Source;

/**
 * Tells what a bench can tell apart, by calculating typical readings on it.
 *
 * <p>Two groups of the same typical specimen are calculated. Errors of one specimen's own stay in
 * their difference; errors that both share move both means alike and cancel when it is asked
 * whether there is any difference (a gain then scales the difference, to second order); an error
 * that carries a group's name moves one of them and stays whole.
 */
public final class Resolving {

    /** Changes that gain less than this share are not told. */
    private static final double WORTH_TELLING = 0.01;

    private static final int MOST_PER_GROUP = 10_000;

    private final Typical typical;
    private final Property property;
    private final int perGroup;
    private final OptionalDouble givenScatter;
    private final Bench bench;

    private Resolving(
            Typical typical,
            Property property,
            int perGroup,
            OptionalDouble givenScatter,
            Bench bench) {
        this.typical = typical;
        this.property = property;
        this.perGroup = perGroup;
        this.givenScatter = givenScatter;
        this.bench = bench;
    }

    /**
     * Finds the smallest difference, what limits it, and what would help.
     *
     * @param property a ratio or a difference
     * @param bench the instruments; typical values need no correction by them
     * @param perGroup specimens per group
     * @param scatter standard deviation of one result from specimen to specimen, errors of its
     *     reading included, in the property's unit; none where only the instruments count
     * @throws PlanException where the typical readings give no number of the property, or there are
     *     fewer than 3 or more than 10 000 specimens per group
     */
    public static Resolution of(
            Typical typical, Property property, Bench bench, int perGroup, OptionalDouble scatter) {
        if (perGroup < Power.FEWEST_PER_GROUP || perGroup > MOST_PER_GROUP) {
            throw new PlanException("A group has from %s to 10 000 specimens, not %s."
                    .formatted(Power.FEWEST_PER_GROUP, perGroup));
        }
        Bench corrected = bench.withEach(Instrument::ofCorrected);
        return new Resolving(typical, property, perGroup, scatter, corrected).resolution();
    }

    /** What a comparison of two groups of one specimen sees. */
    private record Seen(
            double value,
            double own,
            double apart,
            List<Part> parts,
            List<Shared> cancelling,
            List<Finding> findings) {}

    private Resolution resolution() {
        Seen seen = seen(typical.on(bench).build(), bench)
                .orElseThrow(() -> new PlanException(
                        "The typical readings give no number of %s, so that nothing can be told of it."
                                .formatted(property.label().toLowerCase(java.util.Locale.ROOT))));
        double scatter = Math.max(givenScatter.orElse(0), seen.own());
        double ofSpecimens = Math.sqrt(Math.max(0, scatter * scatter - seen.own() * seen.own()));
        Smallest alone = smallest(seen, 0, perGroup);
        Smallest withScatter = smallest(seen, ofSpecimens, perGroup);
        return new Resolution(
                property,
                seen.value(),
                perGroup,
                seen.own(),
                seen.apart(),
                scatter,
                alone,
                withScatter,
                seen.parts(),
                seen.cancelling(),
                levers(seen, ofSpecimens, alone, withScatter));
    }

    private Smallest smallest(Seen seen, double ofSpecimens, int specimens) {
        return Smallest.of(
                property,
                seen.value(),
                Math.sqrt(ofSpecimens * ofSpecimens + seen.own() * seen.own()),
                seen.own(),
                seen.apart(),
                specimens);
    }

    private Optional<Seen> seen(Readings readings, Bench on) {
        Result control = Result.of(typical.method(), readings);
        Result treated = Result.of(
                typical.method(), readings.again(typical.treated(), on).build());
        Budget ofControl = control.budgets().get(property);
        Budget ofTreated = treated.budgets().get(property);
        if (ofControl == null || ofTreated == null) {
            return Optional.empty();
        }
        Map<String, Double> apart = apart(ofControl, ofTreated);
        double own = ofControl.u(Source.Reach.OWN);
        double squares =
                apart.values().stream().mapToDouble(shift -> shift * shift).sum();
        return Optional.of(new Seen(
                ofControl.value(),
                own,
                Math.sqrt(squares),
                parts(ofControl, apart, readings.specimen()),
                cancelling(ofControl, apart),
                control.findings()));
    }

    /** Returns by how much each shared source moves the difference of the two groups. */
    private static Map<String, Double> apart(Budget control, Budget treated) {
        Map<String, Double> moves = new TreeMap<>();
        treated.shifts().forEach((source, shift) -> {
            if (source.reach() == Source.Reach.SHARED) {
                moves.merge(source.identity(), shift, Double::sum);
            }
        });
        control.shifts().forEach((source, shift) -> {
            if (source.reach() == Source.Reach.SHARED) {
                moves.merge(source.identity(), -shift, Double::sum);
            }
        });
        moves.values().removeIf(move -> move == 0);
        return moves;
    }

    private static List<Part> parts(Budget budget, Map<String, Double> apart, String specimen) {
        Map<String, Double> squares = new LinkedHashMap<>();
        budget.shifts().forEach((source, shift) -> {
            if (source.reach() == Source.Reach.OWN) {
                squares.merge(plain(source.identity(), specimen), shift * shift, Double::sum);
            }
        });
        apart.forEach((name, move) -> squares.merge(name, move * move, Double::sum));
        double all = squares.values().stream().mapToDouble(Double::doubleValue).sum();
        return squares.entrySet().stream()
                .filter(it -> it.getValue() > 0)
                .map(it -> new Part(it.getKey(), Math.sqrt(it.getValue()), it.getValue() / all))
                .sorted(Comparator.comparingDouble(Part::share).reversed())
                .toList();
    }

    private static List<Shared> cancelling(Budget budget, Map<String, Double> apart) {
        return budget.shifts().entrySet().stream()
                .filter(it -> it.getKey().reach() == Source.Reach.SHARED)
                .filter(it -> !apart.containsKey(it.getKey().identity()))
                .map(it -> new Shared(it.getKey().identity(), Math.abs(it.getValue())))
                .sorted(Comparator.comparingDouble(Shared::u).reversed())
                .toList();
    }

    private static String plain(String identity, String specimen) {
        return identity.startsWith(specimen + " ")
                ? identity.substring(specimen.length() + 1)
                : identity;
    }

    private List<Lever> levers(
            Seen seen, double ofSpecimens, Smallest alone, Smallest withScatter) {
        List<Lever> levers = new ArrayList<>();
        for (Change change : Change.all(typical, property, bench)) {
            change.readings()
                    .flatMap(readings -> seen(readings, change.bench()))
                    .map(it -> new Lever(
                            change.words(),
                            smallest(it, 0, perGroup),
                            smallest(it, ofSpecimens, perGroup),
                            doubts(seen, it)))
                    .ifPresent(levers::add);
        }
        levers.add(new Lever(
                "%s specimens per group instead of %s".formatted(2 * perGroup, perGroup),
                smallest(seen, 0, 2 * perGroup),
                smallest(seen, ofSpecimens, 2 * perGroup),
                List.of()));
        levers.removeIf(it -> gain(it.fromInstruments(), alone) < WORTH_TELLING
                && gain(it.withScatter(), withScatter) < WORTH_TELLING);
        levers.sort(Comparator.comparingDouble((Lever it) -> it.withScatter().orHidden())
                .thenComparingDouble(it -> it.fromInstruments().orHidden()));
        return levers;
    }

    private static double gain(Smallest after, Smallest before) {
        return before.orHidden() == 0 || Double.isInfinite(after.orHidden())
                ? 0
                : 1 - after.orHidden() / before.orHidden();
    }

    private static List<String> doubts(Seen before, Seen after) {
        List<String> known = before.findings().stream().map(Finding::code).toList();
        return after.findings().stream()
                .filter(it -> it.level() != Finding.Level.NOTE)
                .map(Finding::code)
                .filter(code -> !known.contains(code))
                .distinct()
                .toList();
    }
}
