package org.twinbar.study;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.twinbar.decision.LeftOut;
import org.twinbar.method.Methods;
import org.twinbar.method.Property;
import org.twinbar.method.Yield;
import org.twinbar.study.NumbersAsked.Wish;
import org.twinbar.study.bench.CalibrationTable;
import org.twinbar.study.bench.InstrumentSheet;
import org.twinbar.study.bench.KeptInstrument;
import org.twinbar.study.calculation.Progress;
import org.twinbar.study.file.CalibrationSheet;
import org.twinbar.study.file.StudyFile;
import org.twinbar.study.file.TestSheet;
import org.twinbar.study.judged.JudgedSpecimen;
import org.twinbar.study.judged.JudgedStudy;
import org.twinbar.study.judged.StudyName;
import org.twinbar.study.table.Handed;
import org.twinbar.study.table.Upload;

/** What is kept in memory is given up as soon as anything that it came from has changed. */
class JudgementsTest {

    private static final Clock NOON =
            Clock.fixed(Instant.parse("2026-05-04T10:00:00Z"), ZoneId.of("Europe/Rome"));
    private static final String TABLE = "specimen,group,area_mm2,peak_force_N\n"
            + "P1,plain,40,\nP2,plain,40,1200\nC1,coated,40,1400\nC2,coated,40,1410\n";

    private static final Map<Wish, String> OTHER = Map.ofEntries(
            Map.entry(Wish.METHOD, "flexure"),
            Map.entry(Wish.PROPERTY, "strength"),
            Map.entry(Wish.EFFECT, "level"),
            Map.entry(Wish.SCATTER, "7%"),
            Map.entry(Wish.EXPECT, "lower"),
            Map.entry(Wish.EXPECTED, "20%"),
            Map.entry(Wish.WORTH, "5%"),
            Map.entry(Wish.CONTROL_SHARE, "30%"),
            Map.entry(Wish.ABOVE, "40%"),
            Map.entry(Wish.OF, "95%"),
            Map.entry(Wish.POWER, "90%"),
            Map.entry(Wish.RESOLUTION, "20%"),
            Map.entry(Wish.PER_GROUP, "7"),
            Map.entry(Wish.GROUPS, "3"),
            Map.entry(Wish.COATED, "2"),
            Map.entry(Wish.FILAMENT, "3 g"),
            Map.entry(Wish.RESIN, "1 g"),
            Map.entry(Wish.PRINT_TIME, "2 h"),
            Map.entry(Wish.HAND_TIME, "1 h"),
            Map.entry(Wish.FILAMENT_PRICE, "25"),
            Map.entry(Wish.RESIN_PRICE, "80"));

    @TempDir
    Path folder;

    private Workspace workspace;
    private StudyName study;

    @BeforeEach
    void open() {
        workspace = open(folder);
        workspace
                .instruments()
                .add(
                        Act.by("the club"),
                        new InstrumentSheet("Cell A", "load cell", "", "", "", "", ""));
        study = study("cleats");
    }

    private static Workspace open(Path folder) {
        return Workspace.open(folder, Methods.builtIn(), NOON, "Twinbar test");
    }

    private StudyName study(String name) {
        StudyName made = workspace.create(
                Act.by("the club"),
                new StudyFile.Head(name, "Are they stronger?", "", JudgedStudy.Origin.MEASURED));
        workspace.addTest(
                Act.by("the club"),
                made,
                new StudyFile.Test(
                        TestSheet.of("tensile")
                                .withInstruments(Map.of("load cell", "Cell A"))
                                .on(LocalDate.of(2026, 5, 4)),
                        "cleats.csv",
                        Optional.empty()),
                Handed.among(List.of(Upload.of("cleats.csv", TABLE.getBytes(UTF_8)))));
        return made;
    }

    @AfterEach
    void close() {
        workspace.close();
    }

    @Test
    void judgesOnceWhileNothingChanges() {
        JudgedStudy first = judge();
        study("fairleads");
        assertThat(judge()).isSameAs(first);
    }

