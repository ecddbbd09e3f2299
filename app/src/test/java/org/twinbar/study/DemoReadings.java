package org.twinbar.study;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;

/**
 * Makes up the readings of the demo study, with a fixed seed: nobody measured them.
 *
 * <p>Run {@code main} to write them into the sources again. What the bars, cups and coat are taken
 * to do stands in the constants; none of it is a value of a real material.
 */
final class DemoReadings {

    static final String INVENTED =
            "Invented readings for the demo of Twinbar: made by DemoReadings with a fixed seed";

    private static final long SEED = 20_260_504;
    private static final double GRIP_DISTANCE_MM = 65;
    private static final double COMPLIANCE_MM_PER_N = 0.0002;
    private static final double SAMPLE_S = 0.2;
    private static final double COAT_MM = 0.24;
    private static final double HAMMER_NM = 0.85;
    private static final double RELEASE_DEG = 140;
    private static final double FREE_RISE_DEG = 138.5;

    private final Random random = new Random(SEED);
    private final Map<String, String> files = new LinkedHashMap<>();

    private DemoReadings() {}

    /** Writes the readings into the folder of the demo, or the folder that is named. */
    public static void main(String[] arguments) throws IOException {
        Path folder = Path.of(arguments.length > 0 ? arguments[0] : "app/src/main/resources/demo");
        for (Map.Entry<String, String> file : make().entrySet()) {
            Path path = folder.resolve(file.getKey());
            Files.createDirectories(path.getParent());
            Files.writeString(path, file.getValue(), StandardCharsets.UTF_8);
        }
    }

    /** Returns each file's name and text. */
    static Map<String, String> make() {
        DemoReadings readings = new DemoReadings();
        readings.pulls();
        readings.blows();
        readings.cups();
        return readings.files;
    }

    /** A way of printing bars, and what they are taken to do. */
    private enum Orientation {
        FLAT(4, 3, 4 / 60.0, 46, 0.022, 0.985, 0.004, 0.026, 1.35),
        UPRIGHT(4, 3, 1 / 60.0, 21, 0.1, 1.0, 0.06, 0.0105, 1.1);

        final int runs;
        final int perRun;
        final double crossheadMmPerS;
        final double strengthMPa;
        final double scatter;
        final double coatedMaterial;
        final double coatScatter;
        final double strainAtPeak;
        final double bend;

        Orientation(
                int runs,
                int perRun,
                double crossheadMmPerS,
                double strengthMPa,
                double scatter,
                double coatedMaterial,
                double coatScatter,
                double strainAtPeak,
                double bend) {
            this.runs = runs;
            this.perRun = perRun;
            this.crossheadMmPerS = crossheadMmPerS;
            this.strengthMPa = strengthMPa;
            this.scatter = scatter;
            this.coatedMaterial = coatedMaterial;
            this.coatScatter = coatScatter;
            this.strainAtPeak = strainAtPeak;
            this.bend = bend;
        }

        String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    private void pulls() {
        List<String> rows = new ArrayList<>();
        rows.add("specimen,group,orientation,print_run,mix,width_before_1_mm,width_before_2_mm,"
                + "thickness_before_1_mm,thickness_before_2_mm,width_1_mm,width_2_mm,width_3_mm,"
                + "thickness_1_mm,thickness_2_mm,thickness_3_mm,mass_g,broke_at,curve_file");
        for (Orientation orientation : Orientation.values()) {
            for (int run = 1; run <= orientation.runs; run++) {
                double runShift = 1 + 0.012 * random.nextGaussian();
                double coated = orientation.coatedMaterial
                        * (1 + orientation.coatScatter * random.nextGaussian());
                for (int bar = 1; bar <= 2 * orientation.perRun; bar++) {
                    int number = (run - 1) * orientation.perRun + (bar + 1) / 2;
                    boolean isCoated = bar % 2 == 0;
                    double material = orientation.strengthMPa * runShift * (isCoated ? coated : 1);
                    rows.add(pull(orientation, run, material, isCoated, number));
                }
            }
        }
        file("tensile.csv", rows);
    }

