package org.twinbar.study;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.twinbar.exchange.InputException;
import org.twinbar.exchange.datapackage.OpenPackage;
import org.twinbar.exchange.datapackage.Zips;
import org.twinbar.instrument.Instrument;
import org.twinbar.method.Methods;
import org.twinbar.method.Property;
import org.twinbar.method.Yield;
import org.twinbar.study.calculation.Progress;
import org.twinbar.study.file.StudyFile;
import org.twinbar.study.file.TestSheet;
import org.twinbar.study.judged.JudgedSpecimen;
import org.twinbar.study.judged.JudgedStudy;
import org.twinbar.study.judged.KeptFile;
import org.twinbar.study.judged.StudyName;
import org.twinbar.study.picture.FilmSheet;
import org.twinbar.study.picture.PictureSheet;
import org.twinbar.study.table.Handed;
import org.twinbar.study.table.Upload;
import org.twinbar.uncertainty.Source;

/** What is measured on pictures and films becomes readings like any other. */
class PicturingTest {

    private static final Clock NOON =
            Clock.fixed(Instant.parse("2026-05-04T10:00:00Z"), ZoneId.of("Europe/Rome"));

    /** 100 mm over 1000 px, known to 1 mm; two bars, 100 px and 110 px wide. */
    private static final String PHOTO = """
            {"file": "cleats.png",
             "scale": {"id": "abcd1234", "distance": "100", "unit": "mm", "known": "1",
                       "looks": [[[100, 700, 1], [1100, 700, 1]]]},
             "figures": [{"figure": "length", "looks": [[[100, 100, 1], [200, 100, 1]]]},
                         {"figure": "length", "looks": [[[100, 300, 1], [210, 300, 1]]]},
                         {"figure": "angle", "looks": [[[3, 0, 1], [0, 0, 1], [0, 4, 1]]]},
                         {"figure": "length", "looks": [[[5, 5, 1], [5, 5, 1]]]},
                         {"figure": "colour", "looks": [[[5, 5, 1]]]}]}
            """;

    private static final String FILM = """
            {"file": "oven.webm",
             "scale": {"id": "beef5678", "distance": "100", "unit": "mm", "known": "0.5",
                       "looks": [[[100, 300, 1], [600, 300, 1]]]},
             "film": {"rate": "25",
                      "clock": [{"frame": 0, "shows": "10:00:00"}, {"frame": 100, "shows": "10:40:00"}],
                      "thermometer": [{"frame": 0, "shows": "20.0"}, {"frame": 100, "shows": "100,0"}],
                      "marks": [{"frame": 60, "what": "last straight"}, {"frame": 65, "what": "first sagging"}],
                      "tips": [%s], "line": []}}
            """;

    private static final String TENSILE = "specimen,group,width_mm,thickness_mm,peak_force_N\n"
            + "P1,plain,,4,2000\nC1,coated,,4,2200\n";
    private static final String OVEN = "specimen,group,arm_mm,width_mm,thickness_mm,tip_mass_g,"
            + "onset_from_C,onset_to_C,curve_file\nO1,plain,80,10,4,50,,,\nO2,coated,80,10,4,50,,,\n";

    @TempDir
    Path folder;

    private Workspace workspace;
    private StudyName study;

    @BeforeEach
    void open() {
        workspace = Workspace.open(folder, Methods.builtIn(), NOON, "Twinbar test");
        study = workspace.create(
                Act.by("the club"),
                new StudyFile.Head(
                        "cleats", "Are coated cleats stronger?", "", JudgedStudy.Origin.MEASURED));
        add("tensile", TENSILE);
        add("oven", OVEN);
    }

    private void add(String method, String table) {
        String name = method + ".csv";
        workspace.addTest(
                Act.by("the club"),
                study,
                new StudyFile.Test(TestSheet.of(method), name, Optional.empty()),
                Handed.among(List.of(Upload.of(name, table.getBytes(UTF_8)))));
    }

    @AfterEach
    void close() {
        workspace.close();
    }

    @Test
    void reckonsLengthsAndAnglesWithTheirUncertainty() {
        PictureSheet sheet = PictureSheet.read(PHOTO);
        PictureSheet.Measured length = sheet.figure(0);
        assertThat(length.value()).isCloseTo(10, within(1e-12));
        // Two steps of a pixel, 0.1 mm each: 0.1 · √(2/12); the scale has 1 % and two steps.
        assertThat(length.how().own()).isCloseTo(0.1 * Math.sqrt(2 / 12.0), within(1e-12));
        assertThat(length.how().share()).isCloseTo(Math.sqrt(1e-4 + 2 / 12.0 / 1e6), within(1e-12));
        assertThat(sheet.figure(2).value()).isEqualTo(90);
        assertThat(sheet.figure(2).how().share()).isZero();
    }

