package org.twinbar.cli;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.twinbar.decision.Amount;
import org.twinbar.decision.Beside;
import org.twinbar.decision.Comparison;
import org.twinbar.decision.Family;
import org.twinbar.decision.Found;
import org.twinbar.decision.Group;
import org.twinbar.decision.Standing;
import org.twinbar.decision.Trend;
import org.twinbar.finding.Finding;
import org.twinbar.report.Written;
import org.twinbar.statistics.LeftOver;
import org.twinbar.study.calculation.Comparisons;

/** Comparisons for a person: the verdict and its sentences first, the numbers behind. */
final class ComparisonsText {

    private static final int WIDTH = 96;

    private ComparisonsText() {}

    static String of(Comparisons.Outcome outcome, boolean details) {
        StringBuilder text = new StringBuilder();
        Set<String> crossed = new LinkedHashSet<>();
        for (Comparisons.Parted one : outcome.comparisons()) {
            text.append(one(one, details)).append('\n');
            one.comparison().context().alike().forEach(it -> crossed.add(it.words()));
        }
        outcome.unmade().forEach(it -> text.append(wrapped(it.reason(), "")));
        text.append(outcome.unmade().isEmpty() ? "" : "\n");
        crossed.forEach(it -> text.append(wrapped(it, "")));
        text.append(crossed.isEmpty() ? "" : "\n");
        if (details && !outcome.comparisons().isEmpty()) {
            text.append(pairs(outcome.comparisons()));
        }
        together(outcome.comparisons())
                .ifPresent(it -> text.append(wrapped(it, "")).append('\n'));
        outcome.lines().forEach(it -> text.append(line(it)).append('\n'));
        return text.append("seed ").append(outcome.seed()).append('\n').toString();
    }

    private static Optional<String> together(List<Comparisons.Parted> parted) {
        List<Comparison> comparisons =
                parted.stream().map(Comparisons.Parted::comparison).toList();
        List<String> names = parted.stream()
                .map(it -> it.comparison().treated().name() + by(it.by()))
                .toList();
        return Together.of(comparisons).sentence(comparisons, names);
    }

    private static String line(Comparisons.Lined lined) {
        Trend trend = lined.trend();
        StringBuilder text = new StringBuilder(lined.value())
                .append(" over ")
                .append(trend.amount().label())
                .append(by(lined.by()))
                .append(": ")
                .append(trend.verdict().word())
                .append('\n');
        trend.reasons().forEach(it -> text.append(wrapped(it, "  ")));
        text.append(findings(trend.findings()));
        return text.toString();
    }

    /** All pairs of a family stand once, though each of its comparisons knows them. */
    private static String pairs(List<Comparisons.Parted> parted) {
        StringBuilder text = new StringBuilder();
        Set<Family> families = new LinkedHashSet<>();
        for (Comparisons.Parted one : parted) {
            Optional<Family> family = one.comparison().context().family();
            if (family.isPresent() && families.add(family.get())) {
                text.append(one.value())
                        .append(", all pairs")
                        .append(by(one.by()))
                        .append('\n');
                Aligned rows = new Aligned().row("  pair", "estimate", "low", "high");
                family.get()
                        .pairs()
                        .forEach(pair -> rows.row(
                                "  " + pair.one() + " against " + pair.other(),
                                four(pair.found().estimate()),
                                four(pair.found().low()),
                                four(pair.found().high())));
                text.append(rows).append("  ");
                text.append(family.get().pairs().get(0).found().method()).append("\n\n");
            }
        }
        return text.toString();
    }

    private static String one(Comparisons.Parted parted, boolean details) {
        Comparison comparison = parted.comparison();
        StringBuilder text = new StringBuilder(title(parted));
        text.append(": ").append(comparison.verdict().word()).append('\n');
        comparison.reasons().forEach(it -> text.append(wrapped(it, "  ")));
        text.append('\n').append(groups(comparison));
        text.append("  ").append(effect(comparison.found())).append('\n');
        text.append(standing(comparison.standing(), details));
        if (details) {
            comparison.control().ifPresent(it -> text.append(leftOver(it)));
            text.append(leftOver(comparison.treated()));
            comparison
                    .context()
                    .family()
                    .ifPresent(it -> text.append(wrapped(
                            "together: "
                                    + effect(it.of(comparison.treated().name()).found()),
                            "  ")));
            comparison
                    .context()
                    .grounds()
                    .forEach(it -> text.append(wrapped(it.what() + ": " + it.words(), "  ")));
            comparison.context().tests().forEach(it -> text.append(wrapped(it.words(), "  ")));
            comparison
                    .beside()
                    .forEach(it -> text.append("  ").append(beside(it)).append('\n'));
        }
        return text.append(findings(comparison.findings())).toString();
    }

    private static String findings(List<Finding> findings) {
        return findings.stream()
                .map(it -> wrapped(it.level().word() + ": " + it.text(), "  "))
                .collect(Collectors.joining());
    }

    private static String title(Comparisons.Parted parted) {
        Comparison comparison = parted.comparison();
        String against = comparison.control().map(it -> " against " + it.name()).orElse("");
        return parted.value() + ", " + comparison.treated().name() + against + by(parted.by());
    }

    private static String by(Map<String, String> levels) {
        return levels.entrySet().stream()
                .map(it -> ", %s %s".formatted(it.getKey(), it.getValue()))
                .collect(Collectors.joining());
    }

