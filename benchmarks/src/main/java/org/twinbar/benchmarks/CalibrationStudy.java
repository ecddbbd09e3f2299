package org.twinbar.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.twinbar.decision.Effect;

/**
 * Judges simulated studies whose truth is known, and writes how often the verdicts were right.
 *
 * <p>Cells are judged in parallel, each from a seed of its own, so that the page is the same on
 * every machine.
 */
public final class CalibrationStudy {

    private static final int STUDIES = 10_000;
    private static final long SEED = 1;
    private static final int[] NUMBERS = {3, 4, 5, 6, 10, 20};
    private static final double[] MARGINS = {0, 0.05, 0.10};

    /** How far beyond the margin the true effect lies where the claim is true. */
    static final double BEYOND = 0.15;

    private CalibrationStudy() {}

    /**
     * Writes {@code calibration.md} and its pictures.
     *
     * @param arguments the folder to write to, and how many studies in each cell
     */
    public static void main(String[] arguments) throws IOException {
        Path folder = Path.of(arguments.length > 0 ? arguments[0] : "docs");
        int studies = arguments.length > 1 ? Integer.parseInt(arguments[1]) : STUDIES;
        List<Cell.Tally> tallies =
                cells().parallelStream().map(cell -> cell.judge(studies, SEED)).toList();
        KindTables kinds = new KindTables(Kinds.all().parallelStream()
                .map(kind -> kind.judge(studies, SEED))
                .toList());
        Files.createDirectories(folder);
        CalibrationPage page = new CalibrationPage(tallies, kinds, studies, SEED);
        Files.writeString(folder.resolve("calibration.md"), page.text());
        Files.writeString(folder.resolve("calibration-supported.svg"), page.falseSupported());
        Files.writeString(folder.resolve("calibration-coverage.svg"), page.coverage());
        Files.writeString(folder.resolve("calibration-kinds.svg"), kinds.falseSupported());
    }

    static double[] margins() {
        return MARGINS.clone();
    }

    private static List<Cell> cells() {
        List<Cell> cells = new ArrayList<>();
        for (Effect effect : List.of(Effect.RATIO, Effect.DIFFERENCE)) {
            for (Scatter scatter : Scatter.values()) {
                for (int n : NUMBERS) {
                    add(cells, effect, scatter, n, n, 0);
                }
            }
            for (Scatter scatter : List.of(Scatter.NORMAL, Scatter.LOG_NORMAL, Scatter.SKEWED)) {
                add(cells, effect, scatter, 4, 12, 0);
                add(cells, effect, scatter, 12, 4, 0);
            }
            for (int runs : new int[] {2, 3, 4}) {
                add(cells, effect, Scatter.NORMAL, 3 * runs, 3 * runs, runs);
            }
        }
        return cells;
    }

    private static void add(
            List<Cell> cells, Effect effect, Scatter scatter, int treated, int control, int runs) {
        for (double margin : MARGINS) {
            cells.add(new Cell(effect, scatter, treated, control, runs, margin, margin));
            cells.add(new Cell(effect, scatter, treated, control, runs, margin, margin + BEYOND));
            if (margin > 0) {
                cells.add(new Cell(effect, scatter, treated, control, runs, margin, 0));
            }
        }
    }
}
