package org.twinbar.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.twinbar.decision.Amount;
import org.twinbar.decision.Group;
import org.twinbar.method.Mark;
import org.twinbar.method.Property;
import org.twinbar.method.Yield;
import org.twinbar.report.Sheet.Picture;
import org.twinbar.statistics.LeftOver;
import org.twinbar.statistics.Lifetime;
import org.twinbar.study.judged.Curve;
import org.twinbar.study.judged.JudgedSpecimen;

/** Pictures of the specimens that a comparison was made of. */
final class GroupPictures {

    private static final String PEAK = "peak";

    /** Of the pointwise limits. */
    private static final double LEVEL = 0.95;

    private final Compared compared;
    private final Map<Group, List<JudgedSpecimen>> members = new LinkedHashMap<>();

    GroupPictures(Compared compared) {
        this.compared = compared;
        compared.comparison().control().ifPresent(control -> members.put(control, of(control)));
        members.put(compared.comparison().treated(), of(compared.comparison().treated()));
    }

    private List<JudgedSpecimen> of(Group group) {
        return compared.specimens().stream()
                .filter(specimen -> specimen.group().equals(group.name()))
                .toList();
    }

    private Sign sign(Group group) {
        boolean control = compared.comparison()
                .control()
                .filter(c -> c.name().equals(group.name()))
                .isPresent();
        return control ? Sign.CONTROL : Sign.FIRST;
    }

    /** Returns every specimen's value, in the picture that its scale asks for. */
    Optional<Picture> values() {
        return switch (compared.property().scale()) {
            case YES_NO -> Optional.of(shares());
            case TIME_TO_EVENT -> Optional.of(survival());
            case RATIO, INTERVAL, RANK -> clusters();
        };
    }

    private Optional<Picture> clusters() {
        Property property = compared.property();
        List<Clusters.Cluster> clusters = new ArrayList<>();
        List<String> without = new ArrayList<>();
        members.forEach((group, specimens) -> {
            List<Clusters.Point> points = new ArrayList<>();
            for (JudgedSpecimen specimen : specimens) {
                Optional<Double> at = place(specimen.result().yields().get(property));
                if (at.isEmpty()) {
                    without.add(specimen.code());
                    continue;
                }
                points.add(new Clusters.Point(
                        specimen.code(),
                        at.get(),
                        Cells.withUnit(specimen.result(), property),
                        specimen.counts()
                                ? Clusters.Standing.COUNTED
                                : Clusters.Standing.LEFT_OUT));
            }
            clusters.add(new Clusters.Cluster(group.name(), sign(group), points, mean(group)));
        });
        if (clusters.stream().allMatch(cluster -> cluster.points().isEmpty())) {
            return Optional.empty();
        }
        String caption =
                "Each ring or dot is a specimen; short bar: mean; thin line: its 95 % interval."
                        .replace("95 %", Written.percent(0.95));
        return Optional.of(new Picture(
                Figures.clusters(
                        new Clusters(property.label(), property.unit().symbol(), clusters)),
                without.isEmpty()
                        ? caption
                        : caption + " Without a value: " + String.join(", ", without) + "."));
    }

    /** A bound stands at its number, and its words say that it is one. */
    private static Optional<Double> place(@Nullable Yield yield) {
        if (yield instanceof Yield.Value value) {
            return Optional.of(value.value());
        }
        if (yield instanceof Yield.Fitted fitted) {
            return Optional.of(fitted.value());
        }
        if (yield instanceof Yield.AtLeast bound) {
            return Optional.of(bound.bound());
        }
        if (yield instanceof Yield.Below bound) {
            return Optional.of(bound.bound());
        }
        return yield instanceof Yield.Between between
                ? Optional.of((between.from() + between.to()) / 2)
                : Optional.empty();
    }

    private Optional<Clusters.Mean> mean(Group group) {
        if (!(group.mean() instanceof Amount.Known mean)) {
            return Optional.empty();
        }
        return Optional.of(Clusters.Mean.of(group, mean.value(), compared.property()));
    }

    private Picture shares() {
        List<Shares.Group> groups = new ArrayList<>();
        members.forEach((group, specimens) -> {
            List<String> yes = new ArrayList<>();
            List<String> no = new ArrayList<>();
            List<String> unknown = new ArrayList<>();
            for (JudgedSpecimen specimen : specimens) {
                Yield yield = specimen.result().yields().get(compared.property());
                boolean known = yield instanceof Yield.Word && specimen.counts();
                boolean saidYes = yield instanceof Yield.Word w && w.word().equals("yes");
                (known ? saidYes ? yes : no : unknown).add(specimen.code());
            }
            groups.add(new Shares.Group(group.name(), sign(group), yes, no, unknown));
        });
        String label = compared.property().label();
        return new Picture(
                Figures.shares(new Shares("yes", "no", groups)),
                label + "? Each ring or dot is a specimen.");
    }

