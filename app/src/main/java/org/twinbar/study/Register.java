package org.twinbar.study;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.twinbar.exchange.InputException;
import org.twinbar.exchange.Spelling;
import org.twinbar.planning.Placed;
import org.twinbar.study.judged.MixMade;
import org.twinbar.study.judged.Plan;
import org.twinbar.study.judged.Registered.Fate;
import org.twinbar.study.judged.Registered.Measured;
import org.twinbar.study.judged.Registered.Step;
import org.twinbar.study.judged.StudyName;
import org.twinbar.study.table.Upload;

/** What a person notes on single specimens of a plan: what was done, measured, seen. */
public final class Register {

    private final Workspace workspace;

    Register(Workspace workspace) {
        this.workspace = workspace;
    }

    /**
     * Notes a step that was done.
     *
     * @param codes the specimens that it was done to, in the order in which it was done
     * @param when it was done; now where it isn't said
     * @param what really happened; may be empty
     */
    public void done(
            Act act,
            StudyName study,
            List<String> codes,
            Step step,
            Optional<ZonedDateTime> when,
            String what) {
        workspace.change(act, study, draft -> {
            if (codes.isEmpty()) {
                throw new InputException("say which specimens were " + step.word());
            }
            codes.forEach(code -> planned(draft, code));
            ObjectNode value = JsonNodeFactory.instance.objectNode();
            codes.forEach(value.putArray("specimens")::add);
            value.put("step", step.name());
            value.put("when", when.orElseGet(draft::now).toString());
            value.put("what", what);
            draft.say(Aspect.DONE, value);
        });
    }

    /**
     * Notes a dimension at one or more places, or a mass.
     *
     * @param why where it takes the place of what was measured before
     * @throws InputException where a value isn't above zero, or it was measured before and no
     *     reason is given
     */
    public void measured(
            Act act, StudyName study, String code, Measured measured, Optional<String> why) {
        workspace.change(act, study, draft -> {
            planned(draft, code);
            if (measured.quantity().isBlank() || measured.values().isEmpty()) {
                throw new InputException(
                        "a measurement of '%s' needs its name and its values".formatted(code));
            }
            for (double value : measured.values()) {
                if (!(value > 0 && Double.isFinite(value))) {
                    throw new InputException("the %s of '%s' must be above zero, not %s %s"
                            .formatted(measured.quantity(), code, value, measured.unit()));
                }
            }
            var last = draft.state()
                    .making()
                    .lastMeasured(code, measured.quantity(), measured.moment());
            if (last.isPresent() && why.filter(it -> !it.isBlank()).isEmpty()) {
                throw new InputException(
                        "the %s of '%s' %s treatment is here already: say why it is another now"
                                .formatted(
                                        measured.quantity(),
                                        code,
                                        measured.moment().word()));
            }
            ObjectNode value = JsonNodeFactory.instance.objectNode();
            value.put("specimen", code);
            value.put("quantity", measured.quantity());
            value.put("moment", measured.moment().name());
            measured.values().forEach(value.putArray("values")::add);
            draft.say(Aspect.MEASURED, value, last.isPresent() ? why : Optional.empty(), last);
        });
    }

    /**
     * Keeps a photo of a specimen, byte for byte.
     *
     * @param when it was taken; now where it isn't said
     * @param words what it shows; may be empty
     * @throws InputException where the file is no photo
     */
    public void photo(
            Act act,
            StudyName study,
            String code,
            Upload photo,
            Optional<ZonedDateTime> when,
            String words) {
        workspace.change(act, study, draft -> {
            planned(draft, code);
            PhotoKind.of(photo);
            ObjectNode value = JsonNodeFactory.instance.objectNode();
            value.put("specimen", code);
            value.set("file", State.json(draft.take(photo)));
            value.put("when", when.orElseGet(draft::now).toString());
            value.put("words", words);
            draft.say(Aspect.SPECIMEN_PHOTO, value);
        });
    }

    /**
     * Notes what became of a specimen.
     *
     * @param why needed for all but a specimen that was tested
     */
    public void fate(Act act, StudyName study, String code, Fate.Kind fate, String why) {
        workspace.change(act, study, draft -> {
            planned(draft, code);
            if (why.isBlank() && fate != Fate.Kind.TESTED) {
                throw new InputException(
                        "say why specimen '%s' is %s".formatted(code, fate.word()));
            }
            ObjectNode value = JsonNodeFactory.instance.objectNode();
            value.put("specimen", code);
            value.put("fate", fate.name());
            draft.say(
                    Aspect.FATE,
                    value,
                    why.isBlank() ? Optional.empty() : Optional.of(why),
                    Optional.empty());
        });
    }

    /**
     * Notes a mix that was weighed.
     *
     * @param why where it takes the place of one that was noted
     * @throws InputException where the number is noted already and no reason is given
     */
    public void mixed(Act act, StudyName study, MixMade mix, Optional<String> why) {
        workspace.change(act, study, draft -> {
            mix.cup();
            if (mix.number() < 1) {
                throw new InputException(
                        "mixes are counted from 1; there is no mix %s".formatted(mix.number()));
            }
            var last = draft.state().making().lastMix(mix.number());
            if (last.isPresent() && why.filter(it -> !it.isBlank()).isEmpty()) {
                throw new InputException("mix %s is noted already: say why it is another now"
                        .formatted(mix.number()));
            }
            draft.say(
                    Aspect.MIX,
                    MakingState.json(mix),
                    last.isPresent() ? why : Optional.empty(),
                    last);
        });
    }

    static Placed planned(Draft draft, String code) {
        Plan plan = draft.state()
                .making()
                .plan()
                .orElseThrow(() -> new InputException("the study has no plan yet"));
        return plan.specimen(code).or(() -> plan.pilot(code)).orElseThrow(() -> {
            List<String> codes = Stream.concat(
                            plan.allocation().specimens().stream(),
                            plan.allocation().pilots().stream())
                    .map(Placed::code)
                    .toList();
            return new InputException(
                    "the plan has no specimen '%s'%s".formatted(code, Spelling.hint(code, codes)));
        });
    }
}
