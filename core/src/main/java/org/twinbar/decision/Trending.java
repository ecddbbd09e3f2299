package org.twinbar.decision;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.twinbar.finding.Finding;
import org.twinbar.statistics.Estimate;
import org.twinbar.statistics.StudentT;
import org.twinbar.statistics.Summary;
import org.twinbar.statistics.groups.Explained;

/**
 * Fits a straight line of a property over an amount.
 *
 * <p>Least squares, within print runs, mixes or loads where these are told: slope Σx'y'/Σx'², x'
 * and y' less the means of their blocks, with n − b − 1 degrees of freedom. Specimens that share
 * one treatment count as one. Scatter is not believed below what readings resolve: where s &lt;
 * √3·u the slope's variance is at least n·u²/Σx'², as if every error of rounding pulled the same
 * way. A shared error moves the slope by the slope of its moves. Sources: N. R. Draper, H. Smith,
 * Applied regression analysis (1998), chapters 1 and 2; lack of fit also NIST/SEMATECH e-Handbook
 * of Statistical Methods, 4.4.4.6; the floor after METHODS.md J.1.
 */
public final class Trending {

    static final Finding.Kind BENT = Finding.Kind.warning(
            "line-is-bent",
            "The means at the %s amounts lie farther from a straight line than scatter puts them in one study of twenty:"
                    + " look at the figure, the slope alone says too little.");
    static final Finding.Kind TWO_AMOUNTS = Finding.Kind.note(
            "two-amounts",
            "With two amounts nothing tells a straight line from a bent one. A third between them would.");
    static final Finding.Kind NOT_ON_LINE = Finding.Kind.note(
            "not-on-line",
            "No part in the line take: %s (left out, or without a value or an amount).");

    private static final double ALARM = 0.05;
    private static final double ROOT_OF_THREE = Math.sqrt(3);
    private static final int PLACES = 25;

    /**
     * A specimen with what it was given.
     *
     * @param amount in the unit of the question's amount
     */
    public record Given(Observation specimen, double amount) {
        public Given {
            if (!Double.isFinite(amount)) {
                throw new IllegalArgumentException("The amount of %s must be finite, not %s."
                        .formatted(specimen.specimen(), amount));
            }
        }
    }

    /** What is fitted: a point for each specimen or unit. */
    private record Fit(
            double[] x,
            double[] y,
            List<double[]> blocks,
            double slope,
            double variance,
            double df) {}

    private final Question question;
    private final Subject amount;
    private final List<Given> given;
    private final int specimens;

    private Trending(Question question, Subject amount, List<Given> given, int specimens) {
        this.question = question;
        this.amount = amount;
        this.given = given;
        this.specimens = specimens;
    }

    /**
     * Returns the line.
     *
     * @param amount what the amounts are, with their unit
     * @param given specimens that have an amount, of any group
     * @param without codes of specimens that have none
     * @throws QuestionException unless means are what the question compares
     */
    public static Trend of(
            Question question, Subject amount, List<Given> given, List<String> without) {
        if (question.effect() != Effect.RATIO && question.effect() != Effect.DIFFERENCE) {
            throw new QuestionException(
                    "A straight line over %s needs numbers; %s is compared by %s."
                            .formatted(
                                    amount.label(),
                                    question.subject().label(),
                                    question.effect().word()));
        }
        List<Given> counted = given.stream()
                .filter(one -> one.specimen().counts()
                        && one.specimen().observed() instanceof Observed.Number)
                .sorted(Comparator.comparingDouble(Given::amount)
                        .thenComparing(one -> one.specimen().specimen()))
                .toList();
        List<String> aside = new ArrayList<>(without);
        given.stream()
                .filter(one -> !counted.contains(one))
                .forEach(one -> aside.add(one.specimen().specimen()));
        return new Trending(question, amount, units(question, counted), counted.size())
                .trend(counted, aside);
    }

    /** Returns each unit as one, with the mean of its values and amounts. */
    private static List<Given> units(Question question, List<Given> counted) {
        Map<String, List<Given>> units = new TreeMap<>();
        counted.forEach(one -> units.computeIfAbsent(
                        one.specimen().unit().orElse(one.specimen().specimen()),
                        it -> new ArrayList<>())
                .add(one));
        List<Given> all = new ArrayList<>();
        units.values().forEach(repeats -> {
            Sample one = Units.named(
                    new Sample(
                            repeats.get(0).specimen().group(),
                            repeats.stream().map(Given::specimen).toList()),
                    question);
            all.add(new Given(
                    one.observations().get(0),
                    repeats.stream().mapToDouble(Given::amount).average().orElseThrow()));
        });
        return all;
    }

