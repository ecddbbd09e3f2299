package org.twinbar.study;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.twinbar.decision.LeftOut;
import org.twinbar.exchange.InputException;
import org.twinbar.exchange.Spelling;
import org.twinbar.method.Methods;
import org.twinbar.store.Digest;
import org.twinbar.store.Entry;
import org.twinbar.store.Store;
import org.twinbar.store.StoreException;
import org.twinbar.study.calculation.AlikeValues;
import org.twinbar.study.calculation.Progress;
import org.twinbar.study.file.OwnMethods;
import org.twinbar.study.file.StudyFile;
import org.twinbar.study.judged.Claim;
import org.twinbar.study.judged.JudgedStudy;
import org.twinbar.study.judged.KeptFile;
import org.twinbar.study.judged.Publication;
import org.twinbar.study.judged.StudyName;
import org.twinbar.study.table.Handed;

/**
 * A workspace that is open: its studies, and what a person does with them.
 *
 * <p>Each act is checked whole before anything is written, and is written whole; one that is sent
 * again is done once.
 */
public final class Workspace implements AutoCloseable {

    private static final JsonMapper JSON = new JsonMapper();

    private final Store store;
    private final Methods methods;
    private final Clock clock;
    private final String program;
    private final Instruments instruments;
    private final Judgements judgements;
    private final Typing typing;
    private final Reckonings reckonings = new Reckonings();
    private final Remembered<String, Long, List<StudyName>> studies =
            new Remembered<>(Remembered.shareOfMemory(64), it -> 500L * it.size());

    private Workspace(Store store, Methods methods, Clock clock, String program) {
        this.store = store;
        this.methods = methods;
        this.clock = clock;
        this.program = program;
        this.instruments = new Instruments(store, clock);
        this.judgements = new Judgements(store, instruments, methods, program);
        this.typing = new Typing(store, methods, clock, instruments, judgements);
    }

    /**
     * Opens a workspace, and makes it where there is none. Methods of one's own lie in its folder
     * {@code methods}.
     *
     * @param methods those that come with Twinbar
     * @param clock tells when something was entered, and in which zone
     * @param program name and version, for reports
     * @throws InputException where the folder can't be used, or a method in it is not sound
     */
    public static Workspace open(Path folder, Methods methods, Clock clock, String program) {
        Methods all = OwnMethods.among(methods, OwnMethods.in(folder.resolve("methods")));
        try {
            return new Workspace(Store.open(folder), all, clock, program);
        } catch (StoreException e) {
            throw new InputException(e.getMessage());
        }
    }

    /** Returns the methods that its studies may use, a person's own among them. */
    public Methods methods() {
        return methods;
    }

    /** Returns the studies in the order in which they were made. */
    public List<StudyName> studies() {
        String aspect = Aspect.STUDY.word();
        return studies.get(
                "all",
                store.lastOf(aspect),
                () -> store.of(aspect).stream().map(Workspace::name).toList());
    }

    private static StudyName name(Entry entry) {
        StudyFile.Head head = head(entry);
        return new StudyName(
                UUID.fromString(entry.subject()),
                head.name(),
                head.question(),
                head.origin(),
                entry.at());
    }

    private static StudyFile.Head head(Entry entry) {
        try {
            JsonNode value = JSON.readTree(entry.value());
            return State.head(value);
        } catch (JsonProcessingException e) {
            throw new StoreException("entry %s is damaged".formatted(entry.id()));
        }
    }

    public Optional<StudyName> find(String name) {
        return studies().stream().filter(study -> study.name().equals(name)).findFirst();
    }

    /** @throws InputException where no study has this name */
    public StudyName study(String name) {
        List<String> names = studies().stream().map(StudyName::name).toList();
        return find(name)
                .orElseThrow(() -> new InputException("there is no study '%s' in %s%s"
                        .formatted(name, store.folder(), Spelling.hint(name, names))));
    }

