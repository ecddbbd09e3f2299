package org.twinbar.study;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.twinbar.exchange.InputException;
import org.twinbar.exchange.Spelling;
import org.twinbar.planning.PlannedGroup;
import org.twinbar.study.file.ProcedureKeys;
import org.twinbar.study.judged.Answer;
import org.twinbar.study.judged.Claim;
import org.twinbar.study.judged.Making;
import org.twinbar.study.judged.Registered;
import org.twinbar.study.judged.Registered.Step;
import org.twinbar.study.judged.StudyName;
import org.twinbar.study.table.Upload;
import org.twinbar.treatment.Film;
import org.twinbar.treatment.Procedure;
import org.twinbar.treatment.Scale;
import org.twinbar.treatment.TreatmentException;
import org.twinbar.treatment.Waiting;

/**
 * What a person does with treatments: how they are done, what is still curing, which films came.
 */
public final class Treating {

    private final Workspace workspace;

    Treating(Workspace workspace) {
        this.workspace = workspace;
    }

    /** Where a specimen stands on its way to the test. */
    public record Standing(Registered specimen, Waiting.Stand stand) {}

    /**
     * Keeps how a group is treated, in place of what was kept before.
     *
     * @throws InputException where the plan has no such group, or it is sealed with another way to
     *     treat it
     */
    public void recipe(Act act, StudyName study, String group, Procedure procedure) {
        recipe(act, study, group, procedure, Optional.empty());
    }

    /**
     * Keeps the same where it takes the place of what was sealed.
     *
     * @param why needed then; the report shows it
     */
    public void recipe(
            Act act, StudyName study, String group, Procedure procedure, Optional<String> why) {
        workspace.change(act, study, draft -> {
            List<String> names = groups(draft);
            if (!names.contains(group)) {
                throw new InputException("the plan has no group '%s' among %s%s"
                        .formatted(group, String.join(", ", names), Spelling.hint(group, names)));
            }
            boolean settled = draft.state().making().treating().recipes().containsKey(group);
            requireReason(draft, settled, "of how %s specimens are treated".formatted(group), why);
            ObjectNode value = JsonNodeFactory.instance.objectNode();
            value.put("group", group);
            value.set("procedure", ProcedureKeys.json(procedure));
            draft.say(Aspect.RECIPE, value, why, Optional.empty());
        });
    }

    private static void requireReason(
            Draft draft, boolean settled, String what, Optional<String> why) {
        if (draft.state().making().sealed()
                && settled
                && why.filter(it -> !it.isBlank()).isEmpty()) {
            throw new InputException(
                    "the plan is sealed: a change %s needs its reason".formatted(what));
        }
    }

    private static List<String> groups(Draft draft) {
        return draft
                .state()
                .making()
                .plan()
                .orElseThrow(() -> new InputException("the study has no plan yet"))
                .allocation()
                .design()
                .groups()
                .stream()
                .map(PlannedGroup::name)
                .toList();
    }

    /**
     * Keeps how long specimens wait before they are tested, the same for all of the study.
     *
     * @throws TreatmentException where a time is none
     */
    public void waiting(Act act, StudyName study, Waiting waiting) {
        waiting(act, study, waiting, Optional.empty());
    }

    /**
     * Keeps the same where the plan is sealed; what is so already needs no entry.
     *
     * @param why needed then; the report shows it
     */
    public void waiting(Act act, StudyName study, Waiting waiting, Optional<String> why) {
        if (waiting(study).equals(waiting)) {
            return;
        }
        workspace.change(act, study, draft -> {
            requireReason(draft, true, "of how long specimens wait", why);
            ObjectNode value = JsonNodeFactory.instance.objectNode();
            value.put("cure_s", waiting.cure().toSeconds());
            value.put("condition_s", waiting.condition().toSeconds());
            draft.say(Aspect.WAITING, value, why, Optional.empty());
        });
    }

    /** Returns what notes the steps of treatments while they are done. */
    public TreatmentSteps steps() {
        return new TreatmentSteps(workspace);
    }

    /** Returns how long specimens of a study wait; the usual times where nobody said. */
    public Waiting waiting(StudyName study) {
        return workspace.state(study).making().waiting();
    }