    private String pull(
            Orientation orientation, int run, double material, boolean coated, int number) {
        String code = "%s%s%s"
                .formatted(
                        orientation.name().charAt(0), coated ? "C" : "P", Integer.toString(number));
        boolean shoulder = code.equals("FP5");
        boolean bubble = code.equals("FC4");
        double width = 10.06 + 0.03 * random.nextGaussian();
        double thickness = 3.09 + 0.02 * random.nextGaussian();
        double film = coated ? COAT_MM + 0.012 * random.nextGaussian() : 0;
        double coatedWidth = width + 2 * film;
        double coatedThickness = thickness + 2 * film;
        double strength = material
                * (1 + orientation.scatter * random.nextGaussian())
                * (shoulder ? 0.93 : bubble ? 0.90 : 1);
        double peak = strength * coatedWidth * coatedThickness;
        double mass = (width * thickness * 1.24
                        + (coatedWidth * coatedThickness - width * thickness) * 1.1)
                * 0.135;
        String curve = "curves/" + code + ".csv";
        file(curve, curve(orientation, peak));
        return String.join(
                ",",
                code,
                coated ? "coated" : "plain",
                orientation.word(),
                "R" + (orientation == Orientation.FLAT ? run : run + 4),
                coated ? "M1" : "",
                caliper(width),
                caliper(width),
                caliper(thickness),
                caliper(thickness),
                caliper(coatedWidth),
                caliper(coatedWidth),
                caliper(coatedWidth),
                caliper(coatedThickness),
                caliper(coatedThickness),
                caliper(coatedThickness),
                figures(mass, 2),
                shoulder ? "shoulder" : "gauge",
                curve);
    }

    /** A caliper sees ridges here and there, and shows hundredths. */
    private String caliper(double length) {
        return figures(length + 0.012 * random.nextGaussian(), 2);
    }

    private List<String> curve(Orientation orientation, double peak) {
        List<String> rows = new ArrayList<>();
        rows.add("time_s,displacement_mm,force_N");
        double slack = 0.06 + 0.08 * random.nextDouble();
        double strainAtPeak = orientation.strainAtPeak * (1 + 0.03 * random.nextGaussian());
        double travelAtPeak = travel(strainAtPeak, strainAtPeak, orientation, peak, slack);
        int row = 0;
        int after = 0;
        while (after < 12) {
            double time = row * SAMPLE_S;
            double travel = orientation.crossheadMmPerS * time;
            boolean broken = travel > travelAtPeak;
            double force = broken
                    ? 0
                    : force(
                            strainAt(travel, strainAtPeak, orientation, peak, slack),
                            strainAtPeak,
                            orientation,
                            peak);
            rows.add(figures(time, 1)
                    + ","
                    + figures(travel, 3)
                    + ","
                    + figures(force + 0.5 * random.nextGaussian(), 1));
            after += broken ? 1 : 0;
            row++;
        }
        return rows;
    }

    private static double force(
            double strain, double strainAtPeak, Orientation orientation, double peak) {
        return peak * (1 - StrictMath.pow(1 - strain / strainAtPeak, orientation.bend));
    }

    /** Slack is pulled out first, then the bar stretches while frame and grips give. */
    private static double travel(
            double strain,
            double strainAtPeak,
            Orientation orientation,
            double peak,
            double slack) {
        double force = force(strain, strainAtPeak, orientation, peak);
        return slack * (1 - StrictMath.exp(-force / 40))
                + GRIP_DISTANCE_MM * strain
                + COMPLIANCE_MM_PER_N * force;
    }

    private static double strainAt(
            double travel,
            double strainAtPeak,
            Orientation orientation,
            double peak,
            double slack) {
        double low = 0;
        double high = strainAtPeak;
        for (int step = 0; step < 60; step++) {
            double middle = (low + high) / 2;
            boolean below = travel(middle, strainAtPeak, orientation, peak, slack) < travel;
            low = below ? middle : low;
            high = below ? high : middle;
        }
        return low;
    }

