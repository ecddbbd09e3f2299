package org.twinbar.study;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.twinbar.exchange.InputException;
import org.twinbar.method.Property;
import org.twinbar.method.TestMethod;
import org.twinbar.planning.Aim;
import org.twinbar.planning.Canonical;
import org.twinbar.planning.Numbers;
import org.twinbar.planning.Pilot;
import org.twinbar.planning.Placed;
import org.twinbar.planning.PlanException;
import org.twinbar.planning.Series;
import org.twinbar.study.calculation.AlikeValues;
import org.twinbar.study.calculation.EarlierScatter;
import org.twinbar.study.calculation.EarlierShare;
import org.twinbar.study.calculation.Progress;
import org.twinbar.study.calculation.SeriesForClaims;
import org.twinbar.study.file.OwnMethods;
import org.twinbar.study.file.PlanKeys;
import org.twinbar.study.file.StudyFile;
import org.twinbar.study.file.TestSheet;
import org.twinbar.study.judged.Claim;
import org.twinbar.study.judged.JudgedStudy;
import org.twinbar.study.judged.Making;
import org.twinbar.study.judged.Plan;
import org.twinbar.study.judged.Registered;
import org.twinbar.study.judged.StudyName;
import org.twinbar.study.table.Handed;
import org.twinbar.study.table.PlannedTable;
import org.twinbar.study.table.Upload;

/** What a person does with the plan of a study: keep it, seal it, start its tests, open its key. */
public final class Plans {

    private final Workspace workspace;
    private final Reckonings reckonings;

    Plans(Workspace workspace, Reckonings reckonings) {
        this.workspace = workspace;
        this.reckonings = reckonings;
    }

    /** Returns how the specimens came to be; groups are hidden while the key is closed. */
    public Making of(StudyName study) {
        return making(study, MakingState.For.WHOEVER_READS);
    }

    /** Returns the same for whoever treats specimens, who must know their groups. */
    public Making forTreating(StudyName study) {
        return making(study, MakingState.For.WHOEVER_TREATS);
    }

    private Making making(StudyName study, MakingState.For whom) {
        return workspace.state(study).making().making(whom, workspace.codesWithReadings(study));
    }

    /**
     * Keeps a plan, in place of the one before.
     *
     * @param why needed once the plan is sealed; the report shows what was changed then
     * @throws InputException where a change of a sealed plan has no reason, or gives a code that is
     *     in use to another specimen
     */
    public void keep(Act act, StudyName study, Plan plan, Optional<String> why) {
        workspace.change(act, study, draft -> keep(draft, plan, why));
    }

    static void keep(Draft draft, Plan plan, Optional<String> why) {
        plan.series().forEach(series -> OwnMethods.named(draft.methods(), series.method()));
        MakingState before = draft.state().making();
        if (before.sealed() && why.filter(it -> !it.isBlank()).isEmpty()) {
            throw new InputException("the plan is sealed: a change of it needs its reason");
        }
        if (before.sealed()) {
            before.plan().ifPresent(was -> requireSameSpecimens(was, plan));
        }
        Optional<String> reason = before.planEntry().map(it -> why.orElse("drafted anew"));
        draft.say(Aspect.PLAN, PlanKeys.json(plan), reason, before.planEntry());
    }

    /** Labels may be printed by now. */
    private static void requireSameSpecimens(Plan before, Plan now) {
        for (Placed one : now.allocation().specimens()) {
            if (before.pilot(one.code()).isPresent()) {
                throw new InputException(
                        "specimen '%s' was a pilot in the sealed plan: deal the new plan from another seed"
                                .formatted(one.code()));
            }
            Optional<Placed> was = before.specimen(one.code());
            boolean same = was.isEmpty()
                    || (was.get().group().equals(one.group())
                            && was.get().series().equals(one.series()));
            if (!same) {
                throw new InputException(
                        "specimen '%s' was %s in the sealed plan and would be %s: deal the new plan from another seed"
                                .formatted(one.code(), was.get().group(), one.group()));
            }
        }
    }

