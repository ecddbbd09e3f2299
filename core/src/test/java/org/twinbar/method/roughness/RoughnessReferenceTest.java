package org.twinbar.method.roughness;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.twinbar.Checks;
import org.twinbar.method.Exactly;
import org.twinbar.method.Readings;
import org.twinbar.method.Result;

class RoughnessReferenceTest {

    private static final Checks CHECKS = Checks.of(RoughnessReferenceTest.class);

    @Test
    void filter() {
        CHECKS.row("alpha").expects(GaussianFilter.ALPHA);
        CHECKS.row("half").expects(GaussianFilter.kept(2.5, 2.5));
        CHECKS.row("third").expects(GaussianFilter.kept(2.4, 0.8));
    }

    /** A wave as long as the cut-off comes through the filter at half its height. */
    @Test
    void filterOnAWave() {
        double[] wave = new double[4001];
        for (int i = 0; i < wave.length; i++) {
            wave[i] = 5 * StrictMath.cos(2 * Math.PI * (i - 2000) / 1000);
        }
        double[] line = new GaussianFilter(0.0025, 2.5).meanLine(wave);
        CHECKS.row("half-traced").expects(line[2000]);
    }

    @Test
    void closedForms() {
        Result sine = Profiles.trace(fine(Profiles.sine(5, 0.25)));
        CHECKS.row("sine-ra").expects(Exactly.value(sine, RoughnessForm.RA));
        CHECKS.row("sine-rq").expects(Exactly.value(sine, RoughnessForm.RQ));
        CHECKS.row("sine-rz").expects(Exactly.value(sine, RoughnessForm.RZ));
        CHECKS.row("sine-rt").expects(Exactly.value(sine, RoughnessForm.RT));
        Result triangle = Profiles.trace(fine(Profiles.triangle(5, 0.25)));
        CHECKS.row("triangle-ra").expects(Exactly.value(triangle, RoughnessForm.RA));
        CHECKS.row("triangle-rq").expects(Exactly.value(triangle, RoughnessForm.RQ));
    }

    /** A wave of 200 rows. */
    private static Readings.Builder fine(DoubleUnaryOperator height) {
        return Profiles.of(Profiles.part(Exactly.bench()), 0.00125, Profiles.LENGTH, height);
    }

    @Test
    void cutoffs() {
        for (String ra : List.of("0.02", "0.1", "1.2", "6", "15")) {
            CHECKS.row("cutoff-" + ra).expects(Cutoffs.forRoughness(Double.parseDouble(ra)));
        }
    }

    @Test
    void profileByScipy() throws IOException {
        compare("line", profile());
        compare("parabola", profile().word(RoughnessForm.FORM, "parabola"));
        compare("short", profile().setting(RoughnessForm.SHORT_CUTOFF, 80));
        compare("fine", profile().setting(RoughnessForm.CUTOFF, 0.8));
    }

    private static void compare(String id, Readings.Builder readings) {
        Result result = Profiles.trace(readings);
        CHECKS.row(id + "-ra").expects(Exactly.value(result, RoughnessForm.RA));
        CHECKS.row(id + "-rq").expects(Exactly.value(result, RoughnessForm.RQ));
        CHECKS.row(id + "-rz").expects(Exactly.value(result, RoughnessForm.RZ));
        CHECKS.row(id + "-rt").expects(Exactly.value(result, RoughnessForm.RT));
        CHECKS.row(id + "-ra-u").expects(Exactly.u(result, RoughnessForm.RA));
        CHECKS.row(id + "-rz-u").expects(Exactly.u(result, RoughnessForm.RZ));
    }

    private static Readings.Builder profile() throws IOException {
        try (BufferedReader file = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(
                        RoughnessReferenceTest.class.getResourceAsStream("profile.csv")),
                StandardCharsets.UTF_8))) {
            List<String[]> rows = file.lines()
                    .filter(line -> line.matches("[0-9].*"))
                    .map(line -> line.split(","))
                    .toList();
            return Profiles.part(Exactly.bench())
                    .channel(RoughnessForm.POSITION, column(rows, 0))
                    .channel(RoughnessForm.HEIGHT, column(rows, 1));
        }
    }

    private static double[] column(List<String[]> rows, int column) {
        return rows.stream().mapToDouble(row -> Double.parseDouble(row[column])).toArray();
    }
}
