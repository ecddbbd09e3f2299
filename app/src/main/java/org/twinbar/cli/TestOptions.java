package org.twinbar.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.twinbar.study.Workspace;
import org.twinbar.study.bench.Shelf;
import org.twinbar.study.file.CalibrationSheet;
import org.twinbar.study.file.TestSheet;
import picocli.CommandLine.Option;

/** Options that say what is the same for all specimens of a test. */
final class TestOptions {

    @Option(
            names = "--set",
            paramLabel = "NAME=VALUE",
            description = "What is the same for all specimens, or a setting of the method.")
    List<String> set = new ArrayList<>();

    @Option(
            names = "--resolution",
            paramLabel = "NAME=Q",
            description = "Step of a display, by reading or instrument (width=0.01mm).")
    List<String> resolution = new ArrayList<>();

    @Option(
            names = "--calibration",
            paramLabel = "NAME=Q",
            description = "Standard uncertainty of a gain (force=0.5%%).")
    List<String> calibration = new ArrayList<>();

    @Option(
            names = "--zero",
            paramLabel = "NAME=Q",
            description = "Standard uncertainty of a zero (force=0.2N).")
    List<String> zero = new ArrayList<>();

    @Option(
            names = "--instrument",
            paramLabel = "NAME=INSTRUMENT",
            description = "What it was read on: an instrument of the workspace, by reading or"
                    + " kind (force=\"Load cell A\").")
    List<String> instrument = new ArrayList<>();

    @Option(
            names = "--date",
            paramLabel = "DAY",
            description = "Day of the test (2026-05-04): tells which calibration held.")
    @Nullable
    String date;

    TestSheet sheet(String method) {
        TestSheet sheet = date == null
                ? TestSheet.of(method)
                : TestSheet.of(method).on(CalibrationSheet.date(date));
        return sheet.withInstruments(Context.pairs("--instrument", instrument))
                .withSet(Context.pairs("--set", set))
                .withErrors(
                        Context.pairs("--resolution", resolution),
                        Context.pairs("--calibration", calibration),
                        Context.pairs("--zero", zero));
    }

    /** Does something with the workspace's instruments; it is opened only where one is named. */
    <T> T withShelf(Context context, Path workspace, Function<Shelf, T> use) {
        if (instrument.isEmpty()) {
            return use.apply(Shelf.EMPTY);
        }
        try (Workspace open = context.openThere(workspace)) {
            return use.apply(open.instruments());
        }
    }
}
