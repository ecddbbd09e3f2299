package org.twinbar.study;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.twinbar.decision.LeftOut;
import org.twinbar.exchange.InputException;
import org.twinbar.method.Methods;
import org.twinbar.method.Yield;
import org.twinbar.study.calculation.Progress;
import org.twinbar.study.file.StudyFile;
import org.twinbar.study.file.TestSheet;
import org.twinbar.study.judged.Change;
import org.twinbar.study.judged.JudgedSpecimen;
import org.twinbar.study.judged.JudgedStudy;
import org.twinbar.study.judged.Photo;
import org.twinbar.study.judged.Reading;
import org.twinbar.study.judged.StudyName;
import org.twinbar.study.table.Handed;
import org.twinbar.study.table.Upload;

class TypingTest {

    private static final Clock NOON =
            Clock.fixed(Instant.parse("2026-05-04T10:00:00Z"), ZoneId.of("Europe/Rome"));
    private static final String TABLE = "specimen,group,width_1_mm,width_2_mm,thickness_mm,"
            + "peak_force_N,broke_at\nP1,plain,,,,,\nP2,plain,,,,,\nC1,coated,,,,,\nC2,coated,,,,,\n";

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
        workspace.addTest(
                Act.by("the club"),
                study,
                new StudyFile.Test(TestSheet.of("tensile"), "cleats.csv", Optional.empty()),
                Handed.among(List.of(Upload.of("cleats.csv", TABLE.getBytes(UTF_8)))));
    }

    @AfterEach
    void close() {
        workspace.close();
    }

    @Test
    void calculatesASpecimenFromWhatWasTyped() {
        assertThat(type("P1", "width_1_mm", "9,98")).isInstanceOf(Typed.Saved.class);
        assertThat(strength("P1")).isInstanceOf(Yield.Missing.class);
        type("P1", "width_2_mm", "1.002 cm");
        type("P1", "thickness_mm", "4");
        type("P1", "peak_force_N", "2,0 kN");
        // By hand: 2000 N over 10.00 mm by 4 mm.
        assertThat(strength("P1"))
                .isInstanceOfSatisfying(
                        Yield.Value.class,
                        value -> assertThat(value.value()).isCloseTo(50, within(1e-12)));
        JudgedSpecimen judged = judge().specimensOf("tensile").get(0);
        assertThat(judged.readings())
                .extracting(Reading::text)
                .containsExactly("9,98", "1.002 cm", "4", "2,0 kN");
        assertThat(judged.readings().get(0).typed())
                .hasValueSatisfying(typed -> assertThat(typed.who()).isEqualTo("Ada"));
        assertThat(judge().history()).as("filling a blank corrects nothing").isEmpty();
    }

    @Test
    void takesAClaimBeforeAnythingIsRead() {
        workspace.addClaim(
                Act.by("the club"),
                study,
                StudyFile.parse("s.toml", """
                        [[claim]]
                        words = "10 % stronger"
                        [[claim.question]]
                        name = "strength"
                        method = "tensile"
                        property = "strength"
                        control = "plain"
                        claimed = "10%"
                        """).claims().get(0));
        assertThat(judge().claims()).hasSize(1);
    }

    @Test
    void tellsWhatIsDoneAndWhatIsLeft() {
        assertThat(test().progress()).isEqualTo("0 of 4 done, 4 to go");
        for (TypedTest.Field field : test().fields()) {
            type("P1", field.header(), "-");
        }
        workspace.leaveOut(
                Act.by("Ada"),
                study,
                "tensile",
                "P2",
                LeftOut.Sight.BEFORE_VALUE_WAS_SEEN,
                "it fell");
        assertThat(test().progress()).isEqualTo("2 of 4 done, 2 to go");
        assertThat(strength("P1")).isInstanceOf(Yield.Missing.class);
    }

    @Test
    void asksWhyBeforeItReplacesAReading() {
        UUID first = entry(type("P1", "thickness_mm", "4.01"));
        assertThat(enter(reading("P1", "thickness_mm", "4.10", Optional.of(first))))
                .isEqualTo(new Typed.WhyAsked("4.01"));
        assertThat(enter(because(
                        reading("P1", "thickness_mm", "4.10", Optional.of(first)), "a slip")))
                .isInstanceOf(Typed.Saved.class);
        assertThat(cell("P1", "thickness_mm").text()).isEqualTo("4.10");
        assertThat(judge().history()).singleElement().satisfies(change -> {
            assertThat(change.what()).isEqualTo("thickness_mm of P1: 4.01 → 4.10");
            assertThat(change.why()).isEqualTo("a slip");
        });
    }

    @Test
    void undoesAndUndoesThat() {
        UUID first = entry(type("P1", "thickness_mm", "4.01"));
        UUID undone = entry(workspace
                .typing()
                .undo(Act.by("Ada"), study, "tensile", "P1", "thickness_mm", first));
        assertThat(cell("P1", "thickness_mm").isBlank()).isTrue();
        assertThat(strength("P1")).isInstanceOf(Yield.Missing.class);
        workspace.typing().undo(Act.by("Ada"), study, "tensile", "P1", "thickness_mm", undone);
        assertThat(cell("P1", "thickness_mm").text()).isEqualTo("4.01");
        assertThat(judge().history())
                .extracting(Change::why)
                .containsExactly(Typing.UNDO, Typing.UNDO);
        assertThatThrownBy(() -> workspace
                        .typing()
                        .undo(Act.by("Ada"), study, "tensile", "P2", "thickness_mm", first))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("nothing to undo at thickness_mm of P2");
    }

    @Test
    void showsBothValuesWhereTwoWindowsTypedOne() {
        type("P1", "thickness_mm", "4.01");
        Typed second = type("P1", "thickness_mm", "4.05");
        assertThat(second).isInstanceOfSatisfying(Typed.Conflict.class, conflict -> {
            assertThat(conflict.theirs()).isEqualTo("4.01");
            assertThat(conflict.who()).isEqualTo("Ada");
            assertThat(enter(because(
                            reading("P1", "thickness_mm", "4.05", conflict.entry()), "read again")))
                    .isInstanceOf(Typed.Saved.class);
        });
        assertThat(cell("P1", "thickness_mm").text()).isEqualTo("4.05");
        assertThat(type("P1", "thickness_mm", "4.05"))
                .as("the same value is no conflict")
                .isInstanceOf(Typed.Saved.class);
    }

    @Test
    void writesWhatIsSentTwiceOnce() {
        Act act = Act.by("Ada");
        int before = workspace.entries(study);
        TypedReading reading = reading("P1", "thickness_mm", "4.01", Optional.empty());
        Typed once = workspace.typing().enter(act, study, reading);
        assertThat(workspace.typing().enter(act, study, reading)).isEqualTo(once);
        assertThat(workspace.entries(study)).isEqualTo(before + 1);
        assertThat(entry(once)).isEqualTo(Typing.entryOf(act.id()));
    }

    @Test
    void asksOnceAboutWhatIsUnusual() {
        assertThat(type("P1", "thickness_mm", "400"))
                .isInstanceOfSatisfying(
                        Typed.Doubted.class,
                        doubt -> assertThat(doubt.sentence()).contains("400 mm", "it usually is"));
        type("P1", "peak_force_N", "2010");
        type("P2", "peak_force_N", "1990");
        type("C1", "peak_force_N", "2400");
        assertThat(type("C2", "peak_force_N", "241"))
                .isInstanceOfSatisfying(
                        Typed.Doubted.class,
                        doubt -> assertThat(doubt.sentence()).contains("241 N", "1990 to 2400 N"));
        assertThat(enter(confirmed(reading("C2", "peak_force_N", "241", Optional.empty()))))
                .isInstanceOf(Typed.Saved.class);
        assertThat(cell("C2", "peak_force_N").text()).isEqualTo("241");
    }

    @Test
    void refusesWhatCannotBeCalculatedWith() {
        assertRefused("thickness_mm", "thick", "'thick' is not a number");
        assertRefused("thickness_mm", "-4", "Thickness is -4 mm, must be above 0");
        assertRefused("thickness_mm", "4 N", "N is a force");
        assertRefused("broke_at", "anywhere", "must be one of");
        assertRefused("nothing", "4", "no reading 'nothing'");
        assertThatThrownBy(() -> type("P9", "thickness_mm", "4"))
                .hasMessageContaining("no specimen 'P9'");
        assertThat(workspace.entries(study)).isEqualTo(2);
    }

    @Test
    void keepsAPhotoWithTheTimeThatThePhoneSays() {
        byte[] jpeg = {(byte) 0xff, (byte) 0xd8, (byte) 0xff, 1, 2, 3};
        Act act = Act.by("Ada's phone");
        Instant earlier = Instant.parse("2026-05-04T09:30:00Z");
        for (int i = 0; i < 2; i++) {
            workspace
                    .typing()
                    .photo(
                            act,
                            study,
                            "tensile",
                            "P1",
                            Upload.of("break.jpg", jpeg),
                            Optional.of(earlier));
        }
        workspace
                .typing()
                .photo(
                        Act.by("a phone whose clock is wrong"),
                        study,
                        "tensile",
                        "P1",
                        Upload.of("break.jpg", jpeg),
                        Optional.of(Instant.parse("2036-01-01T00:00:00Z")));
        List<Photo> photos = test().specimens().get(0).photos();
        assertThat(photos)
                .extracting(photo -> photo.when().toInstant())
                .containsExactly(earlier, NOON.instant());
        assertThat(workspace.bytes(photos.get(0).file())).isEqualTo(jpeg);
        assertThatThrownBy(() -> workspace
                        .typing()
                        .photo(
                                Act.by("Ada"),
                                study,
                                "tensile",
                                "P1",
                                Upload.of("notes.txt", new byte[] {1, 2}),
                                Optional.empty()))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("notes.txt: is not a photo");
    }

    private void assertRefused(String column, String text, String words) {
        assertThatThrownBy(() -> type("P1", column, text))
                .as(text)
                .isInstanceOf(InputException.class)
                .hasMessageContaining(words);
    }

    private Typed type(String specimen, String column, String text) {
        return enter(reading(specimen, column, text, Optional.empty()));
    }

    private Typed enter(TypedReading reading) {
        return workspace.typing().enter(Act.by("Ada"), study, reading);
    }

    private static TypedReading reading(
            String specimen, String column, String text, Optional<UUID> seen) {
        return new TypedReading(
                "tensile",
                specimen,
                column,
                text,
                seen,
                Optional.empty(),
                TypedReading.Doubt.ASK,
                Optional.empty());
    }

    private static TypedReading because(TypedReading it, String why) {
        return new TypedReading(
                it.method(),
                it.specimen(),
                it.column(),
                it.text(),
                it.seen(),
                Optional.of(why),
                it.doubt(),
                it.noted());
    }

    private static TypedReading confirmed(TypedReading it) {
        return new TypedReading(
                it.method(),
                it.specimen(),
                it.column(),
                it.text(),
                it.seen(),
                it.why(),
                TypedReading.Doubt.CONFIRMED,
                it.noted());
    }

    private static UUID entry(Typed typed) {
        return ((Typed.Saved) typed).entry().orElseThrow();
    }

    private TypedTest test() {
        return workspace.typing().test(study, "tensile");
    }

    private TypedTest.Cell cell(String specimen, String column) {
        return test().specimen(specimen).orElseThrow().cells().get(column);
    }

    private Yield strength(String specimen) {
        return workspace
                .typing()
                .result(study, "tensile", specimen)
                .result()
                .yields()
                .values()
                .iterator()
                .next();
    }

    private JudgedStudy judge() {
        return workspace.judge(study, Progress.SILENT);
    }
}