    private Trend trend(List<Given> counted, List<String> aside) {
        List<Trend.Point> points = counted.stream()
                .map(one -> new Trend.Point(
                        one.specimen().specimen(),
                        one.specimen().group(),
                        one.amount(),
                        value(one)))
                .toList();
        List<Finding> findings = new ArrayList<>();
        if (!aside.isEmpty()) {
            findings.add(
                    NOT_ON_LINE.with(aside.stream().sorted().collect(Collectors.joining(", "))));
        }
        String refusal = refusal();
        if (!refusal.isEmpty()) {
            Found none = Found.open(
                    Effect.DIFFERENCE,
                    Amount.none(refusal),
                    question.confidence(),
                    "none",
                    refusal);
            return new Trend(
                    question,
                    amount,
                    points,
                    List.of(),
                    none,
                    none,
                    Verdict.OPEN,
                    List.of(Sentence.NO_LINE.with(
                            "label",
                            question.subject().label(),
                            "amount",
                            amount.label(),
                            "reason",
                            refusal)),
                    findings);
        }
        Fit fit = fit();
        curvature(fit, findings);
        double span = Summary.of(fit.x()).max() - Summary.of(fit.x()).min();
        Found slope = found(fit, 1);
        Found overAll = found(fit, span);
        Verdict verdict = verdict(slope);
        return new Trend(
                question,
                amount,
                points,
                line(fit),
                slope,
                overAll,
                verdict,
                reasons(fit, slope, overAll, verdict),
                findings);
    }

    private String refusal() {
        double[] x = amounts();
        if (x.length < 3) {
            return "a line needs three specimens or more, each with a value and an amount";
        }
        if (Summary.of(x).max() == Summary.of(x).min()) {
            return "all amounts are the same";
        }
        List<double[]> blocks = blocks();
        if (x.length - blocks.size() - 1 < 1) {
            return "too few specimens are left beside the blocks";
        }
        double[] rest = Explained.rest(x, blocks);
        double scale = Summary.of(x).max() - Summary.of(x).min();
        return dot(rest, rest) > 1e-16 * scale * scale
                ? ""
                : "each block holds one amount alone, so that the amount can't be told from the block";
    }

    private double[] amounts() {
        return given.stream().mapToDouble(Given::amount).toArray();
    }

    private static double value(Given one) {
        return ((Observed.Number) one.specimen().observed()).value();
    }

    /** Returns a column for each block that specimens are told to come from; else for all. */
    private List<double[]> blocks() {
        List<String> names = given.stream()
                .map(one -> one.specimen().block().map(Block::name).orElse(""))
                .toList();
        return new TreeSet<>(names)
                .stream()
                        .map(name -> names.stream()
                                .mapToDouble(it -> it.equals(name) ? 1 : 0)
                                .toArray())
                        .toList();
    }

    private Fit fit() {
        double[] x = amounts();
        double[] y = given.stream().mapToDouble(Trending::value).toArray();
        List<double[]> blocks = blocks();
        double[] own = Explained.rest(x, blocks);
        double squares = dot(own, own);
        double slope = dot(own, y) / squares;
        double[] rest = Explained.rest(y, blocks);
        double about = 0;
        for (int i = 0; i < rest.length; i++) {
            double residual = rest[i] - slope * own[i];
            about += residual * residual;
        }
        double df = x.length - blocks.size() - 1.0;
        Sample sample = new Sample("", given.stream().map(Given::specimen).toList());
        double step = question.resolution().orElseGet(() -> Step.of(sample.stream()));
        double u = sample.resolution(step);
        double scatter = about / df;
        double variance = Math.sqrt(scatter) < ROOT_OF_THREE * u
                ? Math.max(scatter, x.length * u * u) / squares
                : scatter / squares;
        double shared = shared(own, squares, sample.sources());
        double all = variance + shared;
        return new Fit(
                x,
                y,
                blocks,
                slope,
                all,
                variance > 0 ? df * all * all / (variance * variance) : Double.POSITIVE_INFINITY);
    }

    private double shared(double[] own, double squares, Set<String> sources) {
        double sum = 0;
        for (String source : sources) {
            double[] moves = given.stream()
                    .mapToDouble(one -> one.specimen().moves().getOrDefault(source, 0.0))
                    .toArray();
            double slope = dot(own, moves) / squares;
            sum += slope * slope;
        }
        return sum;
    }

