package org.twinbar.cli;

import java.util.ArrayList;
import java.util.List;
import org.twinbar.study.TestSheet;
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

    TestSheet sheet(String method) {
        return TestSheet.of(method)
                .withSet(Context.pairs("--set", set))
                .withErrors(
                        Context.pairs("--resolution", resolution),
                        Context.pairs("--calibration", calibration),
                        Context.pairs("--zero", zero));
    }
}
