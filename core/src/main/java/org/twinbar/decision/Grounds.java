package org.twinbar.decision;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.twinbar.finding.Finding;
import org.twinbar.statistics.Significance;
import org.twinbar.statistics.Summary;
import org.twinbar.statistics.assumption.Normality;
import org.twinbar.statistics.assumption.Order;
import org.twinbar.statistics.assumption.Spread;
import org.twinbar.statistics.groups.FTest;

/**
 * Looks at what a comparison of means takes for granted: spread, shape, order of testing, drift,
 * place on the plate.
 *
 * <p>Each look raises a false doubt in one study of twenty. None is a gate: nothing that is seen
 * here changes an interval or a verdict. Sources: {@link Spread#brownForsythe},
 * {@link Normality#shapiroWilk}, {@link Order#trend}; METHODS.md I.5.
 */
record Grounds(Judge judge, Judge.Judged judged, Sample treated, Sample control) {

    static final Finding.Kind SPREAD = Finding.Kind.note(
            "spread-differs",
            "%s scatters %s times as much as %s (standard deviations %s and %s). The interval allows for that; the"
                    + " cause is worth looking for.");
    static final Finding.Kind SHAPE = Finding.Kind.note(
            "shape-of-scatter",
            "The values of %s lie too unevenly about their middle for a bell curve (%s specimens). See whether the"
                    + " verdict stands on logarithms and by the middle of all pairs.");
    static final Finding.Kind IN_TURN = Finding.Kind.warning(
            "tested-in-turn",
            "All of %s was tested before all of %s, so that a drift of the bench over the day would look like the"
                    + " treatment's effect. Mix the order next time.");
    static final Finding.Kind DRIFT = Finding.Kind.warning(
            "drift-over-tests",
            "In the order of testing the values %s within the groups, by about %s from the first to the last. Look for"
                    + " what changed meanwhile; a mixed order keeps it from passing for an effect.");
    static final Finding.Kind PLACE = Finding.Kind.warning(
            "place-on-plate",
            "Values hang on where on the plate a specimen was printed, by about %s between places. Spread both groups"
                    + " over the plate alike.");
    static final Finding.Kind PLACE_IS_GROUP = Finding.Kind.warning(
            "place-is-group",
            "No place on the plate holds both %s and %s, so that what the place did can't be told from what the"
                    + " treatment did. Spread both groups over the plate alike.");

    private static final double ALARM = 0.05;
    private static final int FEWEST_FOR_SPREAD = 4;
    private static final int FEWEST_FOR_SHAPE = 8;
    private static final int FEWEST_FOR_ORDER = 6;

    /** Returns every ground that was looked at; none where no means were compared. */
    List<Ground> looked() {
        Effect effect = judge.question().effect();
        boolean means = effect == Effect.RATIO || effect == Effect.DIFFERENCE;
        if (!means || Math.min(treated.values().length, control.values().length) < 2) {
            return List.of();
        }
        List<Ground> grounds = new ArrayList<>(List.of(spread(), shape()));
        inTurn().ifPresent(grounds::add);
        grounds.add(drift());
        grounds.add(place());
        return grounds;
    }

    private Ground spread() {
        double[] ours = judged.treated().values();
        double[] others = judged.control().values();
        if (Math.min(ours.length, others.length) < FEWEST_FOR_SPREAD) {
            return Ground.untold(
                    "equal spread",
                    "Whether the groups scatter alike shows from four of each on; the interval"
                            + " allows for unequal spread.");
        }
        double p = Spread.brownForsythe(ours, others).p();
        double one = Summary.of(ours).sd();
        double other = Summary.of(others).sd();
        if (p > ALARM || !(Math.min(one, other) > 0)) {
            return Ground.holds(
                    "equal spread",
                    "The groups scatter alike as far as can be seen (standard deviations %s and %s)."
                            .formatted(amount(one, one), amount(other, other)),
                    p);
        }
        boolean wider = one > other;
        return Ground.doubted(
                "equal spread",
                SPREAD.with(
                        wider ? treated.group() : control.group(),
                        Written.fixed(Math.max(one, other) / Math.min(one, other), 1),
                        wider ? control.group() : treated.group(),
                        amount(Math.max(one, other), Math.max(one, other)),
                        amount(Math.min(one, other), Math.min(one, other))),
                p);
    }

    /** The smaller p counts twice where both groups were looked at. */
    private Ground shape() {
        List<Sample> large = new ArrayList<>();
        for (Sample sample : List.of(judged.treated(), judged.control())) {
            if (sample.values().length >= FEWEST_FOR_SHAPE && sample.summary().sd() > 0) {
                large.add(sample);
            }
        }
        if (large.isEmpty()) {
            return Ground.untold(
                    "shape of scatter",
                    "The shape of scatter shows from eight specimens of a group on.");
        }
        Sample least = large.stream()
                .min(Comparator.comparingDouble(Grounds::pOfShape))
                .orElseThrow();
        double p = Math.min(1, large.size() * pOfShape(least));
        return p > ALARM
                ? Ground.holds(
                        "shape of scatter",
                        "The scatter of %s goes with a bell curve as far as can be seen."
                                .formatted(large.stream()
                                        .map(Sample::group)
                                        .collect(Collectors.joining(" and "))),
                        p)
                : Ground.doubted(
                        "shape of scatter", SHAPE.with(least.group(), least.values().length), p);
    }

    private static double pOfShape(Sample sample) {
        return Normality.shapiroWilk(sample.values()).p();
    }

