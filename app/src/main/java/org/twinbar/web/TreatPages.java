package org.twinbar.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.twinbar.exchange.InputException;
import org.twinbar.quantity.Unit;
import org.twinbar.study.FieldException;
import org.twinbar.study.Filled;
import org.twinbar.study.Workspace;
import org.twinbar.study.judged.StudyName;
import org.twinbar.treatment.TreatmentException;
import org.twinbar.treatment.Waiting;

/**
 * "How are they treated, and what may be tested?": what can be done today first, then each group's
 * recipe with how far it is, mixes, films, and what differed. "What can be done today?" asks the
 * same of all studies.
 */
final class TreatPages {

    private static final Unit SECONDS = Unit.of("s");
    private static final Unit HOURS = Unit.of("h");
    private static final Unit DAYS = Unit.of("d");

    private final Workspace workspace;
    private final StudyPages studies;

    TreatPages(Workspace workspace, StudyPages studies) {
        this.workspace = workspace;
        this.studies = studies;
    }

    void routes(RoutesConfig routes) {
        routes.get("/studies/{study}/treating", this::treating);
        routes.post("/studies/{study}/treating/waiting", this::waiting);
        routes.get("/today", this::today);
    }

    private void treating(Context request) {
        show(request, Form.EMPTY, Amiss.NOTHING);
    }

    private void show(Context request, Form form, Amiss amiss) {
        StudyName study = studies.find(request);
        Map<String, Object> with = new LinkedHashMap<>();
        with.put("view", TreatView.of(workspace, study));
        with.put("hasConditions", !ConditionPages.claims(workspace, study).isEmpty());
        with.put("form", form);
        with.put("amiss", amiss);
        with.put("act", UUID.randomUUID().toString());
        Pages.show(request, "treating", with);
    }

    private void waiting(Context request) {
        StudyName study = studies.find(request);
        Form form = Form.of(request);
        try {
            Filled filled = new Filled(form.fields());
            Duration cure = time(filled, "cure", DAYS, "how long specimens cure");
            Duration condition = time(filled, "condition", HOURS, "how long they condition");
            filled.at("cure", () -> new Waiting(cure, Duration.ZERO));
            Waiting waiting = filled.at("condition", () -> new Waiting(cure, condition));
            workspace.treating().waiting(Acts.by(form), study, waiting);
            request.redirect(Links.treating(study), HttpStatus.SEE_OTHER);
        } catch (FieldException | TreatmentException | InputException e) {
            request.status(400);
            show(request, form, Amiss.of(e));
        }
    }

    private static Duration time(Filled form, String field, Unit unit, String what) {
        double said = form.number(field, unit, what);
        return Duration.ofSeconds(Math.round(unit.to(SECONDS).apply(said)));
    }

    private void today(Context request) {
        List<TreatView> views = workspace.treating().planned().stream()
                .map(study -> TreatView.of(workspace, study))
                .toList();
        Pages.show(request, Pages.isPart(request) ? "today-list" : "today", Map.of("views", views));
    }
}