    private Found found(Fit fit, double times) {
        StudentT t = new StudentT(fit.df());
        double half = t.twoSided(question.confidence()) * Math.sqrt(fit.variance()) * times;
        double value = fit.slope() * times;
        double p = value == 0 ? 1 : t.twoSidedP(fit.slope() / Math.sqrt(fit.variance()));
        return Founds.of(
                Effect.DIFFERENCE,
                new Estimate(
                        value,
                        value - half,
                        value + half,
                        question.confidence(),
                        fit.df(),
                        fit.x().length,
                        fit.blocks().size() > 1
                                ? "straight line within blocks, least squares"
                                : "straight line, least squares"),
                Amount.of(p));
    }

    private void curvature(Fit fit, List<Finding> findings) {
        Set<Double> amounts = new TreeSet<>();
        for (double x : fit.x()) {
            amounts.add(x);
        }
        if (amounts.size() == 2) {
            findings.add(TWO_AMOUNTS.with());
            return;
        }
        List<double[]> straight = new ArrayList<>(fit.blocks());
        straight.add(fit.x());
        List<double[]> each = amounts.stream()
                .map(amountThere -> java.util.Arrays.stream(fit.x())
                        .map(x -> x == amountThere ? 1 : 0)
                        .toArray())
                .toList();
        Explained.beyond(fit.y(), straight, each, "lack of fit of a line")
                .filter(test -> test.p() <= ALARM)
                .ifPresent(test -> findings.add(BENT.with(amounts.size())));
    }

    /** Returns the line at the mean of blocks; its height scatters like a mean of all specimens. */
    private List<Trend.Band> line(Fit fit) {
        Summary x = Summary.of(fit.x());
        double middle = Summary.of(fit.y()).mean();
        double[] own = Explained.rest(fit.x(), fit.blocks());
        double atMean = fit.variance() * dot(own, own) / fit.x().length;
        double t = new StudentT(fit.df()).twoSided(question.confidence());
        List<Trend.Band> line = new ArrayList<>();
        for (int i = 0; i < PLACES; i++) {
            double at = x.min() + (x.max() - x.min()) * i / (PLACES - 1);
            double away = at - x.mean();
            double height = middle + fit.slope() * away;
            double half = t * Math.sqrt(atMean + away * away * fit.variance());
            line.add(new Trend.Band(at, height, height - half, height + half));
        }
        return line;
    }

    private Verdict verdict(Found slope) {
        boolean up = slope.lowest() > 0;
        boolean down = slope.highest() < 0;
        if (!up && !down) {
            return Verdict.OPEN;
        }
        return switch (question.expectation()) {
            case HIGHER -> up ? Verdict.SUPPORTED : Verdict.CONTRADICTED;
            case LOWER -> down ? Verdict.SUPPORTED : Verdict.CONTRADICTED;
            case SAME -> Verdict.CONTRADICTED;
        };
    }

    private List<String> reasons(Fit fit, Found slope, Found overAll, Verdict verdict) {
        Summary x = Summary.of(fit.x());
        String direction = fit.slope() < 0 ? "down" : "up";
        long amounts = java.util.Arrays.stream(fit.x()).distinct().count();
        String unit = Written.unit(question.subject().unit());
        String found = Sentence.LINE_FOUND.with(
                "from",
                Written.exact(x.min()),
                "to",
                Written.exact(x.max()) + Written.unit(amount.unit()),
                "amount",
                amount.label(),
                "label",
                question.subject().label(),
                "moved",
                fit.slope() < 0 ? "fell" : "rose",
                "change",
                ScaleWords.ofDifference(overAll, unit).apart(fit.slope() * (x.max() - x.min())),
                "interval",
                Written.percent(overAll.level())
                        + " interval "
                        + ScaleWords.ofDifference(overAll, unit).interval(overAll),
                "n",
                specimens,
                "k",
                amounts);
        String per = unit.isEmpty() && amount.unit().symbol().isEmpty()
                ? ""
                : (unit.isEmpty() ? Written.THIN + "1" : unit)
                        + (amount.unit().symbol().isEmpty()
                                ? ""
                                : "/" + amount.unit().symbol());
        String each = Sentence.SLOPE.with(
                "slope",
                ScaleWords.ofDifference(slope, per).signed(fit.slope()) + per,
                "interval",
                ScaleWords.ofDifference(slope, per).ends(slope));
        Sentence said = switch (verdict) {
            case SUPPORTED -> Sentence.LINE_SHOWN;
            case CONTRADICTED ->
                question.expectation() == Expectation.SAME
                        ? Sentence.LINE_NOT_FLAT
                        : Sentence.LINE_OTHER_WAY;
            default -> Sentence.LINE_OPEN;
        };
        return List.of(
                found,
                said.with(
                        "direction",
                        direction,
                        "expected",
                        fit.slope() < 0 ? "up" : "down",
                        "amount",
                        amount.label()),
                each);
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }
}
