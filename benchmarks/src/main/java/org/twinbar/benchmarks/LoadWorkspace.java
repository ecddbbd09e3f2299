package org.twinbar.benchmarks;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.UUID;
import org.twinbar.method.Methods;
import org.twinbar.study.Act;
import org.twinbar.study.TypedReading;
import org.twinbar.study.Workspace;
import org.twinbar.study.bench.CalibrationTable;
import org.twinbar.study.bench.InstrumentSheet;
import org.twinbar.study.bench.KeptInstrument;
import org.twinbar.study.file.CalibrationSheet;
import org.twinbar.study.file.StudyFile;
import org.twinbar.study.judged.StudyName;
import org.twinbar.study.table.Handed;
import org.twinbar.study.table.Upload;

/**
 * A workspace as a club's bench may fill it in years: 200 studies of 100 specimens, 5,000 of them
 * with a curve, and some whose readings were typed one by one. All of it is invented, from a seed.
 */
final class LoadWorkspace {

    static final int STUDIES = 200;
    static final int SPECIMENS = 100;
    private static final int WITH_CURVES = 50;
    private static final int TYPED = 20;
    private static final int ROWS = 1000;
    private static final long SEED = 20260607;
    private static final String WHO = "the club";

    private static final byte[] JPEG = {(byte) 0xff, (byte) 0xd8, (byte) 0xff, (byte) 0xd9};

    private final Random random = new Random(SEED);
    private final Workspace workspace;

    private LoadWorkspace(Workspace workspace) {
        this.workspace = workspace;
    }

    static Workspace open(Path folder) {
        return Workspace.open(folder, Methods.builtIn(), Clock.systemDefaultZone(), "load run");
    }

    /** Fills a workspace as far as it isn't filled; says what it does on standard error. */
    static void fill(Workspace workspace) {
        LoadWorkspace load = new LoadWorkspace(workspace);
        load.instruments();
        for (int number = workspace.studies().size(); number < STUDIES; number++) {
            load.random.setSeed(SEED + number);
            if (number % 20 == 0) {
                System.err.println("made " + number + " of " + STUDIES + " studies");
            }
            load.study(number);
        }
    }

    /** Tells what a study of the workspace is, by its number. */
    static boolean isTyped(int number) {
        return number >= WITH_CURVES && number < WITH_CURVES + TYPED;
    }

    static boolean hasCurves(int number) {
        return number < WITH_CURVES;
    }

    static String code(int specimen) {
        return "S" + (SPECIMENS + specimen);
    }

    private void instruments() {
        for (int number = workspace.instruments().all().size(); number < 12; number++) {
            KeptInstrument added = workspace
                    .instruments()
                    .add(
                            Act.by(WHO),
                            new InstrumentSheet(
                                    "Load cell " + number, "load cell", "", "", "", "", ""));
            StringBuilder pairs = new StringBuilder();
            for (int step = 1; step <= 6; step++) {
                pairs.append(100 * step)
                        .append(' ')
                        .append(number(100.3 * step + random.nextDouble(), 2))
                        .append('\n');
            }
            workspace
                    .instruments()
                    .calibrate(
                            Act.by(WHO),
                            added,
                            new CalibrationSheet(LocalDate.of(2026, 5, 1), "masses", ""),
                            CalibrationTable.typed(pairs.toString(), added.unit()));
        }
    }