    @Test
    void whatCantBeReckonedKeepsNothingElseFromBeingTold() {
        PictureSheet sheet = PictureSheet.read(PHOTO);
        assertRefused(
                () -> sheet.figure(3), "length: two places lie on one another, must lie apart");
        assertRefused(() -> sheet.figure(4), "'colour' can't be measured on a picture");
        assertThat(sheet.figure(1).value()).isCloseTo(11, within(1e-12));
        assertRefused(() -> PictureSheet.read("[1]"), "did not arrive whole");
        assertRefused(() -> PictureSheet.read("{"), "did not arrive whole");
        assertRefused(() -> PictureSheet.read(" ".repeat(300_000)), "must be 262144 or fewer");
        PictureSheet without = PictureSheet.read(PHOTO.replace("\"100\"", "\"\""));
        assertRefused(without::scale, "type the known distance, in mm");
        PictureSheet wrong = PictureSheet.read(PHOTO.replace("\"100\"", "\"wide\""));
        assertRefused(wrong::scale, "the known distance: 'wide' is not a number");
        PictureSheet none =
                PictureSheet.read(PHOTO.replace("\"looks\": [[[100, 700", "\"were\": [[[100, 700"));
        assertThat(none.scale()).isEmpty();
        assertRefused(() -> none.figure(0), "set the scale first");
    }

    @Test
    void readingsOnOneScaleShareItsErrorAndNoCaliperIsAssumed() {
        keepWidth("P1", 0);
        keepWidth("C1", 1);
        JudgedStudy judged = judge();
        Source gain = source(judged, "P1", "picture scale abcd1234 of cleats.png gain");
        assertThat(gain.reach()).isEqualTo(Source.Reach.SHARED);
        assertThat(source(judged, "C1", "picture scale abcd1234 of cleats.png gain"))
                .isEqualTo(gain);
        // 2000 N over 10 mm by 4 mm; 1 % of the width is 0.5 MPa.
        assertThat(value(judged, "P1")).isCloseTo(50, within(1e-9));
        assertThat(Math.abs(shifts(judged, "P1").get(gain))).isCloseTo(0.5, within(2e-3));
        Source own = source(judged, "P1", "P1 width as given");
        assertThat(Math.abs(shifts(judged, "P1").get(own)))
                .isCloseTo(50 * 0.1 * Math.sqrt(2 / 12.0) / 10, within(1e-3));
        assertThat(specimen(judged, "P1").readings())
                .extracting(reading -> reading.picture().orElse("none"))
                .containsExactly("cleats.png", "none", "none");
        List<Instrument> instruments = judged.methods().get(0).instruments();
        assertThat(instruments)
                .filteredOn(it -> it.name().startsWith("picture scale"))
                .allSatisfy(it -> assertThat(it.origin()).isEqualTo(Instrument.Origin.GIVEN))
                .isNotEmpty();
    }

    @Test
    void typingOverItAndUndoingBringsThePictureBack() {
        UUID first = keepWidth("P1", 0);
        Typed typed = workspace
                .typing()
                .enter(
                        Act.by("Ada"),
                        study,
                        new TypedReading(
                                "tensile",
                                "P1",
                                "width_mm",
                                "9.9",
                                Optional.of(first),
                                Optional.of("read again"),
                                TypedReading.Doubt.CONFIRMED,
                                Optional.empty()));
        assertThat(cell("P1").picture()).isEmpty();
        UUID second = ((Typed.Saved) typed).entry().orElseThrow();
        workspace.typing().undo(Act.by("Ada"), study, "tensile", "P1", "width_mm", second);
        assertThat(cell("P1").text()).isEqualTo("10.00");
        assertThat(cell("P1").picture().orElseThrow().file()).isEqualTo("cleats.png");
    }

    @Test
    void filmTimeBecomesClockTimeAndATemperature() {
        FilmSheet film = film("");
        // Frame 60 of 100 lies at 60 % of forty minutes and of eighty degrees.
        assertThat(film.mark(0).time().seconds()).isCloseTo(36_000 + 1440, within(1e-9));
        assertThat(film.temperature(0).value()).isCloseTo(68, within(1e-9));
        assertThat(film.temperature(1).value()).isCloseTo(72, within(1e-9));
        // A frame is 24 s of the clock, in which it warms by 0.8 °C; the clock adds its own.
        assertThat(film.temperature(0).how().own()).isBetween(0.8 / Math.sqrt(12), 0.3);
        assertThat(film.temperature(0).how().scale()).isEmpty();
        assertRefused(() -> film.elapsed(0), "mark the frame of the start");
    }

    @Test
    void timesAreCountedFromTheStartAndPastMidnight() {
        FilmSheet film = PictureSheet.read(FILM.formatted("")
                        .replace("10:00:00", "23:50:00")
                        .replace("10:40:00", "00:30:00")
                        .replace("last straight", "start"))
                .film()
                .orElseThrow();
        assertThat(film.elapsed(1).value()).isCloseTo(5 * 24, within(1e-9));
    }

