package org.twinbar.study;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.twinbar.decision.Comparison;
import org.twinbar.decision.LeftOut;
import org.twinbar.exchange.InputException;
import org.twinbar.method.Methods;
import org.twinbar.planning.Allocation;
import org.twinbar.planning.Canonical;
import org.twinbar.planning.Design;
import org.twinbar.planning.Placed;
import org.twinbar.study.calculation.Progress;
import org.twinbar.study.file.StudyFile;
import org.twinbar.study.file.TestSheet;
import org.twinbar.study.judged.Answer;
import org.twinbar.study.judged.Change;
import org.twinbar.study.judged.Claim;
import org.twinbar.study.judged.JudgedSpecimen;
import org.twinbar.study.judged.JudgedStudy;
import org.twinbar.study.judged.Making;
import org.twinbar.study.judged.Plan;
import org.twinbar.study.judged.Registered;
import org.twinbar.study.judged.Registered.Fate;
import org.twinbar.study.judged.Registered.Measured;
import org.twinbar.study.judged.Registered.Moment;
import org.twinbar.study.judged.Registered.Step;
import org.twinbar.study.judged.StudyName;
import org.twinbar.study.table.Handed;
import org.twinbar.study.table.Upload;
import org.twinbar.treatment.Procedure;
import org.twinbar.treatment.Waiting;

class PlansTest {

    static final String STUDY = """
            study = "cleats"
            question = "Does the coat make cleats stronger?"
            [plan]
            seed = 7
            mixes = 2
            [[plan.group]]
            name = "plain"
            role = "control"
            [[plan.group]]
            name = "coated"
            treatment = "one coat of clear resin"
            together = ["mix"]
            [[plan.series]]
            name = "flat bars"
            method = "tensile"
            shape = "iso-527-1ba"
            per_group = 3
            scatter = "6%"
            scatter_from = "common practice"
            expected = "15%"
            [[claim]]
            words = "15 % stronger"
            [[claim.question]]
            name = "strength"
            method = "tensile"
            property = "strength"
            control = "plain"
            worth = "5%"
            """;

    @TempDir
    Path folder;

    private Ticking clock = new Ticking();
    private Workspace workspace;
    private StudyName study;

    /** Each look at it is a minute later, so that entries have an order in time. */
    private static final class Ticking extends Clock {
        private Instant now = Instant.parse("2026-05-04T10:00:00Z");

        @Override
        public ZoneId getZone() {
            return ZoneId.of("Europe/Rome");
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }

        @Override
        public Instant instant() {
            now = now.plus(Duration.ofMinutes(1));
            return now;
        }
    }

    @BeforeEach
    void open() {
        workspace = Workspace.open(folder, Methods.builtIn(), clock, "Twinbar test");
        study = workspace.importStudy(act(), StudyFile.parse("c.toml", STUDY), Handed.nothing());
    }

    @AfterEach
    void close() {
        workspace.close();
    }

    @Test
    void keepsAPlanThatIsTheSameAfterReopening() {
        Plan before = plan();
        assertThat(before.allocation())
                .isEqualTo(Allocation.of(before.allocation().design(), 7));
        assertThat(before.reasons()).hasSize(1);
        assertThat(before.leavingOut()).isEqualTo(Plan.LeavingOut.USUAL);
        workspace.close();
        workspace = Workspace.open(folder, Methods.builtIn(), clock, "Twinbar test");
        assertThat(plan()).isEqualTo(before);
    }

    @Test
    void hidesGroupsFromWhoeverReadsUntilTheKeyIsOpened() {
        assertThat(workspace.plans().of(study).specimens())
                .hasSize(6)
                .allMatch(each -> each.group().isEmpty());
        assertThat(workspace.plans().forTreating(study).specimens())
                .allMatch(each -> each.group().isPresent());
        workspace.plans().startTest(act(), study, TestSheet.of("tensile"));
        JudgedStudy closed = judge();
        assertThat(closed.specimens()).hasSize(6).allMatch(it -> it.group().equals("key closed"));
        assertThat(closed.specimens())
                .allMatch(it -> !it.factors().containsKey("mix"))
                .allMatch(it -> it.factors().get("print_run").equals("1"));
        assertThat(closed.claims().get(0).answers().get(0))
                .isInstanceOfSatisfying(
                        Answer.Unanswered.class,
                        it -> assertThat(it.reason())
                                .startsWith("The key of the blind plan is closed"));
        assertRefused(
                () -> workspace.plans().openKey(act(), study, Optional.empty()),
                "6 specimens of the plan have no result yet (");
        workspace.plans().openKey(act(), study, Optional.of("to try it out"));
        assertThat(judge().specimens())
                .extracting(JudgedSpecimen::group)
                .containsOnly("plain", "coated");
        assertThat(judge().making().departures())
                .extracting(Change::what)
                .containsExactly("the key was opened while 6 specimens were not tested");
        assertRefused(
                () -> workspace.plans().openKey(act(), study, Optional.empty()),
                "the key is open already");
    }

