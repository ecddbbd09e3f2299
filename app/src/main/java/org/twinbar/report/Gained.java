package org.twinbar.report;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.Collectors;
import org.twinbar.decision.Effect;
import org.twinbar.quantity.Unit;
import org.twinbar.study.archive.Gain;
import org.twinbar.study.archive.GroupMean;
import org.twinbar.study.archive.Paired;

/** What an archive says, in words and in a picture. */
public final class Gained {

    /** What several gains have in common says nothing of which is which. */
    private static final String BY_STUDY = "the study '%s'";

    private Gained() {}

    /**
     * Returns which of several gains is the largest, and whether that is known; nothing where there
     * are fewer than two with an estimate.
     *
     * @param gains of one property and one kind of effect, the largest first
     */
    public static Optional<String> most(List<Gain> gains) {
        List<Gain> known =
                gains.stream().filter(it -> it.estimate().isPresent()).toList();
        if (known.size() < 2 || known.get(0).kind() == Effect.LEVEL) {
            return Optional.empty();
        }
        Gain first = known.get(0);
        Gain next = known.get(1);
        Set<String> telling = telling(known);
        double low = first.comparison().found().low().orElse(Double.NEGATIVE_INFINITY);
        double high = next.comparison().found().high().orElse(Double.POSITIVE_INFINITY);
        return Optional.of(
                "%s changed most from '%s': %s, in %s. Next comes %s, in %s. %s"
                        .formatted(
                                first.property().label(),
                                first.treated(),
                                change(first),
                                which(first, telling),
                                change(next),
                                which(next, telling),
                                low > high
                                        ? "Their intervals lie apart, so the first gained more."
                                        : "Their intervals overlap, so which of them gained more is open."));
    }

    /** Returns the factors whose level tells gains apart. */
    private static Set<String> telling(List<Gain> gains) {
        Set<String> factors = new TreeSet<>();
        gains.forEach(it -> factors.addAll(it.alike().keySet()));
        factors.removeIf(factor -> gains.stream()
                        .map(it -> it.alike().getOrDefault(factor, ""))
                        .distinct()
                        .count()
                < 2);
        return factors;
    }

    private static String which(Gain gain, Set<String> telling) {
        String factors = telling.stream()
                .filter(gain.alike()::containsKey)
                .map(it -> "%s %s".formatted(it.replace('_', ' '), gain.alike().get(it)))
                .collect(Collectors.joining(", "));
        String study = BY_STUDY.formatted(gain.study().name());
        return factors.isEmpty() ? study : factors + " (" + study + ")";
    }

    private static String change(Gain gain) {
        String unit = gain.property().unit().symbol();
        return Written.effect(gain.kind(), unit, gain.estimate().orElseThrow())
                + " (95 %% interval %s to %s)"
                        .formatted(
                                end(gain, gain.comparison().found().low().orElse(Double.NaN)),
                                end(gain, gain.comparison().found().high().orElse(Double.NaN)));
    }

    private static String end(Gain gain, double value) {
        return Double.isFinite(value)
                ? Written.effect(gain.kind(), gain.property().unit().symbol(), value)
                : "open";
    }

    /**
     * Returns one property against another as a picture.
     *
     * @param pairs one at least
     * @param gains that tell which group of a study was its control
     * @param per what both were divided by, such as {@code mass_g}
     */
    public static String against(List<Paired> pairs, List<Gain> gains, Optional<String> per) {
        Map<UUID, Set<String>> controls = gains.stream()
                .collect(Collectors.groupingBy(
                        it -> it.study().id(),
                        Collectors.mapping(Gain::control, Collectors.toSet())));
        return Figures.against(new Against(
                label(pairs.get(0).beside(), per),
                label(pairs.get(0).mean(), per),
                pairs.stream()
                        .map(it -> point(
                                it, controls.getOrDefault(it.mean().study().id(), Set.of())))
                        .toList()));
    }

    private static Against.Point point(Paired pair, Set<String> controls) {
        GroupMean mean = pair.mean();
        String alike = mean.alike().entrySet().stream()
                .filter(it -> Set.of("material", "orientation").contains(it.getKey()))
                .map(Map.Entry::getValue)
                .sorted()
                .collect(Collectors.joining(", "));
        return new Against.Point(
                "%s, %s%s"
                        .formatted(
                                mean.study().name(),
                                mean.group(),
                                alike.isEmpty() ? "" : ", " + alike),
                controls.contains(mean.group()) ? Sign.CONTROL : Sign.FIRST,
                new Against.Mean(pair.beside().mean(), half(pair.beside())),
                new Against.Mean(mean.mean(), half(mean)));
    }

    private static OptionalDouble half(GroupMean mean) {
        return mean.half();
    }

    private static String label(GroupMean mean, Optional<String> per) {
        Unit unit = mean.property().unit();
        String label = mean.property().label();
        return label
                + (unit.symbol().isEmpty() ? "" : " in " + unit.symbol())
                + per.map(it -> " per " + it.replace('_', ' ')).orElse("");
    }
}