    private static String groups(Comparison comparison) {
        List<Group> groups = new ArrayList<>();
        comparison.control().ifPresent(groups::add);
        groups.add(comparison.treated());
        boolean counted = groups.stream().allMatch(it -> it.tally().isPresent());
        boolean timed = groups.stream().allMatch(it -> it.leftOver().isPresent());
        Aligned rows = new Aligned();
        if (timed) {
            rows.row("  group", "n", "happened", "median", "watched to");
            groups.forEach(it -> rows.row(timed(it)));
        } else if (counted) {
            rows.row("  group", "n", groups.get(0).tally().orElseThrow().what(), "of all such");
            groups.forEach(it -> rows.row(counted(it)));
        } else {
            rows.row("  group", "n", "mean", "sd", "median");
            groups.forEach(it -> rows.row(row(it)));
        }
        return rows.toString();
    }

    private static String[] timed(Group group) {
        String median = group.median() instanceof Amount.Known known
                ? Written.number(known.value(), 4)
                : "none";
        return new String[] {
            "  " + group.name(),
            Integer.toString(group.n()),
            Integer.toString(group.tally().orElseThrow().count()),
            median,
            Written.number(group.leftOver().orElseThrow().watchedTo(), 4)
        };
    }

    private static String[] counted(Group group) {
        Group.Tally tally = group.tally().orElseThrow();
        return new String[] {
            "  " + group.name(),
            Integer.toString(tally.n()),
            Integer.toString(tally.count()),
            limits(tally.low(), tally.high())
        };
    }

    private static String limits(double low, double high) {
        return Written.fixed(100 * low, 0) + " to " + Written.fixed(100 * high, 0) + "\u2009%";
    }

    /** Returns the share left over time, a line for each time at which it fell. */
    private static String leftOver(Group group) {
        StringBuilder text = new StringBuilder();
        group.leftOver().ifPresent(curve -> {
            if (!curve.falls().isEmpty()) {
                text.append("  left over, ").append(group.name()).append('\n');
            }
            for (LeftOver.Fall fall : curve.falls()) {
                String from = fall.after() == fall.until()
                        ? "from "
                        : Written.number(fall.after(), 4) + " or later, by ";
                text.append("    %s%s: %s\u2009%% (%s)\n"
                        .formatted(
                                from,
                                Written.number(fall.until(), 4),
                                Written.fixed(100 * fall.left(), 0),
                                limits(fall.low(), fall.high())));
            }
        });
        return text.toString();
    }

    private static String[] row(Group group) {
        double sd = group.sd().orElse(0);
        return new String[] {
            "  " + group.name(),
            Integer.toString(group.n()),
            amount(group.mean(), sd),
            group.sd() instanceof Amount.Known known ? Written.uncertainty(known.value()) : "none",
            amount(group.median(), sd)
        };
    }

    private static String amount(Amount amount, double u) {
        return amount instanceof Amount.Known known ? Written.rounded(known.value(), u) : "none";
    }

    private static String effect(Found found) {
        if (found.estimate() instanceof Amount.None none) {
            return "no %s: %s".formatted(found.kind().word(), none.reason());
        }
        return "%s %s, %s (%s)"
                .formatted(
                        found.kind().word(), four(found.estimate()), ends(found), found.method());
    }

    private static String ends(Found found) {
        String interval = Written.percent(found.level()) + " interval ";
        if (found.low().isKnown() && found.high().isKnown()) {
            return interval + four(found.low()) + " to " + four(found.high());
        }
        if (found.low().isKnown()) {
            return interval + four(found.low()) + " or more";
        }
        return found.high().isKnown()
                ? interval + four(found.high()) + " or less"
                : "no interval: " + four(found.low());
    }

    private static String beside(Beside beside) {
        return "beside, %s: %s (%s to %s)%s, %s"
                .formatted(
                        beside.interval(),
                        four(beside.estimate()),
                        four(beside.low()),
                        four(beside.high()),
                        beside.unit().map(it -> "\u2009" + it.symbol()).orElse(""),
                        beside.method());
    }

    private static String four(Amount amount) {
        return amount instanceof Amount.Known known
                ? Written.number(known.value(), 5)
                : ((Amount.None) amount).reason();
    }

    private static String standing(Standing standing, boolean details) {
        if (standing.views().isEmpty()) {
            return "";
        }
        StringBuilder text = new StringBuilder(wrapped(standing.words(), "  "));
        if (details) {
            standing.views()
                    .forEach(it -> text.append("    ")
                            .append(it.words())
                            .append(": ")
                            .append(it.verdict().word())
                            .append('\n'));
        }
        return text.toString();
    }

    /** Breaks a sentence between words so that it stays readable on a terminal. */
    static String wrapped(String sentence, String indent) {
        StringBuilder text = new StringBuilder();
        StringBuilder line = new StringBuilder(indent);
        for (String word : sentence.split(" ")) {
            if (line.length() + word.length() > WIDTH && line.length() > indent.length()) {
                text.append(line.toString().stripTrailing()).append('\n');
                line = new StringBuilder(indent).append("  ");
            }
            line.append(word).append(' ');
        }
        return text.append(line.toString().stripTrailing()).append('\n').toString();
    }
}