    /** Returns the doubt that one group came before the other, where it did. */
    private Optional<Ground> inTurn() {
        double[] ours = orders(treated);
        double[] others = orders(control);
        if (Math.min(ours.length, others.length) < 2) {
            return Optional.empty();
        }
        Summary one = Summary.of(ours);
        Summary other = Summary.of(others);
        boolean before = one.max() < other.min();
        if (!before && other.max() >= one.min()) {
            return Optional.empty();
        }
        double orders = 1;
        for (int i = 1; i <= ours.length; i++) {
            orders *= (double) (others.length + i) / i;
        }
        return Optional.of(Ground.doubted(
                "mixed order",
                IN_TURN.with(
                        before ? treated.group() : control.group(),
                        before ? control.group() : treated.group()),
                2 / orders));
    }

    private static double[] orders(Sample sample) {
        return sample.numbers().stream()
                .map(one -> one.circumstances().order())
                .filter(order -> order.isPresent())
                .mapToDouble(order -> order.getAsDouble())
                .toArray();
    }

    private Ground drift() {
        String what = "no drift over the tests";
        Fellows fellows =
                Fellows.of(treated, control, one -> one.circumstances().order().isPresent());
        List<Observation> members = fellows.members();
        if (members.size() < FEWEST_FOR_ORDER) {
            return Ground.untold(
                    what,
                    members.isEmpty()
                            ? "Nobody told in which order the specimens were tested, so that a"
                                    + " drift over the tests can't be looked for."
                            : "A drift over the tests shows from six specimens with fellows on.");
        }
        double[] residuals = fellows.centred(fellows.values());
        int[] inOrder = IntStream.range(0, members.size())
                .boxed()
                .sorted(Comparator.comparingDouble((Integer i) ->
                                members.get(i).circumstances().order().orElse(0))
                        .thenComparing(i -> members.get(i).specimen()))
                .mapToInt(Integer::intValue)
                .toArray();
        double[] ranks = new double[inOrder.length];
        double[] sorted = new double[inOrder.length];
        for (int rank = 0; rank < inOrder.length; rank++) {
            ranks[inOrder[rank]] = rank;
            sorted[rank] = residuals[inOrder[rank]];
        }
        Significance trend = Order.trend(sorted);
        double[] own = fellows.centred(ranks);
        double slope = dot(own, residuals) / dot(own, own);
        double overAll = Math.abs(slope * (ranks.length - 1));
        return trend.p() > ALARM || !(overAll > 0)
                ? Ground.holds(
                        what, "No drift over the tests is seen in the order of testing.", trend.p())
                : Ground.doubted(
                        what,
                        DRIFT.with(slope > 0 ? "rise" : "fall", amount(overAll, overAll)),
                        trend.p());
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    private Ground place() {
        String what = "no difference over the plate";
        Fellows fellows =
                Fellows.of(treated, control, one -> one.circumstances().spot().isPresent());
        if (fellows.members().isEmpty()) {
            return Ground.untold(
                    what,
                    "Nobody told where on the plate the specimens were printed, so that a"
                            + " difference over the plate can't be looked for.");
        }
        if (apart()) {
            return Ground.doubted(what, PLACE_IS_GROUP.with(treated.group(), control.group()), 1);
        }
        List<double[]> columns = columns(fellows.members());
        Optional<FTest> test = fellows.explainedBy(columns, "place on the plate");
        if (test.isEmpty()) {
            return Ground.untold(
                    what, "There are too few specimens for so many places to tell them apart.");
        }
        if (test.get().p() > ALARM) {
            return Ground.holds(
                    what, "No difference over the plate is seen.", test.get().p());
        }
        Summary fitted = Summary.of(fellows.fitted(columns));
        double between = fitted.max() - fitted.min();
        return Ground.doubted(
                what, PLACE.with(amount(between, between)), test.get().p());
    }

    /** Returns whether named places part the groups; measured ones lie on one scale. */
    private boolean apart() {
        Set<Spot> ours = named(treated);
        Set<Spot> others = named(control);
        boolean told = !ours.isEmpty() && !others.isEmpty();
        int repeated = treated.numbers().size() + control.numbers().size();
        boolean eachItsOwn = ours.size() + others.size() == repeated;
        ours.retainAll(others);
        return told && ours.isEmpty() && !eachItsOwn;
    }

    private static Set<Spot> named(Sample sample) {
        return sample.numbers().stream()
                .flatMap(one -> one.circumstances().spot().stream())
                .filter(Spot.Named.class::isInstance)
                .collect(Collectors.toCollection(
                        () -> new TreeSet<>(Comparator.comparing(Spot::toString))));
    }

    private static List<double[]> columns(List<Observation> members) {
        List<double[]> columns = new ArrayList<>();
        double[] x = new double[members.size()];
        double[] y = new double[members.size()];
        Set<String> names = new TreeSet<>();
        for (int i = 0; i < members.size(); i++) {
            Spot spot = members.get(i).circumstances().spot().orElseThrow();
            if (spot instanceof Spot.Measured place) {
                x[i] = place.x();
                y[i] = place.y();
            } else if (spot instanceof Spot.Named place) {
                names.add(place.name());
            }
        }
        if (names.isEmpty()) {
            return List.of(x, y);
        }
        for (String name : names) {
            columns.add(members.stream()
                    .mapToDouble(one -> one.circumstances()
                                    .spot()
                                    .filter(new Spot.Named(name)::equals)
                                    .isPresent()
                            ? 1
                            : 0)
                    .toArray());
        }
        return columns;
    }

    private String amount(double value, double digitsOf) {
        return Written.fixed(value, Written.decimalsOf(digitsOf))
                + Written.unit(judge.question().subject().unit());
    }
}
