package org.twinbar.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.twinbar.decision.QuestionException;
import org.twinbar.exchange.InputException;
import org.twinbar.method.Methods;
import org.twinbar.report.Report;
import org.twinbar.report.Sheet;
import org.twinbar.study.Workspace;
import org.twinbar.study.judged.StudyName;

/** From readings to a sentence and a picture, before anything is kept. */
final class TrialPages {

    private final Workspace workspace;
    private final Methods methods;
    private final Trials trials;

    TrialPages(Workspace workspace, Methods methods, Trials trials) {
        this.workspace = workspace;
        this.methods = methods;
        this.trials = trials;
    }

    void routes(RoutesConfig routes) {
        routes.post("/trials", this::receive);
        routes.get("/trials/{trial}", this::show);
        routes.post("/trials/{trial}", this::judge);
        routes.post("/trials/{trial}/keep", this::keep);
        routes.post("/trials/{trial}/discard", this::discard);
    }

    private void receive(Context request) {
        try {
            Received received = Received.from(request);
            try {
                Trial trial = Trial.of(received, methods);
                trials.add(trial);
                request.redirect(trial.link(), HttpStatus.SEE_OTHER);
            } catch (RuntimeException e) {
                received.remove();
                throw e;
            }
        } catch (InputException | Refusal e) {
            request.status(400);
            Doors.show(
                    request, workspace, Doors.Trouble.withReadings(Words.sentence(e)), Form.EMPTY);
        }
    }

    private void show(Context request) {
        Trial trial = find(request);
        show(request, trial, trial.choices().likely(), Optional.empty(), "");
    }

    private void judge(Context request) {
        Trial trial = find(request);
        Form form = Form.of(request);
        try {
            Sheet sheet = Report.sheet(trial.judge(workspace, form));
            show(request, trial, form, Optional.of(sheet), "");
        } catch (InputException | QuestionException | Refusal e) {
            request.status(400);
            show(request, trial, form, Optional.empty(), Words.sentence(e));
        }
    }

    private void keep(Context request) {
        Trial trial = find(request);
        Form form = Form.of(request);
        try {
            StudyName study = trial.keep(workspace, form);
            trials.remove(trial);
            request.redirect(Links.study(study), HttpStatus.SEE_OTHER);
        } catch (InputException | QuestionException | Refusal e) {
            request.status(400);
            show(request, trial, form, Optional.empty(), Words.sentence(e));
        }
    }

    private void discard(Context request) {
        trials.remove(find(request));
        request.redirect("/", HttpStatus.SEE_OTHER);
    }

    private static void show(
            Context request, Trial trial, Form form, Optional<Sheet> sheet, String trouble) {
        Map<String, Object> with = new LinkedHashMap<>();
        with.put("trial", trial);
        with.put("form", form);
        with.put("sheet", sheet);
        with.put("trouble", trouble);
        Pages.show(request, Pages.isPart(request) ? "found" : "trial", with);
    }

    private Trial find(Context request) {
        return trials.get(request.pathParam("trial"));
    }
}
