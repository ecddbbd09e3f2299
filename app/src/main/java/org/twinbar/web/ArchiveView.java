package org.twinbar.web;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.twinbar.decision.Amount;
import org.twinbar.exchange.InputException;
import org.twinbar.report.Effect;
import org.twinbar.report.Figures;
import org.twinbar.report.Gained;
import org.twinbar.report.Written;
import org.twinbar.statistics.Estimate;
import org.twinbar.study.archive.Gain;
import org.twinbar.study.archive.GroupMean;
import org.twinbar.study.archive.Paired;
import org.twinbar.study.archive.Together;
import org.twinbar.study.archive.UsualScatter;
import org.twinbar.study.judged.JudgedStudy;

/**
 * The archive as its page shows it.
 *
 * @param properties that may be chosen
 * @param treatments that may be chosen
 * @param factors that may be chosen, such as {@code orientation = upright}
 * @param parts what is alike stands in one
 * @param against one property against another; empty where nobody asked
 */
public record ArchiveView(
        List<String> properties,
        List<String> treatments,
        List<String> factors,
        List<Part> parts,
        List<Scatter> scatter,
        Optional<TwoProperties> against,
        boolean invented) {

    /** A longer picture can't be taken in; the table beside it holds all. */
    public static final int MOST_DRAWN = 40;

    /** One property against another, drawn and written. */
    public record TwoProperties(String heading, String figure, List<TwoMeans> rows) {}

    /** The two means of a group, written. */
    public record TwoMeans(Paired pair, String mean, String beside, String alike) {}

    /**
     * Gains of one property and one kind of effect.
     *
     * @param figure SVG; empty where no gain has an interval
     * @param most which is the largest, and whether that is known; empty for a single one
     * @param together what they say together, in a sentence; empty where they can't be
     */
    public record Part(
            String heading,
            String figure,
            String most,
            String together,
            List<Row> rows,
            List<String> differing) {}

    /** About how much memory it holds. */
    long bytes() {
        return parts.stream()
                .mapToLong(part ->
                        2L * part.figure().length() + 1_000L * part.rows().size())
                .sum();
    }

    /** Whether some rows of a part are in its table alone. */
    public static boolean isCut(Part part) {
        return part.rows().size() > MOST_DRAWN;
    }

    /** One gain, written. */
    public record Row(Gain gain, String change, String interval, String specimens, String alike) {}

    /** The scatter of one property, written. */
    public record Scatter(UsualScatter usual, String written) {}

    static ArchiveView of(List<Gain> all, List<Gain> chosen, List<UsualScatter> scatter) {
        TreeSet<String> properties = new TreeSet<>();
        TreeSet<String> treatments = new TreeSet<>();
        TreeSet<String> factors = new TreeSet<>();
        for (Gain gain : all) {
            properties.add(gain.property().name());
            treatments.add(gain.treated());
            gain.alike().forEach((name, value) -> factors.add(name + " = " + value));
        }
        Map<List<String>, List<Gain>> alike = new LinkedHashMap<>();
        for (Gain gain : chosen) {
            alike.computeIfAbsent(
                            List.of(
                                    gain.method(),
                                    gain.property().column(),
                                    gain.kind().word()),
                            it -> new ArrayList<>())
                    .add(gain);
        }
        return new ArchiveView(
                List.copyOf(properties),
                List.copyOf(treatments),
                List.copyOf(factors),
                alike.values().stream().map(ArchiveView::part).toList(),
                scatter.stream()
                        .map(it -> new Scatter(it, Written.percent(it.coefficientOfVariation())))
                        .toList(),
                Optional.empty(),
                all.stream().anyMatch(it -> it.study().origin() == JudgedStudy.Origin.INVENTED));
    }

    ArchiveView with(Optional<TwoProperties> both) {
        return new ArchiveView(properties, treatments, factors, parts, scatter, both, invented);
    }

    static Optional<TwoProperties> against(
            List<Paired> pairs, List<Gain> gains, Optional<String> per) {
        if (pairs.isEmpty()) {
            return Optional.empty();
        }
        Paired first = pairs.get(0);
        return Optional.of(new TwoProperties(
                "%s against %s%s"
                        .formatted(
                                first.mean().property().label(),
                                small(first.beside().property().label()),
                                per.map(it -> ", each per " + it.replace('_', ' '))
                                        .orElse("")),
                Gained.against(pairs, gains, per),
                pairs.stream()
                        .map(it -> new TwoMeans(
                                it,
                                written(it.mean(), per),
                                written(it.beside(), per),
                                alike(it.mean().alike())))
                        .toList()));
    }

    private static String written(GroupMean mean, Optional<String> per) {
        String unit = mean.property().unit().symbol();
        return Written.value(mean.mean(), mean.half().orElse(0), per.isEmpty() ? unit : "");
    }

    private static String alike(Map<String, String> alike) {
        return alike.entrySet().stream()
                .map(it -> it.getKey() + " = " + it.getValue())
                .sorted()
                .collect(Collectors.joining(", "));
    }

    private static Part part(List<Gain> gains) {
        Gain first = gains.get(0);
        Optional<Together> together = together(gains);
        return new Part(
                first.property().label() + ", " + first.kind().word(),
                figure(gains, together),
                Gained.most(gains).orElse(""),
                together.map(ArchiveView::sentence).orElse(""),
                gains.stream().map(ArchiveView::row).toList(),
                Together.differing(gains));
    }

    /** What isn't alike, or too little, is shown side by side alone. */
    private static Optional<Together> together(List<Gain> gains) {
        try {
            return Optional.of(Together.of(gains));
        } catch (InputException e) {
            return Optional.empty();
        }
    }

    private static String sentence(Together together) {
        Estimate random = together.back(together.pooled().random());
        Gain first = together.gains().get(0);
        return "%s studies together: %s (95 %% interval %s to %s, if effects differ from study to study)."
                .formatted(
                        together.gains().size(),
                        change(first, random.value()),
                        change(first, random.low()),
                        change(first, random.high()));
    }

    private static Row row(Gain gain) {
        Amount low = gain.comparison().found().low();
        Amount high = gain.comparison().found().high();
        return new Row(
                gain,
                gain.estimate().isPresent() ? change(gain, gain.estimate().getAsDouble()) : "none",
                low.isKnown() || high.isKnown()
                        ? end(gain, low) + " to " + end(gain, high)
                        : "no finite one",
                gain.comparison().control().map(it -> it.n() + " and ").orElse("")
                        + gain.comparison().treated().n(),
                alike(gain.alike()));
    }

    private static String end(Gain gain, Amount amount) {
        return amount instanceof Amount.Known known ? change(gain, known.value()) : "open";
    }

    private static String change(Gain gain, double value) {
        return Written.effect(gain.kind(), gain.property().unit().symbol(), value);
    }

    private static String figure(List<Gain> gains, Optional<Together> together) {
        List<Effect.Row> rows = new ArrayList<>();
        for (Gain gain : gains.subList(0, Math.min(gains.size(), MOST_DRAWN))) {
            if (gain.estimate().isPresent()) {
                rows.add(new Effect.Row(
                        rowName(gain),
                        Effect.Kind.MEASURED,
                        at(gain, gain.estimate().getAsDouble()),
                        at(gain, gain.comparison().found().low().orElse(Double.NEGATIVE_INFINITY)),
                        at(
                                gain,
                                gain.comparison()
                                        .found()
                                        .high()
                                        .orElse(Double.POSITIVE_INFINITY))));
            }
        }
        Gain first = gains.get(0);
        // A level is held against itself, and has no line of no change to be drawn against.
        if (rows.isEmpty() || first.kind() == org.twinbar.decision.Effect.LEVEL) {
            return "";
        }
        together.ifPresent(all -> {
            Estimate random = all.back(all.pooled().random());
            rows.add(new Effect.Row(
                    "all together",
                    Effect.Kind.EXPECTED,
                    at(first, random.value()),
                    at(first, random.low()),
                    at(first, random.high())));
        });
        boolean ratio = first.kind() == org.twinbar.decision.Effect.RATIO;
        String unit = ratio ? "%" : first.property().unit().symbol();
        return Figures.effect(new Effect(
                (ratio ? "Change of " : "")
                        + (ratio
                                ? small(first.property().label())
                                : first.property().label()),
                unit,
                ratio ? Effect.Signs.CHANGE : Effect.Signs.VALUE,
                new Effect.Level(at(first, first.kind().none()), "no change"),
                List.of(),
                Optional.empty(),
                rows));
    }

    private static String rowName(Gain gain) {
        String orientation = gain.alike().getOrDefault("orientation", "");
        return gain.study().name()
                + ", "
                + gain.treated()
                + (orientation.isEmpty() ? "" : ", " + orientation);
    }

    private static String small(String label) {
        return label.substring(0, 1).toLowerCase(Locale.ROOT) + label.substring(1);
    }

    private static double at(Gain gain, double value) {
        return gain.kind() == org.twinbar.decision.Effect.RATIO ? 100 * (value - 1) : value;
    }
}
