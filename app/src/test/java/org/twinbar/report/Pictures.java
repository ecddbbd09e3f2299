package org.twinbar.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.twinbar.instrument.Allowed;
import org.twinbar.instrument.Calibration;
import org.twinbar.instrument.Reference;
import org.twinbar.statistics.LeftOver;
import org.twinbar.statistics.Lifetime;

/** One of each picture, of invented specimens. */
final class Pictures {

    private Pictures() {}

    static Clusters clusters() {
        return new Clusters(
                "Peak force",
                "N",
                List.of(
                        cluster(
                                "plain",
                                Sign.CONTROL,
                                1731,
                                1802,
                                1755,
                                1690,
                                1748,
                                1712,
                                1778,
                                1821),
                        cluster(
                                "coated",
                                Sign.FIRST,
                                1968,
                                2011,
                                1925,
                                1990,
                                2040,
                                1955,
                                1983,
                                1902)));
    }

    static Clusters.Cluster cluster(String name, Sign sign, double... values) {
        List<Clusters.Point> points = new ArrayList<>();
        double sum = 0;
        for (double value : values) {
            String specimen =
                    name.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + (points.size() + 1);
            points.add(Clusters.Point.of(specimen, value, Written.value(value, 9.2, "N")));
            sum += value;
        }
        double mean = sum / values.length;
        return new Clusters.Cluster(
                name,
                sign,
                points,
                Optional.of(new Clusters.Mean(
                        mean, mean - 34, mean + 34, Written.value(mean, 14, "N"))));
    }

    /** Two coats flat, on edge and upright; the thick one was not tried on edge. */
    static Crossed crossed() {
        return new Crossed(
                "Breaking load in N",
                List.of("flat", "on edge", "upright"),
                List.of(
                        new Crossed.Group(
                                "plain",
                                Sign.CONTROL,
                                List.of(mean(403, 9), mean(352, 14), mean(201, 11))),
                        new Crossed.Group(
                                "thin coat",
                                Sign.FIRST,
                                List.of(mean(437, 12), mean(381, 10), mean(231, 15))),
                        new Crossed.Group(
                                "thick coat",
                                Sign.SECOND,
                                List.of(mean(474, 8), Optional.empty(), mean(302, 20)))));
    }

    private static Optional<Clusters.Mean> mean(double value, double half) {
        return Optional.of(new Clusters.Mean(
                value, value - half, value + half, Written.value(value, half / 2, "N")));
    }

    static Effect effect() {
        return new Effect(
                "Change of the peak force",
                "%",
                Effect.Signs.CHANGE,
                new Effect.Level(0, "no change"),
                List.of(new Effect.Level(5, "worth 5\u2009%")),
                Optional.of(new Effect.Level(10, "claimed 10\u2009%")),
                List.of(
                        new Effect.Row(
                                "measured +13\u2009% (8 to 18\u2009%)",
                                Effect.Kind.MEASURED, 13, 8, 18),
                        new Effect.Row(
                                "from the added section alone +12\u2009%",
                                Effect.Kind.EXPECTED, 12, 10.5, 13.5)));
    }

    static Curves curves(int perGroup, int rows) {
        List<Curves.Curve> plain = new ArrayList<>();
        List<Curves.Curve> coated = new ArrayList<>();
        for (int i = 0; i < perGroup; i++) {
            plain.add(curve("P" + (i + 1), rows, 1700 + 30 * Math.sin(i * 2.1), 3.1 + i % 5 * 0.1));
            coated.add(
                    curve("C" + (i + 1), rows, 1960 + 25 * Math.sin(i * 1.3), 3.4 + i % 4 * 0.1));
        }
        return Curves.of(
                "Extension in mm",
                "Force in N",
                List.of(
                        new Curves.Group("plain", Sign.CONTROL, plain),
                        new Curves.Group("coated", Sign.FIRST, coated)));
    }

    private static Curves.Curve curve(String name, int rows, double peak, double end) {
        double[] x = new double[rows];
        double[] y = new double[rows];
        int best = 0;
        for (int i = 0; i < rows; i++) {
            x[i] = end * i / (rows - 1.0);
            double t = x[i] / 2.6;
            y[i] = peak * t * Math.exp(1 - t) + 4 * Math.sin(i * 0.7);
            if (i == rows - 1) {
                y[i] = peak * 0.2;
            }
            best = y[i] > y[best] ? i : best;
        }
        return new Curves.Curve(name, x, y, Optional.of(best));
    }

    static Shares shares() {
        return new Shares(
                "leak-free in 24\u2009h",
                "leaked",
                List.of(
                        new Shares.Group(
                                "plain",
                                Sign.CONTROL,
                                List.of("P3"),
                                List.of("P1", "P2", "P4", "P5"),
                                List.of()),
                        new Shares.Group(
                                "coated",
                                Sign.FIRST,
                                List.of("C1", "C2", "C3", "C4"),
                                List.of(),
                                List.of("C5"))));
    }

