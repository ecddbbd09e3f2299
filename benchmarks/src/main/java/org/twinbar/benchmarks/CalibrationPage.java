package org.twinbar.benchmarks;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.twinbar.decision.Effect;

/** The calibration study as a page with two pictures. */
record CalibrationPage(List<Cell.Tally> tallies, KindTables kinds, int studies, long seed) {

    /** Beyond three of its standard errors a share is off by more than chance. */
    private static final double ERRORS = 3;

    private static final double COVERAGE = 0.95;

    String text() {
        return String.format(
                Locale.ROOT,
                """
                # How often the verdicts are right

                Made by `benchmarks/calibrate`; don't edit it by hand. %,d simulated studies in each cell (seed %d), each
                judged by the code that judges real ones. The scatter, the true change and what is worth having are known
                there, so that a verdict is right or wrong. Shares are in per cent; chance alone moves a share of 2.5 %% by
                ±%.2f (three standard errors), one of 95 %% by ±%.2f.

                **What is promised.** False "supported" (the true change is no larger than what is worth having, and the
                verdict says that it is there) at most 2.5 %% for normal scatter, and at most 5 %% for log-normal and Weibull
                scatter of one shape in both groups with equal numbers, from 3 to 20 specimens in each. The rest is shown
                without a promise, and raises a finding where Twinbar can see it.

                %s

                ![False "supported" at the margin, by specimens in each group](calibration-supported.svg)

                ![Coverage of the default interval, by specimens in each group](calibration-coverage.svg)

                ![False "supported" of shares, rates, ranks, levels, print runs, units and mixes](calibration-kinds.svg)

                ## Cells off their nominal rate

                %s
                %s%s%s""",
                studies,
                seed,
                100 * error(0.025),
                100 * error(COVERAGE),
                promise(),
                explained(),
                tables(Effect.RATIO, "Ratio (Fieller)"),
                tables(Effect.DIFFERENCE, "Difference (Welch)"),
                kinds.text().stripTrailing() + "\n");
    }

    /** The cells that break the promise, or that none does. */
    private String promise() {
        List<String> broken = tallies.stream()
                .filter(this::promised)
                .filter(Cell.Tally::supportedIsFalse)
                .filter(tally -> {
                    double most = tally.cell().scatter().promise().most;
                    return tally.supportedShare() > most + error(most);
                })
                .map(tally -> "- %s, %s, %d specimens, worth %.0f %%: %.2f %%"
                        .formatted(
                                tally.cell().effect().word(),
                                tally.cell().scatter().words(),
                                tally.cell().treated(),
                                100 * tally.cell().worth(),
                                100 * tally.supportedShare()))
                .toList();
        return broken.isEmpty()
                ? "**Every cell keeps it.**"
                : "**Cells that break it:**\n\n" + String.join("\n", broken);
    }

    private boolean promised(Cell.Tally tally) {
        Cell cell = tally.cell();
        return cell.runs() == 0
                && cell.treated() == cell.control()
                && cell.scatter().promise() != Scatter.Promise.NONE;
    }

    private double error(double share) {
        return error(share, studies);
    }

    static double error(double share, int studies) {
        return ERRORS * Math.sqrt(share * (1 - share) / studies);
    }

    private String tables(Effect effect, String title) {
        StringBuilder text = new StringBuilder("## " + title + "\n\n");
        text.append(
                        "Three numbers stand for what is worth having: nothing named, 5 % and 10 %. False \"supported\" is")
                .append(
                        " counted where the true change is just what is worth having, false \"contradicted\" where there")
                .append(" is none, \"beyond\" where it is 15 points more than worth.\n\n");
        text.append(
                        "| scatter | treated, control | false \"supported\" | false \"contradicted\" | coverage |")
                .append(" \"supported\" beyond |\n|---|---|---|---|---|---|\n");
        for (Cell.Tally tally : tallies) {
            Cell cell = tally.cell();
            if (cell.effect() == effect && cell.worth() == 0 && cell.truth() == 0) {
                text.append(row(cell));
            }
        }
        return text.append('\n').toString();
    }

    private String row(Cell cell) {
        return String.format(
                Locale.ROOT,
                "| %s | %d, %d%s | %s | %s | %s | %s |%n",
                cell.scatter().words(),
                cell.treated(),
                cell.control(),
                cell.runs() == 0 ? "" : " in " + cell.runs() + " print runs",
                each(cell, worth -> worth, "%.1f", Cell.Tally::supportedShare),
                each(cell, worth -> 0, "%.1f", Cell.Tally::contradictedShare),
                each(cell, worth -> worth, "%.1f", Cell.Tally::coverage),
                each(
                        cell,
                        worth -> worth + CalibrationStudy.BEYOND,
                        "%.0f",
                        Cell.Tally::supportedShare));
    }

