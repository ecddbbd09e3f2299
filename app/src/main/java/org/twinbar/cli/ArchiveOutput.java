package org.twinbar.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.twinbar.decision.Amount;
import org.twinbar.decision.Effect;
import org.twinbar.report.Gained;
import org.twinbar.report.Written;
import org.twinbar.statistics.Estimate;
import org.twinbar.study.archive.Gain;
import org.twinbar.study.archive.GroupMean;
import org.twinbar.study.archive.Paired;
import org.twinbar.study.archive.Together;
import org.twinbar.study.archive.UsualScatter;

/** What the archive says, for a person or as JSON. */
final class ArchiveOutput {

    private static final String NOTHING = "No study of this workspace holds anything like that.";

    private final PrintWriter out;
    private final boolean json;

    ArchiveOutput(PrintWriter out, boolean json) {
        this.out = out;
        this.json = json;
    }

    void gains(List<Gain> gains) {
        List<String> differing = Together.differing(gains);
        List<String> most = most(gains);
        if (json) {
            Json.write(
                    out,
                    it -> it.list("gains", list -> {
                                for (Gain gain : gains) {
                                    list.object(one -> gain(one, gain));
                                }
                            })
                            .texts("says", most)
                            .texts("differing", differing));
            return;
        }
        if (gains.isEmpty()) {
            out.println(NOTHING);
            return;
        }
        Aligned rows = new Aligned()
                .row(
                        "study",
                        "property",
                        "treatment",
                        "alike in",
                        "change",
                        "interval",
                        "n",
                        "verdict");
        for (Gain gain : gains) {
            rows.row(
                    gain.study().name(),
                    gain.property().label(),
                    gain.treated(),
                    words(gain.alike()),
                    estimate(gain),
                    interval(gain),
                    gain.control().isEmpty()
                            ? "" + gain.comparison().treated().n()
                            : gain.specimens() - gain.comparison().treated().n() + " and "
                                    + gain.comparison().treated().n(),
                    gain.comparison().verdict().word());
        }
        out.print(rows);
        most.forEach(it -> out.print(ComparisonsText.wrapped(it, "")));
        differing(differing);
    }

    /** Of each property and kind of effect by itself: only like stands beside like. */
    private static List<String> most(List<Gain> gains) {
        Map<List<String>, List<Gain>> alike = new LinkedHashMap<>();
        gains.forEach(it -> alike.computeIfAbsent(
                        List.of(it.method(), it.property().column(), it.kind().word()),
                        key -> new ArrayList<>())
                .add(it));
        return alike.values().stream().flatMap(it -> Gained.most(it).stream()).toList();
    }

    private static void gain(Json json, Gain gain) throws IOException {
        json.put("study", gain.study().name())
                .put("claim", gain.claim())
                .put("method", gain.method())
                .put("property", gain.property().column())
                .put("control", gain.control())
                .put("treated", gain.treated())
                .object("alike", it -> it.texts(gain.alike()))
                .put("effect", gain.kind().word())
                .put("estimate", gain.comparison().found().estimate())
                .put("low", gain.comparison().found().low())
                .put("high", gain.comparison().found().high())
                .put("specimens", gain.specimens())
                .put("verdict", gain.comparison().verdict().word());
    }

    private static String estimate(Gain gain) {
        return gain.estimate().isPresent()
                ? Written.effect(
                        gain.kind(),
                        gain.property().unit().symbol(),
                        gain.estimate().getAsDouble())
                : "none";
    }

    private static String interval(Gain gain) {
        Amount low = gain.comparison().found().low();
        Amount high = gain.comparison().found().high();
        if (!low.isKnown() && !high.isKnown()) {
            return "none";
        }
        String unit = gain.property().unit().symbol();
        return end(gain.kind(), unit, low) + " to " + end(gain.kind(), unit, high);
    }

    private static String end(Effect kind, String unit, Amount amount) {
        return amount instanceof Amount.Known known
                ? Written.effect(kind, unit, known.value())
                : "open";
    }

    private void differing(List<String> sentences) {
        if (!sentences.isEmpty()) {
            out.println();
            out.println("Not alike in all:");
            sentences.forEach(it -> out.print(ComparisonsText.wrapped(it, "  ")));
        }
    }

    private static String words(Map<String, String> alike) {
        return alike.entrySet().stream()
                .map(it -> it.getKey() + "=" + it.getValue())
                .sorted()
                .collect(Collectors.joining(", "));
    }