    @Test
    void seesATypedReadingAtOnce() {
        assertThat(force("P1")).isInstanceOf(Yield.Missing.class);
        type(workspace, "1180", Optional.empty());
        assertThat(force("P1"))
                .isInstanceOfSatisfying(
                        Yield.Value.class, it -> assertThat(it.value()).isEqualTo(1180));
        assertThat(text(workspace)).isEqualTo("1180");
    }

    @Test
    void seesASpecimenThatWasLeftOutAtOnce() {
        judge();
        workspace.leaveOut(
                Act.by("the club"),
                study,
                "tensile",
                "P2",
                LeftOut.Sight.AFTER_VALUE_WAS_SEEN,
                "it slipped");
        assertThat(specimen("P2").counts()).isFalse();
    }

    @Test
    void seesACalibrationOfAnInstrumentThatItNames() {
        judge();
        KeptInstrument cell = workspace.instruments().get("Cell A");
        Upload pairs = CalibrationTable.typed("0 0\n500 505\n1000 1010\n1500 1515", cell.unit());
        workspace
                .instruments()
                .calibrate(
                        Act.by("the club"),
                        cell,
                        new CalibrationSheet(LocalDate.of(2026, 5, 1), "masses", ""),
                        pairs);
        assertThat(force("P2"))
                .isInstanceOfSatisfying(
                        Yield.Value.class, it -> assertThat(it.value()).isLessThan(1195));
        assertThat(workspace.instruments().get("Cell A").calibrations()).hasSize(1);
    }

    @Test
    void seesWhatAnotherWindowEntered() {
        judge();
        assertThat(text(workspace)).isEmpty();
        try (Workspace other = open(folder)) {
            type(other, "1180", Optional.empty());
            assertThat(text(workspace)).isEqualTo("1180");
            assertThat(force("P1")).isInstanceOf(Yield.Value.class);
            Optional<UUID> seen = workspace
                    .typing()
                    .test(study, "tensile")
                    .specimen("P1")
                    .orElseThrow()
                    .cells()
                    .get("peak_force_N")
                    .entry();
            type(workspace, "1185", seen);
            assertThat(text(other)).isEqualTo("1185");
        }
    }