    private void blows() {
        List<String> rows = new ArrayList<>();
        rows.add("specimen,group,print_run,mix,thickness_before_mm,remaining_width_before_mm,"
                + "thickness_mm,remaining_width_mm,specimen_mass_g,rise_angle_deg,break_type");
        for (int run = 1; run <= 2; run++) {
            double runShift = 1 + 0.02 * random.nextGaussian();
            for (int bar = 1; bar <= 12; bar++) {
                boolean coated = bar % 2 == 0;
                int number = (run - 1) * 6 + (bar + 1) / 2;
                double thickness = 4.06 + 0.02 * random.nextGaussian();
                double width = 10.05 + 0.03 * random.nextGaussian();
                double film = coated ? COAT_MM + 0.012 * random.nextGaussian() : 0;
                double energy =
                        0.68 * runShift * (coated ? 1.02 : 1) * (1 + 0.055 * random.nextGaussian());
                double mass = 80
                        * (thickness * width * 1.24e-3
                                + ((thickness + 2 * film) * (width + 2 * film) - thickness * width)
                                        * 1.1e-3);
                rows.add(String.join(
                        ",",
                        (coated ? "IC" : "IP") + number,
                        coated ? "coated" : "plain",
                        "R" + (run + 8),
                        coated ? "M1" : "",
                        caliper(thickness),
                        caliper(width),
                        caliper(thickness + 2 * film),
                        caliper(width + 2 * film),
                        figures(mass, 2),
                        figures(Math.rint(2 * rise(energy)) / 2, 1),
                        "C"));
            }
        }
        file("impact.csv", rows);
    }

    /** The angle to which the hammer rises, its own losses taken off as the swing is long. */
    private static double rise(double energy) {
        double fall = StrictMath.cos(StrictMath.toRadians(RELEASE_DEG));
        double loss = HAMMER_NM * (StrictMath.cos(StrictMath.toRadians(FREE_RISE_DEG)) - fall);
        double rise = 90;
        for (int step = 0; step < 20; step++) {
            double swing = (RELEASE_DEG + rise) / (RELEASE_DEG + FREE_RISE_DEG);
            rise = StrictMath.toDegrees(
                    StrictMath.acos(fall + (energy + loss * swing) / HAMMER_NM));
        }
        return rise;
    }

    private void cups() {
        double[] looks = {0, 0.5, 1, 2, 4, 8, 12, 24, 36, 48};
        List<String> rows = new ArrayList<>();
        rows.add("specimen,group,print_run,mix,wall_mm,dry_until_h,wet_at_h");
        for (int cup = 1; cup <= 16; cup++) {
            boolean coated = cup % 2 == 0;
            double leaksAt = coated
                    ? Double.POSITIVE_INFINITY
                    : 9 * StrictMath.pow(-StrictMath.log(1 - random.nextDouble()), 1 / 1.2);
            int look = 1;
            while (look < looks.length && looks[look] < leaksAt) {
                look++;
            }
            rows.add(String.join(
                    ",",
                    (coated ? "WC" : "WP") + (cup + 1) / 2,
                    coated ? "coated" : "plain",
                    "R" + (cup <= 8 ? 11 : 12),
                    coated ? "M1" : "",
                    caliper(coated ? 1.2 + 2 * COAT_MM : 1.2),
                    figures(looks[look - 1], 1),
                    look < looks.length ? figures(looks[look], 1) : ""));
        }
        file("cups.csv", rows);
    }

    private void file(String name, List<String> rows) {
        files.put(name, INVENTED + "\n" + String.join("\n", rows) + "\n");
    }

    private static String figures(double value, int decimals) {
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
        return text.matches("-0[.0]*") ? text.substring(1) : text;
    }
}
