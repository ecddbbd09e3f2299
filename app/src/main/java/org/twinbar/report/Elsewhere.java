package org.twinbar.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.twinbar.decision.Alike;
import org.twinbar.decision.Amount;
import org.twinbar.decision.Effect;
import org.twinbar.decision.Group;
import org.twinbar.method.Property;
import org.twinbar.report.Sheet.Block;
import org.twinbar.report.Sheet.Picture;
import org.twinbar.report.Sheet.Weight;
import org.twinbar.study.judged.Answer;

/** Treatments that were crossed with a factor, orientation say: does each act alike everywhere? */
final class Elsewhere {

    /** What was asked alike in several places; the control of each is the same group. */
    private record Asked(
            String method, Property property, String control, Set<String> factors, Effect effect) {}

    private final Asked asked;
    private final List<Answer.Compared> answers;

    private Elsewhere(Asked asked, List<Answer.Compared> answers) {
        this.asked = asked;
        this.answers = answers;
    }

    static List<Block> of(List<Answer.Compared> compared) {
        Map<Asked, List<Answer.Compared>> all = new LinkedHashMap<>();
        for (Answer.Compared one : compared) {
            if (!one.comparison().context().alike().isEmpty()) {
                all.computeIfAbsent(asked(one), unused -> new ArrayList<>()).add(one);
            }
        }
        List<Block> blocks = new ArrayList<>();
        all.forEach((asked, answers) -> blocks.addAll(new Elsewhere(asked, answers).blocks()));
        return blocks;
    }

    private static Asked asked(Answer.Compared one) {
        return new Asked(
                one.method(),
                one.property(),
                one.comparison().control().orElseThrow().name(),
                one.where().keySet(),
                one.comparison().question().effect());
    }

    private List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading("Does it act alike elsewhere: "
                + asked.property().label()
                + " by "
                + String.join(", ", asked.factors()).replace('_', ' ')));
        picture().ifPresent(it -> blocks.add(new Block.Pictures(List.of(it))));
        Set<String> words = new LinkedHashSet<>();
        answers.forEach(one ->
                one.comparison().context().alike().stream().map(Alike::words).forEach(words::add));
        blocks.add(new Block.Sentences(List.copyOf(words), Weight.PLAIN));
        return blocks;
    }

    private Optional<Picture> picture() {
        Map<String, Map<String, Clusters.Mean>> means = new LinkedHashMap<>();
        means.put(asked.control(), new LinkedHashMap<>());
        Set<String> places = new LinkedHashSet<>();
        for (Answer.Compared one : answers) {
            String place = String.join(", ", one.where().values());
            places.add(place);
            one.comparison()
                    .control()
                    .flatMap(this::mean)
                    .ifPresent(mean -> means.get(asked.control()).putIfAbsent(place, mean));
            Group treated = one.comparison().treated();
            Map<String, Clusters.Mean> row =
                    means.computeIfAbsent(treated.name(), unused -> new LinkedHashMap<>());
            mean(treated).ifPresent(mean -> row.putIfAbsent(place, mean));
        }
        if (places.size() < 2 || means.values().stream().anyMatch(row -> row.size() < 2)) {
            return Optional.empty();
        }
        List<Crossed.Group> groups = new ArrayList<>();
        means.forEach((name, row) -> groups.add(new Crossed.Group(
                name,
                groups.isEmpty() ? Sign.CONTROL : Sign.ofTreatment(groups.size() - 1),
                places.stream()
                        .map(place -> Optional.ofNullable(row.get(place)))
                        .toList())));
        return Optional.of(new Picture(
                Figures.crossed(new Crossed(up(), List.copyOf(places), groups)),
                (shares()
                                ? "Shares with their exact 95 % limits"
                                : "Means with their 95 % intervals")
                        + "; hollow and dashed is the control. "
                        + alike()));
    }

    private String alike() {
        return asked.effect() == Effect.RATIO
                ? "A treatment that multiplies alike lies the same share above the control everywhere."
                : "Where the lines run alike the treatment adds alike.";
    }

    private boolean shares() {
        return asked.effect() == Effect.SHARE;
    }

    private String up() {
        return shares() ? "Share of yes in %" : Cells.header(asked.property());
    }

    private Optional<Clusters.Mean> mean(Group group) {
        if (shares()) {
            return group.tally()
                    .map(tally -> new Clusters.Mean(
                            100.0 * tally.count() / tally.n(),
                            100 * tally.low(),
                            100 * tally.high(),
                            tally.count() + " of " + tally.n()));
        }
        return group.mean() instanceof Amount.Known mean
                ? Optional.of(Clusters.Mean.of(group, mean.value(), asked.property()))
                : Optional.empty();
    }
}