    @Test
    void writesATableThatSaysNothingOfGroups() {
        String csv = workspace.plans().table(study, TestSheet.of("tensile"));
        assertThat(csv.lines().findFirst().orElseThrow())
                .startsWith("specimen,test_order,kind,orientation,print_run,")
                .contains("width_mm", "peak_force_N", "curve_file")
                .doesNotContain("group", "mix");
        assertThat(csv.lines().skip(1).map(line -> line.split(",")[0]).toList())
                .isEqualTo(plan().allocation().specimens().stream()
                        .map(Placed::code)
                        .toList());
        TestSheet sheet = TestSheet.of("tensile").withSet(Map.of("grip distance", "65 mm"));
        assertThat(workspace.plans().table(study, sheet)).doesNotContain("grip_distance");
        assertRefused(
                () -> workspace.plans().table(study, TestSheet.of("leak")),
                "the plan has no leak test, but tensile");
    }

    @Test
    void sealsThePlanWithItsClaims() {
        workspace.plans().seal(act(), study);
        Making.Seal seal = workspace.plans().of(study).seal().orElseThrow();
        assertThat(seal.sha256()).isEqualTo(Canonical.sealOf(seal.text()));
        assertThat(seal.text())
                .contains("claim\t15 % stronger\n")
                .contains("\"worth\":\"5%\"")
                .contains("leaving out\tbefore\t");
        assertThat(seal.plan()).isEqualTo(plan());
        assertRefused(() -> workspace.plans().seal(act(), study), "the plan is sealed already");
    }

    /** Cure, conditioning and the steps of a treatment decide a result as much as numbers do. */
    @Test
    void sealsHowSpecimensAreTreatedAndHowLongTheyWait() {
        Procedure once = Procedure.sanding(List.of(220));
        workspace.treating().recipe(act(), study, "coated", once);
        Waiting short_ = new Waiting(Duration.ofHours(48), Duration.ofHours(40));
        workspace.treating().waiting(act(), study, short_);
        workspace.plans().seal(act(), study);
        Making.Seal seal = workspace.plans().of(study).seal().orElseThrow();
        assertThat(seal.text())
                .contains(
                        "treatment\tcoated\tsanding\n",
                        "step\tcoated\t",
                        "cure\tPT48H\ncondition\tPT40H\n",
                        "number\tflat bars\tscatter 6% (common practice), 15% expected\t");
        assertThat(seal.sha256()).isEqualTo(Canonical.sealOf(seal.text()));
        assertRefused(
                () -> workspace.treating().recipe(act(), study, "coated", once),
                "needs its reason");
        assertRefused(
                () -> workspace.treating().waiting(act(), study, Waiting.USUAL),
                "needs its reason");
        workspace
                .treating()
                .recipe(act(), study, "coated", once, Optional.of("the fine grit ran out"));
        workspace.treating().waiting(act(), study, short_, Optional.of("said again"));
        workspace.treating().waiting(act(), study, Waiting.USUAL, Optional.of("it stayed soft"));
        assertThat(workspace.plans().of(study).departures())
                .extracting(Change::what, Change::why)
                .containsExactly(
                        tuple(
                                "how coated specimens are treated was changed after the plan was sealed",
                                "the fine grit ran out"),
                        tuple(
                                "specimens now cure for 168 h and are conditioned for 88 h, which was said after the plan was sealed",
                                "it stayed soft"));
    }

    /** However its readings come in: by a table of one's own, with a group that was not planned. */
    @Test
    void neverComparesAPilot() {
        Plan before = plan();
        Design design = before.allocation().design();
        Plan withPilots = new Plan(
                Allocation.of(
                        new Design(
                                design.groups(),
                                List.of(design.series().get(0).withPilots(2)),
                                design.changes(),
                                design.batches()),
                        7),
                Plan.Blinding.OPEN,
                before.leavingOut(),
                before.reasons());
        workspace.plans().keep(act(), study, withPilots, Optional.empty());
        assertThat(workspace.plans().of(study).pilotSpecimens()).hasSize(2);
        assertThat(plan().allocation()).isEqualTo(withPilots.allocation());
        StringBuilder table = new StringBuilder("specimen,area_mm2,peak_force_N\n");
        int force = 1000;
        for (Placed one : withPilots.allocation().specimens()) {
            table.append("%s,40,%s\n".formatted(one.code(), force += 7));
        }
        Comparison without = compared(table.toString(), "without");
        for (Placed one : withPilots.allocation().pilots()) {
            table.append("%s,40,9999\n".formatted(one.code()));
        }
        Comparison with = compared(table.toString(), "with");
        assertThat(with.found()).isEqualTo(without.found());
        assertThat(with.verdict()).isEqualTo(without.verdict());
        assertThat(with.control().orElseThrow().n())
                .isEqualTo(without.control().orElseThrow().n())
                .isEqualTo(3);
    }

