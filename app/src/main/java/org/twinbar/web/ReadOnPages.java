package org.twinbar.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.twinbar.exchange.InputException;
import org.twinbar.instrument.Instrument;
import org.twinbar.instrument.Kind;
import org.twinbar.method.Channel;
import org.twinbar.method.Description;
import org.twinbar.method.Input;
import org.twinbar.method.Methods;
import org.twinbar.method.Named;
import org.twinbar.quantity.Unit;
import org.twinbar.study.Act;
import org.twinbar.study.ToolsOfTest;
import org.twinbar.study.Workspace;
import org.twinbar.study.file.CalibrationSheet;
import org.twinbar.study.judged.JudgedStudy;
import org.twinbar.study.judged.MethodUsed;
import org.twinbar.study.judged.StudyName;

/**
 * "What was it read on?": the instruments of a test that was made, and which calibration its
 * results stand on; decided there: which instrument of the workspace it was, and on which day.
 */
public final class ReadOnPages {

    private final Workspace workspace;
    private final Methods methods;
    private final StudyPages pages;

    ReadOnPages(Workspace workspace, Methods methods, StudyPages pages) {
        this.workspace = workspace;
        this.methods = methods;
        this.pages = pages;
    }

    void routes(RoutesConfig routes) {
        routes.get("/studies/{study}/read-on/{method}", request -> show(request, "", Form.EMPTY));
        routes.post("/studies/{study}/read-on/{method}", this::say);
    }

    /**
     * A kind of instrument that a test has readings of.
     *
     * @param readings what is read on it, in words
     * @param tools the instruments of the workspace that it may have been
     * @param chosen the one that was said; empty where none was
     */
    public record Choice(String kind, String readings, List<Tool> tools, String chosen) {

        boolean hasTools() {
            return !tools.isEmpty();
        }

        /** Returns what its field is called. */
        public String field() {
            return kind.replace(' ', '-');
        }
    }

    /** An instrument that may be chosen, and what is known of it. */
    public record Tool(String name, String state) {}

    private void show(Context request, String trouble, Form form) {
        StudyName study = pages.find(request);
        Description description = description(request);
        ToolsOfTest.Said said = said(study, description.name());
        Map<String, Object> with = new HashMap<>();
        with.put("study", study);
        with.put("invented", study.origin() == JudgedStudy.Origin.INVENTED);
        with.put("method", description.name());
        with.put("title", description.title());
        List<Choice> choices = choices(description, said);
        with.put("choices", choices.stream().filter(Choice::hasTools).toList());
        with.put(
                "none",
                choices.stream()
                        .filter(choice -> !choice.hasTools())
                        .map(Choice::kind)
                        .collect(Collectors.joining(", ")));
        with.put("date", said.tested().map(Object::toString).orElse(""));
        with.put("stands", stands(pages.judge(study), description.name()));
        with.put("act", UUID.randomUUID().toString());
        with.put("trouble", trouble);
        with.put("form", form);
        Pages.show(request, "read-on", with);
    }

    private void say(Context request) {
        StudyName study = pages.find(request);
        Description description = description(request);
        Form form = Form.of(request);
        try {
            ToolsOfTest.Said before = said(study, description.name());
            Map<String, String> instruments = new LinkedHashMap<>(before.instruments());
            for (Choice choice : choices(description, before)) {
                instruments.remove(choice.kind());
                form.said(choice.field()).ifPresent(tool -> instruments.put(choice.kind(), tool));
            }
            workspace
                    .tools()
                    .say(
                            new Act(MarkPages.identity(form), Words.WHO),
                            study,
                            description.name(),
                            new ToolsOfTest.Said(
                                    instruments, form.said("date").map(CalibrationSheet::date)),
                            form.text("why"));
            request.redirect(Links.study(study) + "#instruments", HttpStatus.SEE_OTHER);
        } catch (InputException e) {
            request.status(400);
            show(request, Words.sentence(e), form);
        }
    }

    private Description description(Context request) {
        return methods.named(request.pathParam("method"))
                .orElseThrow(() -> Refusal.notFound("The study has no such test."))
                .description();
    }

    private ToolsOfTest.Said said(StudyName study, String method) {
        try {
            return workspace.tools().of(study, method);
        } catch (InputException e) {
            throw Refusal.notFound("The study has no such test.");
        }
    }

    private List<Choice> choices(Description description, ToolsOfTest.Said said) {
        Map<Kind, List<String>> readings = new EnumMap<>(Kind.class);
        for (Named named : description.asked()) {
            kind(named)
                    .ifPresent(kind -> readings.computeIfAbsent(kind, it -> new ArrayList<>())
                            .add(named.label()));
        }
        List<Choice> choices = new ArrayList<>();
        readings.forEach((kind, labels) -> {
            List<Tool> tools = workspace.instruments().all().stream()
                    .filter(it -> it.reads(kind) && it.unit().measuresSameAs(Unit.of(kind.unit())))
                    .map(it -> new Tool(it.name(), InstrumentView.of(it).state()))
                    .toList();
            choices.add(new Choice(
                    kind.word(),
                    String.join(", ", labels).toLowerCase(Locale.ROOT),
                    tools,
                    said.instruments().getOrDefault(kind.word(), "")));
        });
        return choices;
    }

    private static Optional<Kind> kind(Named named) {
        Kind kind = named instanceof Input input
                ? input.instrument()
                : named instanceof Channel channel ? channel.instrument() : Kind.NONE;
        return kind == Kind.NONE ? Optional.empty() : Optional.of(kind);
    }

    /** Returns what the results stand on now, an instrument a line. */
    private static List<String> stands(JudgedStudy study, String method) {
        return study.methods().stream()
                .filter(used -> used.name().equals(method))
                .map(MethodUsed::instruments)
                .flatMap(List::stream)
                .map(it -> it.name() + ": " + standing(it))
                .toList();
    }

    private static String standing(Instrument instrument) {
        return instrument
                .correction()
                .map(it -> "readings are corrected by the " + it.standsOn())
                .orElse(
                        instrument.origin() == Instrument.Origin.ASSUMED
                                ? "the usual one is assumed"
                                : "its figures were given, and no calibration");
    }
}
