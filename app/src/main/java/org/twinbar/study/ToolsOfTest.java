package org.twinbar.study;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.twinbar.exchange.InputException;
import org.twinbar.store.Entry;
import org.twinbar.study.State.KeptTest;
import org.twinbar.study.bench.TestBench;
import org.twinbar.study.file.OwnMethods;
import org.twinbar.study.file.TestSheet;
import org.twinbar.study.judged.Change;
import org.twinbar.study.judged.Ordered;
import org.twinbar.study.judged.StudyName;
import org.twinbar.study.table.Presets;

/**
 * What a test of a study was read on, as a person says it after the readings came: instruments of
 * the workspace, whose calibration on the day of the test then corrects the readings.
 */
public final class ToolsOfTest {

    private final Workspace workspace;

    ToolsOfTest(Workspace workspace) {
        this.workspace = workspace;
    }

    /**
     * What was said.
     *
     * @param instruments by the name of a reading or of a kind of instrument
     * @param tested the day of the test, which tells which calibrations held
     */
    public record Said(Map<String, String> instruments, Optional<LocalDate> tested) {
        public Said {
            instruments = Ordered.copy(instruments);
        }
    }

    /**
     * Returns what was said last.
     *
     * @throws InputException where the study has no such test
     */
    public Said of(StudyName study, String method) {
        TestSheet sheet = test(workspace.state(study), method).sheet();
        return new Said(sheet.instrument(), sheet.date());
    }

    /**
     * Says what a test was read on; what was said before stays readable.
     *
     * @throws InputException where the study has no such test, an instrument is not in the
     *     workspace or reads something else, or all is as it was said before
     */
    public void say(Act act, StudyName study, String method, Said said, String why) {
        workspace.change(act, study, draft -> {
            KeptTest test = test(draft.state(), method);
            TestSheet sheet = with(test.sheet(), said);
            if (sheet.equals(test.sheet())) {
                throw new InputException(
                        "the %s test was said to be read on these already".formatted(method));
            }
            TestBench.of(
                    sheet,
                    OwnMethods.named(draft.methods(), method).description(),
                    workspace.instruments());
            draft.say(
                    Aspect.READ_ON,
                    json(test, said),
                    Optional.of(why).map(String::strip).filter(text -> !text.isEmpty()),
                    Optional.empty());
        });
    }

    private static KeptTest test(State state, String method) {
        return state.test(method)
                .orElseThrow(
                        () -> new InputException("the study has no test '%s'".formatted(method)));
    }

    /** Figures that were given of an instrument give way to the instrument itself. */
    private static TestSheet with(TestSheet sheet, Said said) {
        TestSheet named = sheet.withInstruments(said.instruments())
                .withErrors(
                        without(said, sheet.resolution()),
                        without(said, sheet.calibration()),
                        without(said, sheet.zero()));
        return said.tested().map(named::on).orElse(named);
    }

    private static Map<String, String> without(Said said, Map<String, String> given) {
        Set<String> named =
                said.instruments().keySet().stream().map(Presets::key).collect(Collectors.toSet());
        Map<String, String> left = new LinkedHashMap<>(given);
        left.keySet().removeIf(name -> named.contains(Presets.key(name)));
        return left;
    }

    private static ObjectNode json(KeptTest test, Said said) {
        ObjectNode json = JsonNodeFactory.instance
                .objectNode()
                .put("test", test.id().toString())
                .put("method", test.sheet().method());
        ObjectNode instruments = json.putObject("instrument");
        said.instruments().forEach(instruments::put);
        said.tested().ifPresent(day -> json.put("date", day.toString()));
        return json;
    }

    private static Said read(JsonNode value) {
        Map<String, String> instruments = new LinkedHashMap<>();
        value.path("instrument")
                .fields()
                .forEachRemaining(
                        it -> instruments.put(it.getKey(), it.getValue().asText()));
        return new Said(
                instruments,
                Optional.of(value.path("date").asText())
                        .filter(text -> !text.isEmpty())
                        .map(LocalDate::parse));
    }

    /** Returns a test as an entry has it; another one is left as it is. */
    static KeptTest said(KeptTest test, JsonNode value) {
        return test.id().toString().equals(value.path("test").asText())
                ? test.with(with(test.sheet(), read(value)))
                : test;
    }

    static Change change(Entry entry, JsonNode value) {
        Said said = read(value);
        String on = said.instruments().entrySet().stream()
                .map(it -> "%s (%s)".formatted(it.getValue(), it.getKey().replace('_', ' ')))
                .collect(Collectors.joining(", "));
        String day = said.tested().map(it -> " on " + it).orElse("");
        return new Change(
                "the %s test was read%s on %s"
                        .formatted(
                                value.path("method").asText(),
                                day,
                                on.isEmpty() ? "the usual instruments" : on),
                entry.at().atZone(entry.zone()),
                entry.who(),
                entry.reason().orElse("it was not said before"));
    }
}