    /** The same plan in a study of its own, with readings from a table. */
    private Comparison compared(String table, String name) {
        StudyName own = workspace.importStudy(
                act(),
                StudyFile.parse("c.toml", STUDY.replace("\"cleats\"", '"' + name + '"')),
                Handed.nothing());
        workspace.plans().keep(act(), own, plan(), Optional.empty());
        workspace.addTest(
                act(),
                own,
                new StudyFile.Test(TestSheet.of("tensile"), "t.csv", Optional.empty()),
                Handed.among(List.of(Upload.of("t.csv", table.getBytes(UTF_8)))));
        return workspace.judge(own, Progress.SILENT).compared().get(0).comparison();
    }

    @Test
    void showsWhatDepartedFromASealedPlan() {
        workspace.plans().seal(act(), study);
        Plan sealed = plan();
        Design design = sealed.allocation().design();
        Design more = new Design(
                design.groups(),
                List.of(design.series().get(0).withPerGroup(4)),
                design.changes(),
                design.batches());
        Plan other =
                new Plan(Allocation.of(more, 8), sealed.blinding(), sealed.leavingOut(), List.of());
        assertRefused(
                () -> workspace.plans().keep(act(), study, other, Optional.empty()),
                "the plan is sealed: a change of it needs its reason");
        workspace.plans().keep(act(), study, other, Optional.of("a spool was left"));
        workspace.addClaim(act(), study, new Claim("Stiffer", "", List.of(), Optional.empty()));
        assertThat(workspace.plans().of(study).departures())
                .extracting(Change::what)
                .containsExactly(
                        "flat bars: 4 per group instead of 3",
                        "the claim 'Stiffer' was added after the plan was sealed");
        assertThat(workspace.plans().of(study).departures().get(0).why())
                .isEqualTo("a spool was left");
    }

    @Test
    void refusesThatACodeBecomesAnotherSpecimens() {
        workspace.plans().seal(act(), study);
        Plan sealed = plan();
        List<Placed> turned = new ArrayList<>();
        for (Placed one : sealed.allocation().specimens()) {
            turned.add(new Placed(
                    one.code(),
                    one.group().equals("plain") ? "coated" : "plain",
                    one.series(),
                    one.run(),
                    one.position(),
                    one.mix(),
                    one.load(),
                    one.test()));
        }
        Plan other = new Plan(
                new Allocation(
                        sealed.allocation().design(),
                        7,
                        turned,
                        sealed.allocation().pilots()),
                sealed.blinding(),
                sealed.leavingOut(),
                List.of());
        assertRefused(
                () -> workspace.plans().keep(act(), study, other, Optional.of("why not")),
                "deal the new plan from another seed");
    }

    @Test
    void registersWhatWasDoneAndMeasured() {
        String code = plan().allocation().specimens().get(0).code();
        ZonedDateTime when = ZonedDateTime.parse("2026-05-03T09:00:00+02:00[Europe/Rome]");
        workspace
                .register()
                .done(act(), study, List.of(code), Step.PRINTED, Optional.of(when), "run 1");
        workspace
                .register()
                .measured(act(), study, code, width(10.02, 9.98, 10.03), Optional.empty());
        workspace.register().measured(act(), study, code, mass(Moment.BEFORE, 4.1), no());
        workspace.register().measured(act(), study, code, mass(Moment.AFTER, 4.5), no());
        Register register = workspace.register();
        byte[] jpeg = {(byte) 0xff, (byte) 0xd8, (byte) 0xff};
        register.photo(act(), study, code, Upload.of("a.jpg", jpeg), no(), "seam");
        assertRefused(
                () -> register.photo(
                        act(), study, code, Upload.of("a.txt", "x".getBytes(UTF_8)), no(), ""),
                "a.txt: is not a photo");
        Registered one = workspace.plans().of(study).specimen(code).orElseThrow();
        assertThat(one.done(Step.PRINTED).orElseThrow().when()).isEqualTo(when);
        Measured width = one.measured("width", Moment.BEFORE).orElseThrow();
        assertThat(width.mean()).isEqualTo(10.01, org.assertj.core.api.Assertions.within(1e-12));
        assertThat(width.least()).isEqualTo(9.98);
        assertThat(width.spread()).isEqualTo(0.05, org.assertj.core.api.Assertions.within(1e-12));
        assertThat(one.gained()).as("the gain tells the group").isEmpty();
        Registered whole = workspace.plans().forTreating(study).specimen(code).orElseThrow();
        assertThat(whole.gained())
                .hasValueCloseTo(0.4, org.assertj.core.api.Assertions.within(1e-12));
        assertThat(one.photos()).hasSize(1);
        assertThat(one.fate().kind()).isEqualTo(Fate.Kind.MADE);
        workspace.register().fate(act(), study, code, Fate.Kind.BROKEN, "fell off the bench");
        assertThat(workspace.plans().of(study).specimen(code).orElseThrow().fate())
                .isEqualTo(new Fate(Fate.Kind.BROKEN, "fell off the bench"));
    }

