package org.twinbar.statistics;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.twinbar.Checks;

/**
 * NIST's Statistical Reference Datasets, univariate; the data are in the tests of Apache Commons
 * Math.
 */
class SummaryReferenceTest {

    private final Checks checks = Checks.of(getClass());

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Lew",
                "Lottery",
                "Mavro",
                "Michelso",
                "NumAcc1",
                "NumAcc2",
                "NumAcc3",
                "NumAcc4",
                "PiDigits"
            })
    void agreesWithNist(String set) throws IOException {
        Summary summary = Summary.of(read(set));
        checks.row("nist-" + set + "-mean").expects(summary.mean());
        checks.row("nist-" + set + "-sd").expects(summary.sd());
        checks.row("nist-" + set + "-r1").expects(summary.lagOneAutocorrelation());
    }

    /** The data are the lines that hold nothing but a number. */
    private static double[] read(String set) throws IOException {
        String name = "/org/apache/commons/math3/stat/data/" + set + ".txt";
        try (InputStream in = SummaryReferenceTest.class.getResourceAsStream(name)) {
            assertThat(in).as(name).isNotNull();
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .map(String::strip)
                    .filter(line -> line.matches("-?[0-9.]+"))
                    .mapToDouble(Double::parseDouble)
                    .toArray();
        }
    }
}
