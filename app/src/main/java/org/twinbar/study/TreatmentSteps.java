package org.twinbar.study;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.UUID;
import org.twinbar.exchange.InputException;
import org.twinbar.planning.Placed;
import org.twinbar.study.judged.StepDone;
import org.twinbar.study.judged.StudyName;
import org.twinbar.treatment.Procedure;

/** What really happens while specimens are treated by a recipe: steps begin and end. */
public final class TreatmentSteps {

    /** Longer than any step; a slip of the keys is longer. */
    private static final double MOST_MINUTES = 60 * 24 * 366;

    private static final double SECONDS_PER_MINUTE = 60;

    private final Workspace workspace;

    TreatmentSteps(Workspace workspace) {
        this.workspace = workspace;
    }

    /**
     * Begins a step, now.
     *
     * @param step of the group's recipe, counted from 0
     * @param codes the specimens that it is done to
     * @throws InputException where the group has no such step, a specimen is none of it, or the
     *     step goes on for one of them already
     */
    public void begin(Act act, StudyName study, String group, int step, List<String> codes) {
        workspace.change(
                act,
                study,
                draft -> draft.say(Aspect.STEP, begun(draft, group, step, codes, draft.now())));
    }

    /**
     * What is told of a step that has ended.
     *
     * @param minutes how long it took, where the clock was not stopped in time
     * @param celsius temperature that was read
     * @param noted what else happened
     */
    public record Told(OptionalDouble minutes, OptionalDouble celsius, String noted) {

        /** @throws InputException unless the time is above zero and no more than a year */
        public Told {
            if (minutes.isPresent()
                    && !(minutes.getAsDouble() > 0 && minutes.getAsDouble() <= MOST_MINUTES)) {
                throw new InputException("a step takes from above 0 min to a year, not %s min"
                        .formatted(minutes.getAsDouble()));
            }
        }
    }

    /**
     * Ends a step.
     *
     * @param begun the step, by the entry that began it
     * @throws InputException where it has ended already, or there is none
     */
    public void end(Act act, StudyName study, UUID begun, Told told) {
        workspace.change(act, study, draft -> {
            StepDone step = draft.state().making().treating().steps().stream()
                    .filter(each -> each.id().equals(begun))
                    .findFirst()
                    .orElseThrow(() -> new InputException("there is no such step"));
            if (step.ended().isPresent()) {
                throw new InputException("step %s has ended already".formatted(step.step() + 1));
            }
            ZonedDateTime ended = told.minutes().isPresent()
                    ? later(step.began(), told.minutes().getAsDouble())
                    : draft.now();
            ObjectNode value = JsonNodeFactory.instance.objectNode();
            value.put("begun", begun.toString());
            value.put("ended", ended.toString());
            tell(value, told);
            draft.say(Aspect.STEP, value);
        });
    }

    /** Notes a step that was done without a clock: it ended now, and took what is told. */
    public void done(
            Act act, StudyName study, String group, int step, List<String> codes, Told told) {
        workspace.change(act, study, draft -> {
            ZonedDateTime now = draft.now();
            ZonedDateTime began =
                    told.minutes().isPresent() ? later(now, -told.minutes().getAsDouble()) : now;
            ObjectNode value = begun(draft, group, step, codes, began);
            value.put("ended", now.toString());
            tell(value, told);
            draft.say(Aspect.STEP, value);
        });
    }

    /**
     * Takes a step back that was noted by mistake; it stays readable, with the reason.
     *
     * @throws InputException where there is none, or no reason
     */
    public void takeBack(Act act, StudyName study, UUID begun, String why) {
        workspace.change(act, study, draft -> {
            if (draft.state().making().treating().steps().stream()
                    .noneMatch(each -> each.id().equals(begun))) {
                throw new InputException("there is no such step");
            }
            if (why.isBlank()) {
                throw new InputException("say why the step is taken back");
            }
            ObjectNode value = JsonNodeFactory.instance.objectNode();
            value.put("taken_back", begun.toString());
            draft.say(Aspect.STEP, value, Optional.of(why), Optional.of(begun));
        });
    }

    private static ZonedDateTime later(ZonedDateTime from, double minutes) {
        return from.plusSeconds(Math.round(SECONDS_PER_MINUTE * minutes));
    }

    private static void tell(ObjectNode value, Told told) {
        told.celsius().ifPresent(celsius -> value.put("celsius", celsius));
        if (!told.noted().isBlank()) {
            value.put("noted", told.noted());
        }
    }

    private static ObjectNode begun(
            Draft draft, String group, int step, List<String> codes, ZonedDateTime began) {
        TreatingState treating = draft.state().making().treating();
        Procedure recipe = treating.recipes().get(group);
        if (recipe == null) {
            throw new InputException("'%s' has no recipe yet".formatted(group));
        }
        if (step < 0 || step >= recipe.steps().size()) {
            throw new InputException("the recipe of '%s' has steps 1 to %s, not %s"
                    .formatted(group, recipe.steps().size(), step + 1));
        }
        if (codes.isEmpty()) {
            throw new InputException(
                    "tick the specimens that step %s is done to".formatted(step + 1));
        }
        for (String code : codes) {
            Placed placed = Register.planned(draft, code);
            if (!placed.group().equals(group)) {
                throw new InputException(
                        "specimen '%s' is '%s', not '%s'".formatted(code, placed.group(), group));
            }
            boolean goesOn = treating.steps().stream()
                    .anyMatch(each -> each.step() == step
                            && each.ended().isEmpty()
                            && each.specimens().contains(code));
            if (goesOn) {
                throw new InputException(
                        "step %s goes on for '%s' already".formatted(step + 1, code));
            }
        }
        ObjectNode value = JsonNodeFactory.instance.objectNode();
        value.put("group", group);
        value.put("step", step + 1);
        value.put("what", recipe.steps().get(step).what());
        codes.forEach(value.putArray("specimens")::add);
        value.put("began", began.toString());
        return value;
    }
}