    @Test
    void seesWhatAnotherProcessEntered() throws IOException, InterruptedException {
        JudgedStudy before = judge();
        int studies = workspace.studies().size();
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        Other.class.getName(),
                        folder.toString())
                .inheritIO()
                .start();
        assertThat(process.waitFor()).isZero();
        assertThat(judge()).isNotSameAs(before);
        assertThat(force("P1")).isInstanceOf(Yield.Value.class);
        assertThat(workspace.studies()).hasSize(studies + 1);
    }

    /** A program of its own that types a reading and makes a study. */
    static final class Other {
        private Other() {}

        public static void main(String[] arguments) {
            JudgementsTest here = new JudgementsTest();
            try (Workspace workspace = open(Path.of(arguments[0]))) {
                here.workspace = workspace;
                here.study = workspace.study("cleats");
                here.type(workspace, "1180", Optional.empty());
                here.study("bailers");
            }
        }
    }

    @Test
    void poolsEarlierScatterAnewWhenAReadingCame() {
        Property strength = Methods.builtIn()
                .named("tensile")
                .orElseThrow()
                .description()
                .property("peak_force")
                .orElseThrow();
        assertThat(workspace.plans().earlierScatter("tensile", strength))
                .hasValueSatisfying(it -> assertThat(it.df()).isEqualTo(1));
        type(workspace, "1180", Optional.empty());
        assertThat(workspace.plans().earlierScatter("tensile", strength))
                .hasValueSatisfying(it -> assertThat(it.df()).isEqualTo(2));
    }

    /** The chance that was reckoned for the scatter before would still be there. */
    @Test
    void reckonsNumbersAnewWhenAReadingChangedTheScatter() {
        NumbersAsked asked = NumbersAsked.nothing()
                .with(Wish.METHOD, "tensile")
                .with(Wish.PROPERTY, "peak_force")
                .with(Wish.EXPECTED, "15%");
        NumbersTold before = workspace.plans().numbers(asked);
        assertThat(workspace.plans().numbers(asked)).isEqualTo(before);
        type(workspace, "1180", Optional.empty());
        NumbersTold after = workspace.plans().numbers(asked);
        assertThat(after.numbers().rows()).isNotEqualTo(before.numbers().rows());
        assertThat(after).isEqualTo(afresh(asked));
    }

    @ParameterizedTest
    @EnumSource(value = Wish.class, mode = EnumSource.Mode.EXCLUDE, names = "SEEN")
    void reckonsNumbersAnewWhenTheQuestionChanged(Wish wish) {
        NumbersAsked asked = NumbersAsked.nothing()
                .with(Wish.METHOD, "tensile")
                .with(Wish.PROPERTY, "peak_force")
                .with(Wish.SCATTER, "6%")
                .with(Wish.EXPECTED, "15%");
        asked = switch (wish) {
            case CONTROL_SHARE ->
                asked.with(Wish.EFFECT, "share")
                        .with(Wish.EXPECTED, "50%")
                        .with(Wish.CONTROL_SHARE, "20%");
            case EFFECT -> asked.with(Wish.EFFECT, "ratio").with(Wish.ABOVE, "30%");
            case ABOVE, OF -> asked.with(Wish.EFFECT, "level").with(Wish.ABOVE, "30%");
            case FILAMENT_PRICE -> asked.with(Wish.FILAMENT, "3 g");
            case RESIN_PRICE -> asked.with(Wish.RESIN, "1 g");
            case COATED -> asked.with(Wish.RESIN, "1 g").with(Wish.GROUPS, "3");
            case METHOD -> asked.with(Wish.PROPERTY, "").with(Wish.SCATTER, "");
            default -> asked;
        };
        NumbersTold before = workspace.plans().numbers(asked);
        NumbersAsked other = asked.with(wish, OTHER.get(wish));
        NumbersTold after = workspace.plans().numbers(other);
        assertThat(after).isEqualTo(afresh(other));
        assertThat(after).isNotEqualTo(before);
    }

    /** Rates take too long to reckon here. */
    @Test
    void tellsRatesSeenToTheEndFromOthers() {
        NumbersAsked asked = NumbersAsked.nothing().with(Wish.EFFECT, "rate");
        assertThat(asked.with(Wish.SEEN, "60%").ofTheAim()).isNotEqualTo(asked.ofTheAim());
    }

    private NumbersTold afresh(NumbersAsked asked) {
        return new Plans(workspace, new Reckonings()).numbers(asked);
    }

    private JudgedStudy judge() {
        return workspace.judge(study, Progress.SILENT);
    }

    private JudgedSpecimen specimen(String code) {
        return judge().specimens().stream()
                .filter(it -> it.code().equals(code))
                .findFirst()
                .orElseThrow();
    }

    private Yield force(String code) {
        return specimen(code).result().yields().entrySet().stream()
                .filter(it -> it.getKey().name().equals("peak_force"))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElseThrow();
    }

    private String text(Workspace in) {
        return in.typing()
                .test(study, "tensile")
                .specimen("P1")
                .orElseThrow()
                .cells()
                .get("peak_force_N")
                .text();
    }

    private void type(Workspace in, String text, Optional<UUID> seen) {
        Typed typed = in.typing()
                .enter(
                        new Act(UUID.randomUUID(), "the club"),
                        study,
                        new TypedReading(
                                "tensile",
                                "P1",
                                "peak_force_N",
                                text,
                                seen,
                                seen.map(it -> "read again"),
                                TypedReading.Doubt.CONFIRMED,
                                Optional.empty()));
        assertThat(typed).isInstanceOf(Typed.Saved.class);
    }
}