    /** Returns the studies whose specimens are planned, so that some may wait for something. */
    public List<StudyName> planned() {
        return workspace.studiesWith(Aspect.PLAN);
    }

    /** Returns where each specimen stands at a moment, in the order of testing. */
    public List<Standing> clock(StudyName study, Instant now) {
        MakingState state = workspace.state(study).making();
        Making making =
                state.making(MakingState.For.WHOEVER_TREATS, workspace.codesWithReadings(study));
        List<Standing> standings = new ArrayList<>();
        for (Registered each : making.made()) {
            if (each.fate().kind().waits() || each.fate().kind() == Registered.Fate.Kind.TESTED) {
                standings.add(new Standing(each, state.waiting().at(now, known(each, now))));
            }
        }
        return standings;
    }

    private static Waiting.Known known(Registered one, Instant now) {
        boolean treated = one.group()
                .filter(group -> group.role() != PlannedGroup.Role.CONTROL)
                .isPresent();
        Optional<Instant> tested = one.fate().kind() == Registered.Fate.Kind.TESTED
                ? moment(one, Step.TESTED).or(() -> Optional.of(now))
                : moment(one, Step.TESTED);
        return new Waiting.Known(
                moment(one, Step.PRINTED),
                moment(one, Step.TREATED),
                treated,
                moment(one, Step.CURED),
                moment(one, Step.CONDITIONED),
                tested);
    }

    private static Optional<Instant> moment(Registered one, Step step) {
        return one.done(step).map(done -> done.when().toInstant());
    }

    /**
     * Keeps what films are reckoned with, from the masses in the register.
     *
     * @param density of the cured film (g/cm³)
     * @param scaleStep smallest step of the scale (g)
     * @param area of one specimen (mm²); that of its standard shape where none is given
     */
    public void film(
            Act act, StudyName study, double density, double scaleStep, OptionalDouble area) {
        workspace.change(act, study, draft -> {
            new Scale(scaleStep);
            new Film(area.orElse(1), density);
            ObjectNode value = JsonNodeFactory.instance.objectNode();
            value.put("density", density);
            value.put("step", scaleStep);
            area.ifPresent(it -> value.put("area", it));
            draft.say(Aspect.FILM, value);
            if (draft.state()
                    .making()
                    .making(MakingState.For.WHOEVER_TREATS, java.util.Set.of())
                    .coated()
                    .isEmpty()) {
                throw new InputException(
                        "no specimen was weighed before and after, or its shape has no known area: give the area");
            }
        });
    }

    /**
     * Keeps evidence for a condition of a claim that no bench can settle.
     *
     * @param claim its words
     * @param condition which of its conditions, counted from 1
     * @param evidence what it is and what it shows
     * @param file the evidence itself, kept byte for byte
     * @throws InputException where there is no such claim or condition
     */
    public void evidence(
            Act act,
            StudyName study,
            String claim,
            int condition,
            String evidence,
            Optional<Upload> file) {
        workspace.change(act, study, draft -> {
            List<Claim> offBench = draft.state().claims().stream()
                    .filter(each -> each.offBench().isPresent())
                    .toList();
            List<String> words = offBench.stream().map(Claim::words).toList();
            Answer.OffBench off = offBench.stream()
                    .filter(each -> each.words().equals(claim))
                    .findFirst()
                    .flatMap(Claim::offBench)
                    .orElseThrow(
                            () -> new InputException("the study has no claim with conditions '%s'%s"
                                    .formatted(claim, Spelling.hint(claim, words))));
            if (condition < 1 || condition > off.conditions().size()) {
                throw new InputException("the claim '%s' has conditions 1 to %s, not %s"
                        .formatted(claim, off.conditions().size(), condition));
            }
            if (evidence.isBlank()) {
                throw new InputException("say what the evidence is and what it shows");
            }
            ObjectNode value = JsonNodeFactory.instance.objectNode();
            value.put("claim", claim);
            value.put("condition", off.conditions().get(condition - 1).text());
            value.put("evidence", evidence);
            file.ifPresent(it -> value.set("file", State.json(draft.take(it))));
            draft.say(Aspect.EVIDENCE, value);
        });
    }

    /** Returns the moment that the workspace's clock shows. */
    public ZonedDateTime now() {
        return workspace.now();
    }
}