    static Line line(boolean fitted) {
        List<Line.Point> coated = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            double amount = 80 * (i % 3);
            double value = 420 + amount / 3 + 5 * (i / 3);
            coated.add(new Line.Point(
                    "C" + i, amount, value, Written.number(value, 4) + " N at " + amount + " µm"));
        }
        return new Line(
                "Film in µm",
                "Largest force in N",
                List.of(
                        new Line.Group(
                                "plain",
                                Sign.CONTROL,
                                List.of(new Line.Point("P1", 0, 420, "420 N at 0 µm"))),
                        new Line.Group("coated", Sign.FIRST, coated)),
                fitted
                        ? List.of(
                                new Line.Place(0, 425, 418, 432),
                                new Line.Place(160, 480, 472, 488))
                        : List.of());
    }

    static Survival survival() {
        return new Survival(
                "Time under 120 mm of water in h",
                "Still dry",
                List.of(
                        survived(
                                "plain",
                                Sign.CONTROL,
                                List.of(
                                        new Survival.Time("P1", 2, Survival.End.HAPPENED),
                                        new Survival.Time("P2", 5, Survival.End.HAPPENED),
                                        new Survival.Time("P3", 24, Survival.End.WATCHING_ENDED),
                                        new Survival.Time("P4", 9, Survival.End.HAPPENED),
                                        new Survival.Time("P5", 9, Survival.End.HAPPENED))),
                        survived(
                                "coated",
                                Sign.FIRST,
                                List.of(
                                        new Survival.Time("C1", 24, Survival.End.WATCHING_ENDED),
                                        new Survival.Time("C2", 24, Survival.End.WATCHING_ENDED),
                                        new Survival.Time("C3", 15, Survival.End.WATCHING_ENDED),
                                        new Survival.Time("C4", 18, Survival.End.HAPPENED),
                                        new Survival.Time(
                                                "C5", 24, Survival.End.WATCHING_ENDED)))));
    }

    static Survival.Group survived(String name, Sign sign, List<Survival.Time> times) {
        List<Lifetime> lives = times.stream()
                .map(time -> time.end() == Survival.End.HAPPENED
                        ? Lifetime.between(time.from(), time.time())
                        : Lifetime.censored(time.time()))
                .toList();
        return new Survival.Group(name, sign, times, LeftOver.of(lives, 0.95).falls());
    }

    static Parts parts() {
        return new Parts(
                "Where the uncertainty of one coated bar's strength comes from",
                List.of(
                        new Parts.Part("thickness, caliper on ridges", 0.58),
                        new Parts.Part("load cell gain", 0.24),
                        new Parts.Part("width resolution", 0.11),
                        new Parts.Part("load cell zero", 0.05),
                        new Parts.Part("force resolution", 0.003),
                        new Parts.Part("force zero drift", 0.002)));
    }

    private static final Map<String, String> ALL = draw();

    static Map<String, String> all() {
        return ALL;
    }

    private static Map<String, String> draw() {
        Map<String, String> all = new LinkedHashMap<>();
        all.put("clusters", Figures.clusters(clusters()));
        all.put("effect", Figures.effect(effect()));
        all.put("curves", Figures.curves(curves(8, 2_000)));
        all.put("many curves", Figures.curves(curves(100, 2_000)));
        all.put("crossed", Figures.crossed(crossed()));
        all.put("shares", Figures.shares(shares()));
        all.put("survival", Figures.survival(survival()));
        all.put("line", Figures.line(line(true)));
        all.put("points without a line", Figures.line(line(false)));
        all.put("parts", Figures.parts(parts()));
        all.put(
                "three groups",
                Figures.clusters(new Clusters(
                        "Deflection temperature",
                        "°C",
                        List.of(
                                cluster("plain", Sign.CONTROL, 62.1, 61.8, 63),
                                cluster("coated once", Sign.FIRST, 64, 64.5, 65.1),
                                cluster(
                                        "annealed at 80 °C for two hours",
                                        Sign.SECOND,
                                        70,
                                        70,
                                        70.2)))));
        all.put(
                "reach",
                Figures.reach(new Reach(
                        "Finds from, %",
                        List.of(
                                new Reach.Point(3, 26, "+26\u2009%"),
                                new Reach.Point(6, 17, "+17\u2009%"),
                                new Reach.Point(15, 12, "+12\u2009%")),
                        List.of(new Reach.Level(15, "expected")),
                        Optional.of(6))));
        all.put("calibration", Figures.calibration(calibration(), "N"));
        all.put(
                "residuals",
                Figures.residuals(
                        calibration(), "N", Optional.of(new Allowed(1, "0.5 % of the range"))));
        all.put("mark supported", mark(1.08, 1.18));
        all.put("mark too small", mark(0.99, 1.03));
        all.put("mark contradicted", mark(0.8, 0.93));
        all.put("mark better", mark(1.01, 1.18));
        all.put("mark open", mark(0.9, 1.2));
        all.put("mark no interval", mark(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY));
        return all;
    }

    private static Calibration calibration() {
        List<Calibration.Point> points = new ArrayList<>();
        double[] values = {0, 50, 100, 150, 200, 150, 100, 50, 0};
        double[] shown = {0.3, 50.6, 101.2, 151.6, 201.7, 152, 101.5, 50.9, 0.4};
        for (int i = 0; i < values.length; i++) {
            points.add(new Calibration.Point(values[i], shown[i]));
        }
        return Calibration.of(points, 0.1, Reference.exact("weights"));
    }

    private static String mark(double low, double high) {
        return Figures.mark(
                new VerdictMark(1, List.of(1.05), OptionalDouble.of((low + high) / 2), low, high),
                "interval " + low + " to " + high + ", none 1, worth 1.05");
    }
}