    /**
     * Seals the plan with the claims as they are: the digest of their text is an entry.
     *
     * @throws InputException where there is no plan, or it is sealed already
     */
    public void seal(Act act, StudyName study) {
        workspace.change(act, study, draft -> {
            MakingState state = draft.state().making();
            Plan plan = planned(state);
            if (state.sealed()) {
                throw new InputException(
                        "the plan is sealed already; what changes it now is an entry with a reason");
            }
            if (state.claims().isEmpty()) {
                throw new InputException(
                        "the study has no claim yet: a plan is sealed with what it is to answer");
            }
            String text = state.canonicalText(plan);
            ObjectNode value = JsonNodeFactory.instance.objectNode();
            value.put("plan", state.planEntry().orElseThrow().toString());
            value.put("text", text);
            value.put("sha256", Canonical.sealOf(text));
            draft.say(Aspect.SEAL, value);
        });
    }

    /**
     * Notes what was read on pilot specimens; they tell the scatter, and are never compared.
     *
     * @param what was read, with its unit
     * @throws InputException where the plan has no such kind of specimens, or they tell no scatter
     */
    public void pilots(Act act, StudyName study, String series, String what, List<Double> values) {
        workspace.change(act, study, draft -> {
            Plan plan = planned(draft.state().making());
            try {
                plan.allocation().design().series(series);
                Pilot.of(values.stream().mapToDouble(Double::doubleValue).toArray());
            } catch (PlanException e) {
                throw new InputException(String.valueOf(e.getMessage()));
            }
            ObjectNode value = JsonNodeFactory.instance.objectNode();
            value.put("series", series);
            value.put("what", what);
            values.forEach(value.putArray("values")::add);
            draft.say(Aspect.PILOT, value);
        });
    }

    /**
     * Opens the key of a blind plan: from now on results are told by group.
     *
     * @param why needed while specimens are not tested
     * @throws InputException where there is nothing to open, or specimens wait and no reason is
     *     given
     */
    public void openKey(Act act, StudyName study, Optional<String> why) {
        workspace.change(act, study, draft -> {
            MakingState state = draft.state().making();
            planned(state);
            if (!state.keyClosed()) {
                throw new InputException("the key is open already");
            }
            Set<String> withReadings = draft.codesWithReadings();
            List<String> waiting =
                    state.making(MakingState.For.WHOEVER_READS, withReadings).specimens().stream()
                            .filter(each -> each.fate().kind().waits())
                            .map(Registered::code)
                            .toList();
            if (!waiting.isEmpty() && why.filter(it -> !it.isBlank()).isEmpty()) {
                throw new InputException(
                        "%s %s no result yet (%s): test them or note their fate, or say why the key must be opened now"
                                .formatted(
                                        waiting.size(),
                                        waiting.size() == 1
                                                ? "specimen of the plan has"
                                                : "specimens of the plan have",
                                        first(waiting)));
            }
            ObjectNode value = JsonNodeFactory.instance.objectNode();
            value.put("waiting", waiting.size());
            draft.say(Aspect.KEY, value, why, Optional.empty());
        });
    }

    private static String first(List<String> codes) {
        return codes.size() <= 3
                ? String.join(", ", codes)
                : String.join(", ", codes.subList(0, 3)) + " and others";
    }

    private static Plan planned(MakingState state) {
        return state.plan().orElseThrow(() -> new InputException("the study has no plan yet"));
    }

    /**
     * Returns the table of a test of the plan: a row for each specimen in the order of testing,
     * with blank cells for what the method asks. It says nothing of groups, which the plan knows.
     *
     * @throws InputException where the plan has no such test
     */
    public String table(StudyName study, TestSheet sheet) {
        MakingState state = workspace.state(study).making();
        TestMethod method = OwnMethods.named(workspace.methods(), sheet.method());
        return new PlannedTable(planned(state), method, sheet.set().keySet()).csv();
    }