    private Picture survival() {
        List<Survival.Group> groups = new ArrayList<>();
        List<String> without = new ArrayList<>();
        members.forEach((group, specimens) -> {
            List<Survival.Time> times = new ArrayList<>();
            for (JudgedSpecimen specimen : specimens) {
                Optional<Survival.Time> time = time(specimen);
                time.ifPresent(times::add);
                if (time.isEmpty()) {
                    without.add(specimen.code());
                }
            }
            groups.add(new Survival.Group(group.name(), sign(group), times, falls(times)));
        });
        String caption =
                "Share to which it has not happened yet, thin lines: pointwise 95 % limits; point: it happened; tick: watching ended."
                        + (looks(groups)
                                ? " Hatched: between two looks, where it may fall anywhere."
                                : "");
        return new Picture(
                Figures.survival(new Survival(
                        Cells.header(compared.property()), "Not yet happened", groups)),
                without.isEmpty()
                        ? caption
                        : caption + " Not counted: " + String.join(", ", without) + ".");
    }

    private static List<LeftOver.Fall> falls(List<Survival.Time> times) {
        List<Lifetime> lives = times.stream()
                .map(time -> time.end() == Survival.End.HAPPENED
                        ? Lifetime.between(time.from(), time.time())
                        : Lifetime.censored(time.time()))
                .toList();
        return lives.isEmpty() ? List.of() : LeftOver.of(lives, LEVEL).falls();
    }

    private static boolean looks(List<Survival.Group> groups) {
        return groups.stream()
                .flatMap(group -> group.falls().stream())
                .anyMatch(fall -> fall.after() < fall.until());
    }

    /** Between two looks its point stands at the second, when it was seen. */
    private Optional<Survival.Time> time(JudgedSpecimen specimen) {
        Yield yield = specimen.result().yields().get(compared.property());
        String code = specimen.code();
        if (!specimen.counts()) {
            return Optional.empty();
        }
        if (yield instanceof Yield.AtLeast bound) {
            return Optional.of(new Survival.Time(code, bound.bound(), Survival.End.WATCHING_ENDED));
        }
        if (yield instanceof Yield.Between between) {
            return Optional.of(
                    new Survival.Time(code, between.from(), between.to(), Survival.End.HAPPENED));
        }
        return place(yield).map(at -> new Survival.Time(code, at, Survival.End.HAPPENED));
    }

    /** Returns the curves by group, where there are any. */
    Optional<Picture> curves() {
        return recorded()
                .map(curves -> new Picture(
                        Figures.curves(curves),
                        "As it was recorded, a curve for each specimen; marks: peaks."));
    }

    /** Returns what was recorded, by group. */
    Optional<Curves> recorded() {
        List<Curves.Group> groups = new ArrayList<>();
        Optional<Curve> first =
                compared.specimens().stream().flatMap(s -> s.curve().stream()).findFirst();
        if (first.isEmpty()) {
            return Optional.empty();
        }
        members.forEach((group, specimens) -> {
            List<Curves.Curve> curves = new ArrayList<>();
            for (JudgedSpecimen specimen : specimens) {
                specimen.curve()
                        .filter(curve -> curve.across().equals(first.get().across()))
                        .ifPresent(curve -> curves.add(new Curves.Curve(
                                specimen.code(), curve.x(), curve.y(), peak(curve))));
            }
            groups.add(new Curves.Group(group.name(), sign(group), curves));
        });
        String across = channel(first.get().across());
        String up = channel(first.get().up());
        return Optional.of(Curves.of(across, up, groups));
    }

    /** Returns where the uncertainty of a treated specimen's value comes from. */
    Optional<Picture> budget() {
        Group treated = compared.comparison().treated();
        return Budgets.picture(compared.property(), treated.name(), of(treated));
    }

    private static String channel(org.twinbar.method.Channel channel) {
        String unit = channel.unit().symbol();
        return channel.label() + (unit.isEmpty() ? "" : " in " + unit);
    }

    private static Optional<Integer> peak(Curve curve) {
        for (Map.Entry<Mark, Integer> mark : curve.marks().entrySet()) {
            if (mark.getKey().name().equals(PEAK)) {
                return Optional.of(mark.getValue());
            }
        }
        return Optional.empty();
    }
}