    @Test
    void refusesAClockThatTellsNothing() {
        String film = FILM.formatted("");
        assertRefused(
                () -> clock(film.replace(", {\"frame\": 100, \"shows\": \"10:40:00\"}", "")),
                "on one frame alone");
        assertRefused(
                () -> clock(film.replace("\"10:40:00\"", "\"2400 s\"")),
                "must be the same on both");
        assertRefused(() -> clock(film.replace("\"25\"", "\"0\"")), "must be from 0.01 to 100000");
        assertRefused(() -> clock(film.replace("\"25\"", "\"\"")), "type how many frames a second");
        assertRefused(
                () -> clock(film.replace(
                        "\"frame\": 100, \"shows\": \"10", "\"frame\": -1, \"shows\": \"10")),
                "counted from 0");
        assertRefused(() -> clock(film.replace("10:00:00", "soon")), "what the clock shows");
    }

    private static void clock(String film) {
        PictureSheet.read(film).film().orElseThrow().clock();
    }

    @Test
    void aTipFollowedOnAFilmBecomesTheCurveOfItsSpecimen() {
        FilmSheet film = film(tips());
        FilmSheet.Followed followed = film.followed();
        assertThat(followed.rows()).hasSize(21);
        assertThat(followed.rows().get(20).celsius()).isCloseTo(100, within(1e-9));
        // From frame 60 on it sags by 1.5 px a frame, 0.2 mm a pixel.
        assertThat(followed.rows().get(20).deflection()).isCloseTo(12, within(1e-9));
        Typed kept = keep("O1", followed, Optional.empty(), Optional.empty());
        assertThat(kept).isInstanceOf(Typed.Saved.class);
        JudgedSpecimen judged = judge().specimensOf("oven").get(0);
        Yield onset = given(judged, "onset_temperature");
        assertThat(onset).isInstanceOf(Yield.Fitted.class);
        assertThat(judge().methods().get(1).instruments())
                .extracting(Instrument::name)
                .contains("picture scale beef5678 of oven.webm");
        assertThat(keep("O1", followed, Optional.empty(), Optional.empty()))
                .as("another window has not seen it")
                .isInstanceOf(Typed.Conflict.class);
        Optional<UUID> seen = ((Typed.Saved) kept).entry();
        assertThat(keep("O1", followed, seen, Optional.empty())).isInstanceOf(Typed.WhyAsked.class);
        assertThat(keep("O1", followed, seen, Optional.of("measured again")))
                .isInstanceOf(Typed.Saved.class);
    }

    @Test
    void aCurveThatIsSentTwiceIsKeptOnceAndCanBeTakenBack() {
        FilmSheet.Followed followed = film(tips()).followed();
        Act act = Act.by("Ada");
        Picturing.Wanted wanted =
                new Picturing.Wanted(study, "oven", "O1", Optional.empty(), Optional.empty());
        Typed first = workspace.picturing().keep(act, wanted, followed);
        int entries = workspace.entries(study);
        assertThat(workspace.picturing().keep(act, wanted, followed)).isEqualTo(first);
        assertThat(workspace.entries(study)).isEqualTo(entries);
        UUID entry = ((Typed.Saved) first).entry().orElseThrow();
        workspace.typing().undo(Act.by("Ada"), study, "oven", "O1", "curve_file", entry);
        assertThat(workspace
                        .picturing()
                        .room(study, "oven", "O1")
                        .orElseThrow()
                        .now()
                        .text())
                .isEmpty();
    }

    @Test
    void photosPlacesAndFilmCurvesGoAlongInAPackage() {
        keepWidth("P1", 0);
        keepWidth("C1", 1);
        keep("O1", film(tips()).followed(), Optional.empty(), Optional.empty());
        // A camera that counts anew gives another photo the same name.
        photograph("P1", 1);
        photograph("C1", 2);
        JudgedStudy here = judge();
        Path zip = folder.resolve("cleats.zip");
        workspace.packages().write(study, here, Optional.empty(), zip);
        assertThat(Zips.files(zip))
                .hasEntrySatisfying("raw/IMG_1.jpg", it -> assertThat(it).isEqualTo(jpeg(1)))
                .hasEntrySatisfying("raw/IMG_1-2.jpg", it -> assertThat(it).isEqualTo(jpeg(2)));
        for (KeptFile file : here.files()) {
            assertThat(Zips.files(zip).get("raw/" + file.name())).isEqualTo(workspace.bytes(file));
        }
        try (Workspace empty = Workspace.open(
                        folder.resolve("empty"), Methods.builtIn(), NOON, "Twinbar test");
                OpenPackage open = OpenPackage.of(zip)) {
            JudgedStudy there = empty.packages().bring(PackagedStudy.verified(open));
            assertThat(there).usingRecursiveComparison().isEqualTo(here);
            assertThat(there.specimensOf("oven").get(0).curve()).isPresent();
            StudyName brought = empty.study("cleats");
            for (String method : List.of("tensile", "oven")) {
                assertThat(empty.typing().test(brought, method).specimens())
                        .isEqualTo(workspace.typing().test(study, method).specimens());
            }
            assertThat(empty.stills(brought, there))
                    .extracting(Still::code, still -> still.bytes().get())
                    .containsExactlyInAnyOrder(tuple("P1", jpeg(1)), tuple("C1", jpeg(2)));
        }
    }