    /**
     * Starts a test of the plan: its table has blank cells, which are filled by typing or by
     * importing readings.
     *
     * @param sheet what is the same for all its specimens
     */
    public void startTest(Act act, StudyName study, TestSheet sheet) {
        String table = table(study, sheet);
        String name = sheet.method() + ".csv";
        Upload upload = Upload.of(name, table.getBytes(StandardCharsets.UTF_8));
        workspace.addTest(
                act,
                study,
                new StudyFile.Test(sheet, name, Optional.empty()),
                Handed.among(List.of(upload)));
    }

    /**
     * Fills blank cells of a test with the readings of a file, matched by the codes of specimens.
     *
     * @param curves the curves that the file names
     * @throws InputException where a code is none of the test's, or a cell holds another value;
     *     nothing was filled then
     */
    public void fill(Act act, StudyName study, String method, Upload readings, Handed curves) {
        workspace.change(act, study, draft -> Filling.fill(draft, method, readings, curves));
    }

    /**
     * Returns the kinds of specimens that the claims ask for: one for each test and way up.
     *
     * @throws InputException where the study asks no question yet
     */
    public List<Series> seriesForClaims(StudyName study, int perGroup, int pilots) {
        List<Series> series = SeriesForClaims.of(
                workspace.state(study).claims(), workspace.methods(), perGroup, pilots);
        if (series.isEmpty()) {
            throw new InputException(
                    "the study asks no question yet that specimens could answer: add a claim first");
        }
        return series;
    }

    /**
     * Returns the scatter of a property as the studies of this workspace show it; empty where none
     * of those that were measured has two specimens that were made alike.
     */
    public Optional<EarlierScatter> earlierScatter(String method, Property property) {
        Map<String, List<AlikeValues>> studies = new LinkedHashMap<>();
        for (StudyName study : workspace.studies()) {
            if (study.origin() == JudgedStudy.Origin.MEASURED
                    && workspace.state(study).test(method).isPresent()) {
                studies.put(study.name(), workspace.alike(study));
            }
        }
        return EarlierScatter.of(studies, method, property);
    }

    private List<JudgedStudy> earlierStudies(String method) {
        return workspace.studies().stream()
                .filter(study -> study.origin() == JudgedStudy.Origin.MEASURED)
                .filter(study -> workspace.state(study).test(method).isPresent())
                .map(study -> workspace.judge(study, Progress.SILENT))
                .filter(study -> !study.making().keyClosed())
                .toList();
    }

    /**
     * Returns what so many specimens can tell and what they take, for every kind of effect. The
     * scatter is the one given, else that of this workspace's studies, else what is usual for the
     * test.
     *
     * @throws InputException where something is missing, can't be read, or proves nothing
     */
    public NumbersTold numbers(NumbersAsked asked) {
        return HowMany.told(
                workspace.methods(),
                new EarlierStudies() {
                    @Override
                    public Optional<EarlierScatter> scatter(String method, Property property) {
                        return earlierScatter(method, property);
                    }

                    @Override
                    public Optional<EarlierShare> controlShare(String method, Property property) {
                        return EarlierShare.of(earlierStudies(method), method, property);
                    }

                    @Override
                    public Aim reckoned(NumbersAsked asked, List<Double> told, Aim aim) {
                        return reckonings.of(asked, told, aim);
                    }
                },
                asked);
    }