    /** @param against the same groups with another property beside, where one was asked for */
    void means(List<GroupMean> means, Optional<List<Paired>> against, Optional<String> per) {
        if (json) {
            Json.write(
                    out,
                    it -> it.list("means", list -> {
                        if (against.isEmpty()) {
                            for (GroupMean mean : means) {
                                list.object(one -> mean(one, mean));
                            }
                        }
                        for (Paired pair : against.orElse(List.of())) {
                            list.object(one -> {
                                mean(one, pair.mean());
                                one.object("against", other -> mean(other, pair.beside()));
                            });
                        }
                    }));
            return;
        }
        if (against.map(List::isEmpty).orElse(means.isEmpty())) {
            out.println(NOTHING);
            return;
        }
        String divided = per.map(" per %s"::formatted).orElse("");
        Aligned rows = new Aligned()
                .row("study", "group", "alike in", "property", "mean" + divided, "n", "against");
        if (against.isEmpty()) {
            means.forEach(it -> row(rows, it, ""));
        }
        against.orElse(List.of())
                .forEach(it -> row(
                        rows,
                        it.mean(),
                        it.beside().property().label() + " " + written(it.beside())));
        out.print(rows);
        out.println("± is half of the mean's 95 % interval.");
    }

    private static void row(Aligned rows, GroupMean mean, String beside) {
        rows.row(
                mean.study().name(),
                mean.group(),
                words(mean.alike()),
                mean.property().label(),
                written(mean),
                "" + mean.n(),
                beside);
    }

    private static void mean(Json json, GroupMean mean) throws IOException {
        json.put("study", mean.study().name())
                .put("method", mean.method())
                .put("property", mean.property().column())
                .put("group", mean.group())
                .object("alike", it -> it.texts(mean.alike()))
                .put("n", mean.n())
                .put("mean", mean.mean());
        if (mean.half().isPresent()) {
            json.put("low", mean.mean() - mean.half().getAsDouble())
                    .put("high", mean.mean() + mean.half().getAsDouble())
                    .put("sd", mean.sd());
        } else {
            json.reason("low", "one specimen shows no scatter")
                    .reason("high", "one specimen shows no scatter");
        }
    }

    private static String written(GroupMean mean) {
        return Written.value(
                mean.mean(), mean.half().orElse(0), mean.property().unit().symbol());
    }

    void scatter(List<UsualScatter> usual) {
        if (json) {
            Json.write(
                    out,
                    it -> it.list("scatter", list -> {
                        for (UsualScatter each : usual) {
                            list.object(one -> one.put("method", each.method())
                                    .put("property", each.property())
                                    .put("material", each.material())
                                    .put("cv", each.coefficientOfVariation())
                                    .put("df", each.degreesOfFreedom())
                                    .put("studies", each.studies()));
                        }
                    }));
            return;
        }
        if (usual.isEmpty()) {
            out.println(NOTHING);
            return;
        }
        Aligned rows = new Aligned()
                .row("method", "property", "material", "scatter", "degrees of freedom", "studies");
        usual.forEach(it -> rows.row(
                it.method(),
                it.property(),
                it.material().isEmpty() ? "not said" : it.material(),
                Written.percent(it.coefficientOfVariation()),
                "" + it.degreesOfFreedom(),
                "" + it.studies()));
        out.print(rows);
        out.println("Coefficients of variation from specimen to specimen, pooled within groups.");
    }

    void together(Together together) {
        Estimate fixed = together.back(together.pooled().fixed());
        Estimate random = together.back(together.pooled().random());
        if (json) {
            Json.write(out, it -> {
                it.list("gains", list -> {
                    for (Gain gain : together.gains()) {
                        list.object(one -> gain(one, gain));
                    }
                });
                it.object("fixed", one -> estimate(one, fixed));
                it.object("random", one -> estimate(one, random));
                it.put("betweenSd", Math.sqrt(together.pooled().betweenVariance()))
                        .put("heterogeneity", together.pooled().share())
                        .put("q", together.pooled().heterogeneity().statistic())
                        .put("p", together.pooled().heterogeneity().p());
                if (together.pooled().next().isPresent()) {
                    it.object(
                            "nextStudy",
                            one -> estimate(
                                    one, together.back(together.pooled().next().get())));
                }
                it.texts("differing", together.differing());
            });
            return;
        }
        gains(together.gains());
        Gain first = together.gains().get(0);
        out.println();
        out.print(new Aligned()
                .row("one effect in all studies", range(first, fixed))
                .row("effects that differ", range(first, random))
                .row(
                        "a further study",
                        together.pooled()
                                .next()
                                .map(it -> range(first, together.back(it)))
                                .orElse("two studies don't tell"))
                .row(
                        "scatter between studies",
                        Written.percent(together.pooled().share()) + " of all that is seen"));
        together.withoutInterval()
                .forEach(it -> out.println("Not taken along, for want of an interval: "
                        + it.study().name()));
    }

    private static void estimate(Json json, Estimate estimate) throws IOException {
        json.put("estimate", estimate.value())
                .put("low", estimate.low())
                .put("high", estimate.high())
                .put("method", estimate.method());
    }

    private static String range(Gain gain, Estimate estimate) {
        String unit = gain.property().unit().symbol();
        return "%s (%s to %s)"
                .formatted(
                        Written.effect(gain.kind(), unit, estimate.value()),
                        Written.effect(gain.kind(), unit, estimate.low()),
                        Written.effect(gain.kind(), unit, estimate.high()));
    }
}
