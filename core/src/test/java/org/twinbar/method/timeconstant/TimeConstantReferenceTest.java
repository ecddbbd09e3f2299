package org.twinbar.method.timeconstant;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.twinbar.Checks;
import org.twinbar.method.Exactly;
import org.twinbar.method.Readings;
import org.twinbar.method.Result;

class TimeConstantReferenceTest {

    private static final Checks CHECKS = Checks.of(TimeConstantReferenceTest.class);

    @Test
    void closedForm() {
        Result result = Dummies.result(Dummies.warming(446.4, 1800));
        CHECKS.row("closed-tau").expects(Exactly.value(result, TimeConstantForm.SECONDS));
        CHECKS.row("closed-held").expects(Exactly.value(result, TimeConstantForm.HELD));
    }

    @Test
    void noisyStepByR() throws IOException {
        Result result = Dummies.result(curve("step.csv").setting(TimeConstantForm.LEFT_OUT, 0));
        CHECKS.row("step-tau").expects(Exactly.value(result, TimeConstantForm.SECONDS));
        CHECKS.row("step-tau-u").expects(Exactly.u(result, TimeConstantForm.SECONDS));
        CHECKS.row("step-held").expects(Exactly.value(result, TimeConstantForm.HELD));
        CHECKS.row("step-held-u").expects(Exactly.u(result, TimeConstantForm.HELD));
        CHECKS.row("step-df")
                .expects(result.budgets().get(TimeConstantForm.SECONDS).degreesOfFreedom());
    }

    /** The inside of a slab warms late, and then by the exponential of its first root. */
    @Test
    void middleOfASlab() throws IOException {
        CHECKS.row("slab-tau").expects(Dummies.seconds(curve("slab.csv")));
    }

    private static Readings.Builder curve(String name) throws IOException {
        try (BufferedReader file = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(TimeConstantReferenceTest.class.getResourceAsStream(name)),
                StandardCharsets.UTF_8))) {
            List<String[]> rows = file.lines()
                    .filter(line -> line.matches("[0-9].*"))
                    .map(line -> line.split(","))
                    .toList();
            return Dummies.of(Exactly.bench(), column(rows, 0), column(rows, 1));
        }
    }

    private static double[] column(List<String[]> rows, int column) {
        return rows.stream().mapToDouble(row -> Double.parseDouble(row[column])).toArray();
    }
}