    @Test
    void refusesWhatCannotBeRegistered() {
        String code = plan().allocation().specimens().get(0).code();
        Register register = workspace.register();
        assertRefused(
                () -> register.done(act(), study, List.of("Q999"), Step.PRINTED, no(), ""),
                "the plan has no specimen 'Q999'");
        assertRefused(
                () -> register.measured(act(), study, code, width(-1), no()),
                "the width of '%s' must be above zero, not -1.0 mm".formatted(code));
        register.measured(act(), study, code, width(10), no());
        assertRefused(
                () -> register.measured(act(), study, code, width(9), no()),
                "say why it is another now");
        register.measured(act(), study, code, width(9), Optional.of("misread"));
        assertRefused(
                () -> register.fate(act(), study, code, Fate.Kind.LOST, ""),
                "say why specimen '%s' is lost".formatted(code));
    }

    @Test
    void saysWhereALeftOutSpecimenBreaksTheRule() {
        workspace.plans().seal(act(), study);
        workspace.plans().startTest(act(), study, TestSheet.of("tensile"));
        List<String> codes = plan().allocation().specimens().stream()
                .map(Placed::code)
                .collect(Collectors.toList());
        leaveOut(
                codes.get(0),
                LeftOut.Sight.BEFORE_VALUE_WAS_SEEN,
                "Broken in handling: it slipped");
        leaveOut(
                codes.get(1), LeftOut.Sight.AFTER_VALUE_WAS_SEEN, "Broken in handling: it slipped");
        leaveOut(codes.get(2), LeftOut.Sight.BEFORE_VALUE_WAS_SEEN, "looked weak");
        assertThat(workspace.plans().of(study).departures())
                .extracting(Change::what)
                .containsExactly(
                        codes.get(1)
                                + " was left out after its value was seen, against the plan's rule",
                        codes.get(2)
                                + " was left out for a reason that the plan's rule does not name");
    }

    @Test
    void saysWhereTheOrderOfTestingWasLeft() {
        workspace.plans().seal(act(), study);
        List<String> codes =
                plan().allocation().specimens().stream().map(Placed::code).toList();
        workspace
                .register()
                .done(
                        act(),
                        study,
                        List.of(codes.get(0), codes.get(2), codes.get(1), codes.get(3)),
                        Step.TESTED,
                        no(),
                        "");
        assertThat(workspace.plans().of(study).departures())
                .extracting(Change::what)
                .containsExactly("%s, number 2 in the order, was tested after number 3"
                        .formatted(codes.get(1)));
    }

    @Test
    void refusesAPlanThatProvesNothing() {
        String between = STUDY.replace("mixes = 2", "runs = 2\nchanges = \"between runs\"")
                .replace("cleats", "more cleats");
        assertRefused(
                () -> StudyFile.parse("c.toml", between),
                "c.toml, plan: With 2 print runs a treatment can't be told from the run");
        assertRefused(
                () -> StudyFile.parse("c.toml", STUDY.replace("role = ", "rule = ")),
                "the key 'rule' is none of");
    }

    private static <T> Optional<T> no() {
        return Optional.empty();
    }

    private static Measured width(Double... values) {
        return new Measured("width", Moment.BEFORE, List.of(values));
    }

    private static Measured width(int value) {
        return width((double) value);
    }

    private static Measured mass(Moment moment, double grams) {
        return new Measured(Measured.MASS, moment, List.of(grams));
    }

    private void leaveOut(String code, LeftOut.Sight sight, String why) {
        workspace.leaveOut(act(), study, "tensile", code, sight, why);
    }

    private static Act act() {
        return Act.by("the club");
    }

    private Plan plan() {
        return workspace.plans().of(study).plan().orElseThrow();
    }

    private JudgedStudy judge() {
        return workspace.judge(study, Progress.SILENT);
    }

    private static void assertRefused(
            org.assertj.core.api.ThrowableAssert.ThrowingCallable call, String part) {
        assertThatThrownBy(call).isInstanceOf(InputException.class).hasMessageContaining(part);
    }
}