    private void study(int number) {
        List<Upload> files = new ArrayList<>();
        files.add(upload("bars.csv", table(number, files)));
        StudyFile file = StudyFile.parse("load", """
                study = "study-%s"
                question = "Does coat %s make fittings stronger?"
                invented = true
                [[test]]
                method = "tensile"
                things = "bars"
                specimens = "bars.csv"
                set = { grip_distance = "65 mm" }
                [[claim]]
                words = "Coat %s carries at least 10 %% more"
                said_by = "its leaflet"
                [[claim.question]]
                name = "load that a flat bar carries"
                method = "tensile"
                property = "peak_force"
                where = { orientation = "flat" }
                control = "plain"
                treated = "coated"
                expect = "higher"
                claimed = "10%%"
                [[claim.question]]
                name = "load that an upright bar carries"
                method = "tensile"
                property = "peak_force"
                where = { orientation = "upright" }
                control = "plain"
                treated = "coated"
                expect = "higher"
                claimed = "10%%"
                """.formatted(number, number, number));
        StudyName study = workspace.importStudy(Act.by(WHO), file, Handed.among(files));
        if (isTyped(number)) {
            for (int specimen = 0; specimen < SPECIMENS; specimen++) {
                String code = code(specimen);
                type(study, code, "width_mm", number(10 + 0.02 * random.nextGaussian(), 2));
                type(study, code, "thickness_mm", number(4 + random.nextDouble() / 50, 2));
                type(study, code, "peak_force_N", number(strongest(specimen), 0));
            }
        }
        workspace
                .typing()
                .photo(
                        Act.by(WHO),
                        study,
                        "tensile",
                        code(0),
                        Upload.of("break.jpg", JPEG),
                        Optional.empty());
    }

    private void type(StudyName study, String code, String column, String text) {
        workspace
                .typing()
                .enter(
                        new Act(UUID.randomUUID(), WHO),
                        study,
                        new TypedReading(
                                "tensile",
                                code,
                                column,
                                text,
                                Optional.empty(),
                                Optional.empty(),
                                TypedReading.Doubt.CONFIRMED,
                                Optional.empty()));
    }

    private String table(int number, List<Upload> files) {
        StringBuilder table = new StringBuilder("specimen,group,orientation,print_run,width_mm,"
                + "thickness_mm,peak_force_N" + (hasCurves(number) ? ",curve_file\n" : "\n"));
        for (int specimen = 0; specimen < SPECIMENS; specimen++) {
            table.append("%s,%s,%s,R%s,"
                    .formatted(
                            code(specimen),
                            isCoated(specimen) ? "coated" : "plain",
                            specimen < SPECIMENS / 2 ? "flat" : "upright",
                            specimen % 8 / 2));
            if (isTyped(number)) {
                table.append(",,\n");
            } else if (hasCurves(number)) {
                table.append("10.01,4.02,,%s.csv\n".formatted(code(specimen)));
                files.add(upload(code(specimen) + ".csv", curve(strongest(specimen))));
            } else {
                table.append("10.01,4.02,%s\n".formatted(number(strongest(specimen), 1)));
            }
        }
        return table.toString();
    }

    private static boolean isCoated(int specimen) {
        return specimen % 2 == 1;
    }

    private double strongest(int specimen) {
        double plain = specimen < SPECIMENS / 2 ? 1200 : 700;
        return plain * (isCoated(specimen) ? 1.1 : 1) * (1 + 0.04 * random.nextGaussian());
    }

    /** An invented pull: it bends off towards its greatest force, and breaks near the end. */
    private String curve(double strongest) {
        StringBuilder text = new StringBuilder("time_s,force_N,displacement_mm\n");
        for (int row = 0; row < ROWS; row++) {
            double displacement = 4.0 * row / ROWS;
            double held = displacement > 3.9 ? 0.1 : 1;
            double force = held * strongest * (1 - StrictMath.exp(-1.3 * displacement))
                    + random.nextGaussian();
            text.append(number(row / 100.0, 2))
                    .append(',')
                    .append(number(force, 2))
                    .append(',')
                    .append(number(displacement, 4))
                    .append('\n');
        }
        return text.toString();
    }

    private static String number(double value, int digits) {
        return BigDecimal.valueOf(value)
                .setScale(digits, RoundingMode.HALF_EVEN)
                .toPlainString();
    }

    private static Upload upload(String name, String text) {
        return Upload.of(name, text.getBytes(StandardCharsets.UTF_8));
    }
}