    /**
     * Returns why a kind of specimens is as many as it is, for the question of the study that it
     * answers, so that the plan keeps it.
     *
     * @param more what the person says beside what the claim says
     * @return empty where the chance can't be reckoned from the claim alone
     * @throws InputException where the person said something that can't be read, or proves nothing
     */
    public Optional<Plan.NumberReason> reason(StudyName study, Series series, NumbersAsked more) {
        int perGroup = Math.max(Numbers.FEWEST, Math.min(Numbers.MOST, series.perGroup()));
        Optional<NumbersAsked> asked = asked(study, series)
                .map(it -> it.and(more))
                .or(() -> more.said().isEmpty()
                        ? Optional.empty()
                        : Optional.of(more.with(NumbersAsked.Wish.METHOD, series.method())));
        if (asked.filter(NumbersAsked::tellsTheAim).isEmpty()) {
            return Optional.empty();
        }
        NumbersAsked whole =
                asked.get().with(NumbersAsked.Wish.PER_GROUP, Integer.toString(perGroup));
        NumbersTold told;
        try {
            told = numbers(whole);
        } catch (InputException e) {
            if (more.said().isEmpty()) {
                return Optional.empty();
            }
            throw e;
        }
        String said = told.scatter().map(NumbersTold.Scatter::words).orElse("");
        return Optional.of(new Plan.NumberReason(
                series.name(),
                told.scatter().map(it -> whole.scatterSaid(told, it.value())).orElse(""),
                said.isEmpty() ? String.join("; ", told.assuming()) : said,
                whole.expectation(),
                whole.said(NumbersAsked.Wish.WORTH),
                told.numbers().row(perGroup).orElseThrow().power()));
    }

    /** The question of the series' own test and way up, else of its test. */
    private Optional<NumbersAsked> asked(StudyName study, Series series) {
        List<Claim.Question> questions = workspace.state(study).claims().stream()
                .flatMap(claim -> claim.questions().stream())
                .filter(it -> it.method().equals(series.method()))
                .toList();
        String wayUp = series.orientation().word();
        return questions.stream()
                .filter(it -> wayUp.equals(it.asked().where().get("orientation")))
                .findFirst()
                .or(() -> questions.stream().findFirst())
                .map(NumbersAsked::of);
    }

    /**
     * Returns what each question of a study already says of its numbers, by the question's name;
     * what is missing is for a person to add.
     */
    public Map<String, NumbersAsked> numbersAsked(StudyName study) {
        Map<String, NumbersAsked> asked = new LinkedHashMap<>();
        for (Claim claim : workspace.state(study).claims()) {
            claim.questions().forEach(it -> asked.putIfAbsent(it.name(), NumbersAsked.of(it)));
        }
        return asked;
    }

    /** Returns what the claims of a study ask, so that a plan can be made for it. */
    public List<Claim.Question> questions(StudyName study) {
        return workspace.state(study).claims().stream()
                .flatMap(claim -> claim.questions().stream())
                .toList();
    }

    /**
     * Begins a study that repeats another: the same claims, and the same plan dealt anew, with
     * codes of its own.
     *
     * @param head what it is called, and what is changed
     * @throws InputException where the other has no plan, or the name is taken
     */
    public StudyName repeat(Act act, StudyName study, StudyFile.Head head) {
        State state = workspace.state(study);
        Plan plan = planned(state.making());
        return workspace.importStudy(
                act,
                new StudyFile(
                        Optional.of(head),
                        List.of(),
                        state.claims(),
                        List.of(),
                        Optional.of(plan.dealtAnew())),
                Handed.nothing());
    }

    /**
     * Returns what a test is read on: what is named here, else what was chosen when it was started,
     * else the only instrument of a kind.
     *
     * @throws InputException where the workspace has no instrument of that name
     */
    public ReadOn readOn(StudyName study, String method, Map<String, String> named) {
        Map<String, String> chosen = new LinkedHashMap<>();
        workspace
                .state(study)
                .test(method)
                .ifPresent(test -> chosen.putAll(test.sheet().instrument()));
        chosen.putAll(named);
        return ReadOn.of(workspace.instruments(), chosen);
    }

    /** Returns the kinds of specimens that a test of the plan is made on. */
    public List<Series> seriesOf(StudyName study, String method) {
        return planned(workspace.state(study).making()).series().stream()
                .filter(series -> series.method().equals(method))
                .toList();
    }
}