    /** Makes a study that holds nothing yet. */
    public StudyName create(Act act, StudyFile.Head head) {
        return importStudy(
                act,
                new StudyFile(Optional.of(head), List.of(), List.of(), List.of()),
                Handed.nothing());
    }

    /**
     * Makes a study of what a file says, with its tables and curves.
     *
     * @throws InputException where the name is taken, a table, curve or claim can't be read, or a
     *     question can't be asked of the readings; nothing was written then
     */
    public StudyName importStudy(Act act, StudyFile file, Handed handed) {
        StudyFile.Head head =
                file.head().orElseThrow(() -> new InputException("the study needs a name"));
        UUID id = act.entry("study");
        Optional<StudyName> taken = find(head.name());
        if (taken.filter(study -> !study.id().equals(id)).isPresent()) {
            throw new InputException(
                    "there is a study '%s' in %s already".formatted(head.name(), store.folder()));
        }
        Draft draft = drafted(act, id, head, file, handed);
        draft.write();
        return study(head.name());
    }

    private Draft drafted(Act act, UUID id, StudyFile.Head head, StudyFile file, Handed handed) {
        Draft draft = draft(act, id, List.of());
        draft.say(Aspect.STUDY, State.json(head));
        file.plan().ifPresent(plan -> Plans.keep(draft, plan, Optional.empty()));
        for (StudyFile.Test test : file.tests()) {
            draft.test(test, handed);
        }
        file.claims().forEach(draft::claim);
        file.leftOut().forEach(draft::leaveOut);
        return draft;
    }

    /**
     * Judges a study that isn't kept: nothing is written.
     *
     * @throws InputException as {@link #importStudy}, but for the name, which may be taken
     */
    public JudgedStudy tryOut(StudyFile file, Handed handed) {
        StudyFile.Head head =
                file.head().orElseThrow(() -> new InputException("the study needs a name"));
        Act act = Act.by("nobody");
        return drafted(act, act.entry("study"), head, file, handed).judge(program);
    }

    /** Adds a test with its table; its curves are found by the names that the table gives them. */
    public void addTest(Act act, StudyName study, StudyFile.Test test, Handed handed) {
        change(act, study, draft -> draft.test(test, handed));
    }

    public void addClaim(Act act, StudyName study, Claim claim) {
        change(act, study, draft -> draft.claim(claim));
    }

    /** Leaves a specimen out; it stays listed, with the reason. */
    public void leaveOut(
            Act act,
            StudyName study,
            String method,
            String specimen,
            LeftOut.Sight sight,
            String why) {
        change(act, study, draft -> draft.leaveOut(method, specimen, sight, why));
    }

    /** Lets a specimen count again. */
    public void takeBack(Act act, StudyName study, String method, String specimen, String why) {
        change(act, study, draft -> draft.takeBack(method, specimen, why));
    }

    /**
     * Corrects a reading; what stood there stays beside it.
     *
     * @param column header of the reading
     * @param text what it should have been, in the column's unit
     */
    public void correct(
            Act act,
            StudyName study,
            String method,
            String specimen,
            String column,
            String text,
            String why) {
        change(act, study, draft -> draft.correct(method, specimen, column, text, why));
    }

    /**
     * Keeps the verdicts of a study as they stand, since somebody publishes them.
     *
     * @param where such as the title of a video; may be empty
     * @throws InputException where there is no verdict yet
     */
    public Publication publish(Act act, StudyName study, String where) {
        JudgedStudy judged = judge(study, Progress.SILENT);
        if (Publication.Said.all(judged).stream().allMatch(it -> it.verdict().isEmpty())) {
            throw new InputException("the study '%s' has no verdict yet that could be published"
                    .formatted(study.name()));
        }
        change(act, study, draft -> draft.say(Aspect.PUBLISHED, PublicationJson.of(judged, where)));
        return state(study).published().stream().reduce((one, later) -> later).orElseThrow();
    }

