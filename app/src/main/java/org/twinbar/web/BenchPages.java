package org.twinbar.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.twinbar.exchange.InputException;
import org.twinbar.instrument.Kind;
import org.twinbar.method.Channel;
import org.twinbar.method.Description;
import org.twinbar.method.Input;
import org.twinbar.method.Methods;
import org.twinbar.method.Named;
import org.twinbar.method.Property;
import org.twinbar.planning.PlanException;
import org.twinbar.study.Remembered;
import org.twinbar.study.Workspace;
import org.twinbar.study.bench.BenchAnswer;
import org.twinbar.study.bench.BenchAsk;
import org.twinbar.study.bench.KeptInstrument;
import org.twinbar.study.bench.Shelf;
import org.twinbar.study.calculation.BenchLook;
import org.twinbar.study.file.TestSheet;

/**
 * "What can this bench resolve?": asked before any specimen is broken. Decided there: whether the
 * change worth having is within reach, how many specimens to make, and what to mend first. Shown
 * first: the smallest difference in a sentence, then what limits it, then what would help.
 */
final class BenchPages {

    private final Workspace workspace;
    private final Methods methods;
    private final Remembered<Form, List<Object>, BenchView> looks =
            new Remembered<>(Remembered.shareOfMemory(64), view -> 20_000);

    BenchPages(Workspace workspace, Methods methods) {
        this.workspace = workspace;
        this.methods = methods;
    }

    void routes(RoutesConfig routes) {
        routes.get("/bench", this::show);
    }

    private void show(Context request) {
        Form form = form(request);
        Map<String, Object> with = new LinkedHashMap<>();
        with.put("form", form);
        with.put("methods", methods.all().stream().map(it -> it.description()).toList());
        Optional<Description> description =
                methods.named(form.text("method")).map(it -> it.description());
        List<BenchTool> tools = description.map(this::tools).orElse(List.of());
        with.put("tools", tools);
        with.put("properties", description.map(BenchPages::compared).orElse(List.of()));
        Optional<BenchView> view = Optional.empty();
        String trouble = "";
        if (form.said("method").isPresent()) {
            try {
                Form asked = form;
                view = Optional.of(looks.get(
                        asked,
                        List.of(
                                workspace.instruments().stamp(),
                                workspace.instruments().today()),
                        () -> BenchView.of(look(asked, tools))));
            } catch (InputException | PlanException e) {
                request.status(400);
                trouble = Words.sentence(e);
            }
        }
        with.put("view", view);
        with.put("trouble", trouble);
        Pages.show(request, "bench", with);
    }

    private static Form form(Context request) {
        Form form = Form.EMPTY;
        for (Map.Entry<String, List<String>> field : request.queryParamMap().entrySet()) {
            String said = field.getValue().isEmpty() ? "" : field.getValue().get(0);
            form = form.with(field.getKey(), said.strip());
        }
        return form;
    }

    private BenchAnswer look(Form form, List<BenchTool> tools) {
        Map<String, String> instruments = new LinkedHashMap<>();
        for (BenchTool tool : tools) {
            form.said(tool.field()).ifPresent(name -> instruments.put(tool.kind(), name));
        }
        TestSheet sheet = TestSheet.of(form.text("method"))
                .withSet(pairs("set", form.text("set")))
                .withInstruments(instruments)
                .withErrors(pairs("resolution", form.text("resolution")), Map.of(), Map.of())
                .on(workspace.instruments().today());
        Shelf shelf = workspace.instruments();
        return BenchLook.of(
                methods,
                new BenchAsk(
                        sheet,
                        form.said("property")
                                .filter(name -> methods.named(form.text("method"))
                                        .flatMap(it -> it.description().property(name))
                                        .isPresent()),
                        perGroup(form),
                        form.said("scatter"),
                        form.said("worth")),
                shelf);
    }

    private static int perGroup(Form form) {
        String text = form.text("per_group");
        if (text.isEmpty()) {
            return BenchAsk.USUAL_PER_GROUP;
        }
        if (!text.matches("\\d{1,6}")) {
            throw new InputException(
                    "specimens per group is '%s', must be a whole number".formatted(text));
        }
        return Integer.parseInt(text);
    }

    /** Reads lines such as {@code span = 100 mm}. */
    private static Map<String, String> pairs(String what, String text) {
        Map<String, String> pairs = new LinkedHashMap<>();
        text.lines().map(String::strip).filter(line -> !line.isEmpty()).forEach(line -> {
            int equals = line.indexOf('=');
            if (equals < 1) {
                throw new InputException("%s '%s': write it as name = value".formatted(what, line));
            }
            pairs.put(
                    line.substring(0, equals).strip(),
                    line.substring(equals + 1).strip());
        });
        return pairs;
    }

    private static List<Property> compared(Description description) {
        return description.properties().stream()
                .filter(it ->
                        it.scale() == Property.Scale.RATIO || it.scale() == Property.Scale.INTERVAL)
                .toList();
    }

    private List<BenchTool> tools(Description description) {
        List<KeptInstrument> kept = workspace.instruments().all();
        List<BenchTool> tools = new ArrayList<>();
        List<Kind> kinds = description.asked().stream()
                .map(BenchPages::kind)
                .flatMap(Optional::stream)
                .distinct()
                .toList();
        for (Kind kind : kinds) {
            List<String> names = kept.stream()
                    .filter(it -> it.sheet().kind().equals(kind.word()))
                    .map(KeptInstrument::name)
                    .toList();
            if (!names.isEmpty()) {
                tools.add(
                        new BenchTool(kind.word(), "tool_" + kind.word().replace(' ', '_'), names));
            }
        }
        return tools;
    }

    private static Optional<Kind> kind(Named named) {
        return named instanceof Input input
                ? Optional.of(input.instrument())
                : named instanceof Channel channel
                        ? Optional.of(channel.instrument())
                        : Optional.empty();
    }
}
