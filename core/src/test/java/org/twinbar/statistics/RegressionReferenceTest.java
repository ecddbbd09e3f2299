package org.twinbar.statistics;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.twinbar.Checks;

/** NIST's Statistical Reference Datasets, linear regression. */
class RegressionReferenceTest {

    private final Checks checks = Checks.of(getClass());

    @Test
    void norris() {
        List<ReferenceTable.Row> rows = ReferenceTable.read("norris.csv").rows();
        StraightLine line = StraightLine.of(column(rows, "x"), column(rows, "y"));
        checks.row("142-b0").expects(line.intercept());
        checks.row("142-b0-se").expects(Math.sqrt(line.varianceAt(0)));
        checks.row("142-b1").expects(line.slope());
        checks.row("142-b1-se").expects(Math.sqrt(line.slopeVariance()));
        checks.row("142-s").expects(line.residualSd());
        checks.row("142-r2").expects(line.determination());
    }

    @Test
    void longley() {
        List<ReferenceTable.Row> rows = ReferenceTable.read("longley.csv").rows();
        double[][] x = rows.stream()
                .map(row -> new double[] {
                    1,
                    row.number("deflator"),
                    row.number("gnp"),
                    row.number("unemployed"),
                    row.number("forces"),
                    row.number("population"),
                    row.number("year")
                })
                .toArray(double[][]::new);
        LinearFit fit = LinearFit.of(x, column(rows, "employed"));
        checks.row("143-b0").expects(fit.coefficient(0));
        checks.row("143-deflator").expects(fit.coefficient(1));
        checks.row("143-year").expects(fit.coefficient(6));
        checks.row("143-s").expects(fit.residualSd());
    }

    @Test
    void wampler1() {
        double[][] x = new double[21][6];
        double[] y = new double[21];
        for (int i = 0; i <= 20; i++) {
            double power = 1;
            for (int j = 0; j < 6; j++) {
                x[i][j] = power;
                y[i] += power;
                power *= i;
            }
        }
        LinearFit fit = LinearFit.of(x, y);
        for (int j = 0; j < 6; j++) {
            checks.row("144-b" + j).expects(fit.coefficient(j));
        }
    }

    private static double[] column(List<ReferenceTable.Row> rows, String name) {
        return rows.stream().mapToDouble(row -> row.number(name)).toArray();
    }
}