    /** Returns what is done with the plan of a study. */
    public Plans plans() {
        return new Plans(this, reckonings);
    }

    /** Returns what is noted on single specimens. */
    public Register register() {
        return new Register(this);
    }

    /** Returns what is done with treatments. */
    public Treating treating() {
        return new Treating(this);
    }

    /** Returns the recipes and materials that any study may use. */
    public Recipes recipes() {
        return new Recipes(store, clock);
    }

    ZonedDateTime now() {
        return clock.instant().atZone(clock.getZone());
    }

    /** Returns the studies of which some entry says something of this kind. */
    List<StudyName> studiesWith(Aspect aspect) {
        Set<String> subjects =
                store.of(aspect.word()).stream().map(Entry::subject).collect(Collectors.toSet());
        return studies().stream()
                .filter(study -> subjects.contains(study.id().toString()))
                .toList();
    }

    State state(StudyName study) {
        return judgements.state(study.id());
    }

    /** Returns what counting specimens that were made alike gave, of all tests of a study. */
    List<AlikeValues> alike(StudyName study) {
        return judgements.alike(study.id());
    }

    /** Returns the specimens that a test has some result of; a study without a test has none. */
    Set<String> codesWithReadings(StudyName study) {
        return state(study).tests().isEmpty()
                ? Set.of()
                : Judging.withReadings(judge(study, Progress.SILENT).specimens());
    }

    /** Returns what looks at curves by themselves. */
    public CurveReview curves() {
        return new CurveReview(this);
    }

    /** Returns what moves marks on curves. */
    public Marking marking() {
        return new Marking(this);
    }

    /** Returns what the tests of studies were read on. */
    public ToolsOfTest tools() {
        return new ToolsOfTest(this);
    }

    void change(Act act, StudyName study, java.util.function.Consumer<Draft> change) {
        List<Entry> before = store.about(study.id().toString());
        boolean done = before.stream().anyMatch(entry -> act.wrote(entry.id()));
        if (!done) {
            Draft draft = draft(act, study.id(), before);
            change.accept(draft);
            draft.write();
        }
    }

    private Draft draft(Act act, UUID study, List<Entry> before) {
        return new Draft(store, methods, clock, act, study, before);
    }

    /** Returns the instruments that studies may name. */
    public Instruments instruments() {
        return instruments;
    }

    /** Returns the references that tell whether the bench still reads what it read. */
    public References references() {
        return new References(instruments(), methods);
    }

    /** Returns what is followed on films. */
    public Picturing picturing() {
        return new Picturing(this, store.files());
    }

    /** Returns what is typed by hand. */
    public Typing typing() {
        return typing;
    }

    /** Calculates a study and judges its claims, unless it is known how they stand. */
    public JudgedStudy judge(StudyName study, Progress progress) {
        return judgements.judge(study.id(), progress);
    }

    /** Returns what tells the present state of a study from any other. */
    public Stamp stamp(StudyName study) {
        return judgements.stamp(study.id());
    }

    /**
     * Returns how many entries made a study what it is, those of the instruments that it may name
     * included; each change adds at least one.
     */
    public int entries(StudyName study) {
        return store.about(study.id().toString()).size()
                + Instruments.ASPECTS.stream()
                        .mapToInt(aspect -> store.of(aspect.word()).size())
                        .sum();
    }

    /** Returns what a file of a study holds, as it came. */
    public byte[] bytes(KeptFile file) {
        return store.files().read(new Digest(file.sha256()));
    }

    /** Returns the photos that may stand for the specimens of a study, one each. */
    public List<Still> stills(StudyName study, JudgedStudy judged) {
        return Still.of(judged, state(study), this::bytes);
    }

    /** Returns what brings studies out of this workspace and into it as data packages. */
    public Packages packages() {
        return new Packages(store, instruments(), methods, program);
    }

    /** Returns name and version of the program. */
    public String program() {
        return program;
    }

    @Override
    public void close() {
        store.close();
    }
}
