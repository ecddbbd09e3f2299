package org.twinbar.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.twinbar.exchange.InputException;
import org.twinbar.report.Drifting;
import org.twinbar.study.Act;
import org.twinbar.study.References;
import org.twinbar.study.Workspace;
import org.twinbar.study.bench.KeptReference;
import org.twinbar.study.bench.ReferenceSheet;
import org.twinbar.study.file.CalibrationSheet;

/**
 * "Does the bench still read what it read?": each reference with its control chart and a sentence,
 * the rules in words, and what to do when it drifts. Decided there: whether to test on, or to stop
 * and look for what changed.
 */
final class ReferencePages {

    private static final String PAGE = "/references";

    private final References references;

    ReferencePages(Workspace workspace) {
        this.references = workspace.references();
    }

    void routes(RoutesConfig routes) {
        routes.get(PAGE, request -> show(request, "", Form.EMPTY));
        routes.post(PAGE, request -> act(request, this::begin));
        routes.post(PAGE + "/values", request -> act(request, this::note));
        routes.post(PAGE + "/withdrawals", request -> act(request, this::withdraw));
    }

    private void show(Context request, String trouble, Form form) {
        List<ReferenceView> views =
                references.all().stream().map(ReferenceView::of).toList();
        Map<String, Object> with = new LinkedHashMap<>();
        with.put("references", views);
        with.put("instruments", references.instruments());
        with.put("methods", references.methods());
        with.put("rules", Drifting.rules());
        with.put("advice", Drifting.advice());
        with.put("today", references.today().toString());
        with.put("act", UUID.randomUUID().toString());
        with.put("trouble", trouble);
        with.put("form", form);
        Pages.show(request, "references", with);
    }

    private interface Doing {
        KeptReference with(Form form);
    }

    private void act(Context request, Doing doing) {
        Form form = Form.of(request);
        try {
            KeptReference done = doing.with(form);
            request.redirect(PAGE + "#r" + done.id(), HttpStatus.SEE_OTHER);
        } catch (InputException e) {
            request.status(400);
            show(request, Words.sentence(e), form);
        }
    }

    private KeptReference begin(Form form) {
        return references.begin(
                by(form),
                form.said("instrument")
                        .orElseThrow(() ->
                                new InputException("choose the instrument that it is read on")),
                new ReferenceSheet(
                        form.text("name"),
                        form.text("method"),
                        form.text("property"),
                        first(form)));
    }

    private static int first(Form form) {
        String text = form.text("first");
        if (text.isEmpty()) {
            return ReferenceSheet.USUAL_FIRST;
        }
        try {
            return Integer.parseInt(text);
        } catch (NumberFormatException e) {
            throw new InputException("'%s' must be a whole number of values".formatted(text));
        }
    }

    private KeptReference note(Form form) {
        LocalDate day = form.said("date").map(CalibrationSheet::date).orElseGet(references::today);
        return references.note(
                by(form),
                find(form),
                day,
                form.said("value")
                        .orElseThrow(
                                () -> new InputException("write down what the reference gave")));
    }

    private KeptReference withdraw(Form form) {
        return references.withdraw(
                by(form), find(form), uuid(form.text("value")), form.text("why"));
    }

    private KeptReference find(Form form) {
        return references
                .find(uuid(form.text("reference")))
                .orElseThrow(() -> new InputException("there is no such reference"));
    }

    /** The page gives each form its act, so that a form that is sent twice is done once. */
    private static Act by(Form form) {
        return form.said("act")
                .map(act -> new Act(uuid(act), Words.WHO))
                .orElseGet(() -> Act.by(Words.WHO));
    }

    private static UUID uuid(String text) {
        try {
            return UUID.fromString(text);
        } catch (IllegalArgumentException e) {
            throw new InputException("the form is not one of these pages");
        }
    }
}