    /** The share in per cent for each of the margins. */
    private String each(
            Cell cell,
            DoubleUnaryOperator truth,
            String format,
            ToDoubleFunction<Cell.Tally> share) {
        return Arrays.stream(CalibrationStudy.margins())
                .mapToObj(worth -> tallies.stream()
                        .filter(tally -> alike(tally.cell(), cell)
                                && tally.cell().worth() == worth
                                && tally.cell().truth() == truth.applyAsDouble(worth))
                        .findFirst()
                        .orElseThrow())
                .map(tally -> String.format(Locale.ROOT, format, 100 * share.applyAsDouble(tally)))
                .collect(Collectors.joining(" · "));
    }

    /** The kinds of studies with a cell that is off its nominal rate, and why. */
    private String explained() {
        StringBuilder text = new StringBuilder();
        List<Map.Entry<String, Predicate<Cell>>> kinds = List.of(
                Map.entry(
                        "**Treated with three times the spread, three to six in each.** Satterthwaite's degrees of freedom"
                                + " rest on an estimated ratio of spreads, which few specimens give badly.",
                        cell -> cell.scatter() == Scatter.UNEQUAL_SPREAD),
                Map.entry(
                        "**Read to a step wider than the scatter.** The scatter is not believed below the resolution, so that"
                                + " the interval is wide on purpose and hardly ever wrong.",
                        cell -> cell.scatter() == Scatter.COARSE),
                Map.entry(
                        "**A tenth of the treated bad.** The claim is about the mean of all parts, the bad ones among them;"
                                + " a few specimens often hold none, and then the treatment looks better than it is. No"
                                + " interval can see what was not drawn. A bad specimen that was drawn is named as doubted.",
                        cell -> cell.scatter() == Scatter.ONE_IN_TEN_BAD),
                Map.entry(
                        "**One group three times as large.** With equal numbers the skew of the two means cancels in their"
                                + " difference; with unequal ones it doesn't. Twinbar raises the finding"
                                + " `unequal-numbers`.",
                        cell -> cell.treated() != cell.control()),
                Map.entry(
                        "**Skewed or heavy-tailed, equal numbers.** Large values raise the mean and its scatter together,"
                                + " which makes the interval wider than it need be.",
                        cell -> cell.treated() == cell.control()
                                && (cell.scatter() == Scatter.SKEWED
                                        || cell.scatter() == Scatter.HEAVY)),
                Map.entry(
                        "**Three or four in each, any scatter.** With so few, Satterthwaite's degrees of freedom are a little"
                                + " too careful.",
                        cell -> cell.treated() <= 4
                                && cell.treated() == cell.control()
                                && cell.scatter().promise() != Scatter.Promise.NONE));
        for (Map.Entry<String, Predicate<Cell>> kind : kinds) {
            double least = 1;
            double most = 0;
            for (Cell.Tally tally : tallies) {
                if (tally.cell().truth() == tally.cell().worth()
                        && kind.getValue().test(tally.cell())) {
                    least = Math.min(least, tally.supportedShare());
                    most = Math.max(most, tally.supportedShare());
                }
            }
            text.append(String.format(
                    Locale.ROOT,
                    "- %s False \"supported\" from %.1f to %.1f %%.%n",
                    kind.getKey(),
                    100 * least,
                    100 * most));
        }
        return text.toString();
    }

    private static boolean alike(Cell one, Cell other) {
        return one.effect() == other.effect()
                && one.scatter() == other.scatter()
                && one.treated() == other.treated()
                && one.control() == other.control()
                && one.runs() == other.runs();
    }

    String falseSupported() {
        return new DotPlot(
                        "false \"supported\" at worth 5 %, per cent", 0, 10, new double[] {2.5, 5})
                .of(points(tally -> 100 * tally.supportedShare()));
    }

    String coverage() {
        return new DotPlot("coverage of the 95 % interval, per cent", 84, 100, new double[] {95})
                .of(points(tally -> 100 * tally.coverage()));
    }

    /** The ratio's cells of equal groups at a worth of 5 %, one row of points for each scatter. */
    private List<DotPlot.Row> points(ToDoubleFunction<Cell.Tally> value) {
        return List.of(Scatter.values()).stream()
                .map(scatter -> new DotPlot.Row(
                        scatter.words(),
                        tallies.stream()
                                .filter(tally -> shown(tally.cell(), scatter))
                                .collect(Collectors.toMap(
                                        tally -> tally.cell().treated(),
                                        value::applyAsDouble,
                                        (one, other) -> one,
                                        TreeMap::new))))
                .toList();
    }

    private static boolean shown(Cell cell, Scatter scatter) {
        return cell.effect() == Effect.RATIO
                && cell.scatter() == scatter
                && cell.runs() == 0
                && cell.treated() == cell.control()
                && cell.worth() == 0.05
                && cell.truth() == cell.worth();
    }
}