    private void photograph(String specimen, int last) {
        workspace
                .typing()
                .photo(
                        Act.by("Ada"),
                        study,
                        "tensile",
                        specimen,
                        Upload.of("IMG_1.jpg", jpeg(last)),
                        Optional.empty());
    }

    private static byte[] jpeg(int last) {
        return new byte[] {(byte) 0xff, (byte) 0xd8, (byte) 0xff, '\r', '\n', 0, (byte) last};
    }

    @Test
    void aTestWithoutRoomForCurvesSaysSo() {
        FilmSheet.Followed followed = film(tips()).followed();
        assertRefused(
                () -> workspace
                        .picturing()
                        .keep(
                                Act.by("Ada"),
                                new Picturing.Wanted(
                                        study, "tensile", "P1", Optional.empty(), Optional.empty()),
                                followed),
                "has no column curve_file");
        assertThat(workspace.picturing().room(study, "tensile", "P1")).isEmpty();
    }

    private static FilmSheet film(String tips) {
        return PictureSheet.read(FILM.formatted(tips)).film().orElseThrow();
    }

    private static String tips() {
        StringBuilder tips = new StringBuilder();
        for (int frame = 0; frame <= 100; frame += 5) {
            double y = 120 + 1.5 * Math.max(0, frame - 60);
            tips.append(frame == 0 ? "" : ",")
                    .append("{\"frame\": %s, \"at\": [500, %s, 1]}".formatted(frame, y));
        }
        return tips.toString();
    }

    private Typed keep(
            String specimen,
            FilmSheet.Followed followed,
            Optional<UUID> seen,
            Optional<String> why) {
        return workspace
                .picturing()
                .keep(
                        Act.by("Ada"),
                        new Picturing.Wanted(study, "oven", specimen, seen, why),
                        followed);
    }

    private UUID keepWidth(String specimen, int figure) {
        PictureSheet.Measured measured = PictureSheet.read(PHOTO).figure(figure);
        Typed typed = workspace
                .typing()
                .enter(
                        Act.by("Ada"),
                        study,
                        new TypedReading(
                                "tensile",
                                specimen,
                                "width_mm",
                                figure == 0 ? "10.00" : "11.00",
                                Optional.empty(),
                                Optional.empty(),
                                TypedReading.Doubt.CONFIRMED,
                                Optional.empty(),
                                Optional.of(measured.how())));
        return ((Typed.Saved) typed).entry().orElseThrow();
    }

    private TypedTest.Cell cell(String specimen) {
        return workspace
                .typing()
                .test(study, "tensile")
                .specimen(specimen)
                .orElseThrow()
                .cells()
                .get("width_mm");
    }

    private JudgedStudy judge() {
        return workspace.judge(study, Progress.SILENT);
    }

    private static JudgedSpecimen specimen(JudgedStudy judged, String code) {
        return judged.specimensOf("tensile").stream()
                .filter(it -> it.code().equals(code))
                .findFirst()
                .orElseThrow();
    }

    private static Property property(JudgedSpecimen judged, String name) {
        return judged.result().yields().keySet().stream()
                .filter(it -> it.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static Yield given(JudgedSpecimen judged, String name) {
        return judged.result().yields().get(property(judged, name));
    }

    private static double value(JudgedStudy judged, String code) {
        return ((Yield.Value) given(specimen(judged, code), "strength")).value();
    }

    private static Map<Source, Double> shifts(JudgedStudy judged, String code) {
        JudgedSpecimen one = specimen(judged, code);
        return Objects.requireNonNull(one.result().budgets().get(property(one, "strength")))
                .shifts();
    }

    private static Source source(JudgedStudy judged, String code, String identity) {
        return shifts(judged, code).keySet().stream()
                .filter(it -> it.identity().equals(identity))
                .findFirst()
                .orElseThrow(() -> new AssertionError(
                        identity + " among " + shifts(judged, code).keySet()));
    }

    private static void assertRefused(
            org.assertj.core.api.ThrowableAssert.ThrowingCallable work, String words) {
        assertThatThrownBy(work).isInstanceOf(InputException.class).hasMessageContaining(words);
    }
}
