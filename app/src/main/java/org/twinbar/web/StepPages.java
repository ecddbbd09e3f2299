package org.twinbar.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.twinbar.exchange.InputException;
import org.twinbar.quantity.Unit;
import org.twinbar.study.Act;
import org.twinbar.study.FieldException;
import org.twinbar.study.Filled;
import org.twinbar.study.RecipeKind;
import org.twinbar.study.RecipeSheet;
import org.twinbar.study.TreatmentSteps.Told;
import org.twinbar.study.Workspace;
import org.twinbar.study.judged.Making;
import org.twinbar.study.judged.Registered;
import org.twinbar.study.judged.StudyName;
import org.twinbar.treatment.Procedure;
import org.twinbar.treatment.TreatmentException;

/**
 * "How is this group treated?": a recipe is chosen, from those that are kept or anew. "What is done
 * next?": its steps, for the specimens that are ticked; each begins and ends on a button, and what
 * differed from the recipe is said.
 */
public final class StepPages {

    private static final Unit MINUTES = Unit.of("min");
    private static final Unit CELSIUS = Unit.of("°C");

    /** Fields of ticked specimens begin so. */
    private static final String TICK = "s.";

    private final Workspace workspace;
    private final StudyPages studies;

    StepPages(Workspace workspace, StudyPages studies) {
        this.workspace = workspace;
        this.studies = studies;
    }

    void routes(RoutesConfig routes) {
        routes.get("/studies/{study}/recipe", this::choose);
        routes.post("/studies/{study}/recipe", this::take);
        routes.get("/studies/{study}/steps", this::steps);
        routes.post("/studies/{study}/steps", this::act);
    }

    private void choose(Context request) {
        StudyName study = studies.find(request);
        Form form = Form.asked(request);
        Form shown = form.said("like")
                .flatMap(this::kept)
                .map(sheet -> RecipePages.filled(form, sheet))
                .orElse(form);
        chooser(request, study, shown, Amiss.NOTHING);
    }

    private Optional<RecipeSheet> kept(String id) {
        return workspace.recipes().all().stream()
                .filter(each -> each.id().toString().equals(id))
                .map(each -> each.sheet())
                .findFirst();
    }

    private void chooser(Context request, StudyName study, Form form, Amiss amiss) {
        TreatView view = TreatView.of(workspace, study);
        Map<String, Object> with = new LinkedHashMap<>();
        with.put("study", study);
        with.put("groups", view.groups());
        with.put(
                "kept",
                workspace.recipes().all().stream()
                        .filter(each -> each.sheet().kind().hasSteps())
                        .toList());
        with.put("kind", RecipeKind.of(form.text("kind")).filter(RecipeKind::hasSteps));
        with.put("form", form);
        with.put("amiss", amiss);
        with.put("act", UUID.randomUUID().toString());
        Pages.show(request, "choose-recipe", with);
    }

    private void take(Context request) {
        StudyName study = studies.find(request);
        Form form = Form.of(request);
        try {
            RecipeKind kind = RecipeKind.of(form.text("kind"))
                    .filter(RecipeKind::hasSteps)
                    .orElseThrow(() -> new InputException("choose what sort of treatment it is"));
            String group = form.said("group")
                    .orElseThrow(() -> new FieldException("group", "choose the group"));
            boolean keep = form.said("name").isPresent();
            RecipeSheet sheet = new RecipeSheet(
                    kind, form.said("name").orElse("not kept"), new Filled(form.fields()));
            Procedure procedure = sheet.procedure();
            if (keep) {
                workspace.recipes().add(Acts.by(form, "keep"), sheet);
            }
            workspace.treating().recipe(Acts.by(form, "take"), study, group, procedure);
            request.redirect(Links.steps(study, group), HttpStatus.SEE_OTHER);
        } catch (FieldException | TreatmentException | InputException e) {
            request.status(400);
            chooser(request, study, form, Amiss.of(e));
        }
    }

    private void steps(Context request) {
        show(request, Form.asked(request), Amiss.NOTHING);
    }

    private void show(Context request, Form form, Amiss amiss) {
        StudyName study = studies.find(request);
        Making making = workspace.plans().forTreating(study);
        Optional<StepView> view = form.said("group")
                .or(() -> making.recipes().keySet().stream().findFirst())
                .flatMap(group -> Optional.ofNullable(making.recipes().get(group))
                        .map(recipe -> new StepView(
                                group, recipe, making, workspace.treating().now())));
        Map<String, Object> with = new LinkedHashMap<>();
        with.put("study", study);
        with.put("view", view);
        with.put("blind", making.keyClosed());
        with.put("others", making.recipes().keySet());
        with.put("form", form);
        with.put("amiss", amiss);
        with.put("act", UUID.randomUUID().toString());
        Pages.show(request, "steps", with);
    }

    /** Whether a specimen is ticked: all are until somebody chooses. */
    public static boolean isTicked(Form form, String code) {
        return form.text("sent").isEmpty() || !form.text(TICK + code).isEmpty();
    }

    private void act(Context request) {
        StudyName study = studies.find(request);
        Form form = Form.of(request);
        try {
            String group =
                    form.said("group").orElseThrow(() -> new InputException("choose the group"));
            List<String> codes = ticked(study, form, group);
            act(form, study, group, codes);
            request.redirect(Links.steps(study, group), HttpStatus.SEE_OTHER);
        } catch (FieldException | TreatmentException | InputException e) {
            request.status(400);
            show(request, form, Amiss.of(e));
        }
    }

    private void act(Form form, StudyName study, String group, List<String> codes) {
        Filled filled = new Filled(form.fields());
        var steps = workspace.treating().steps();
        if (form.said("begin").isPresent()) {
            int step = number(form.text("begin"));
            steps.begin(by(form, "begin"), study, group, step - 1, codes);
        } else if (form.said("done").isPresent()) {
            int step = number(form.text("done"));
            steps.done(by(form, "done"), study, group, step - 1, codes, told(filled, step));
        } else if (form.said("end").isPresent()) {
            UUID begun = begun(form.text("end"));
            int step = workspace.plans().forTreating(study).steps().stream()
                            .filter(each -> each.id().equals(begun))
                            .findFirst()
                            .orElseThrow(() -> new InputException("there is no such step"))
                            .step()
                    + 1;
            steps.end(by(form, "end"), study, begun, told(filled, step));
        } else if (form.said("back").isPresent()) {
            steps.takeBack(by(form, "back"), study, begun(form.text("back")), form.text("why"));
        } else if (form.said("treated").isPresent()) {
            if (codes.isEmpty()) {
                throw new InputException("tick the specimens that are treated");
            }
            workspace
                    .register()
                    .done(
                            by(form, "treated"),
                            study,
                            codes,
                            Registered.Step.TREATED,
                            Optional.empty(),
                            form.text("treated_how"));
        } else {
            throw new InputException("press the button of what was done");
        }
    }

    private static Act by(Form form, String button) {
        return Acts.by(form, button + " " + form.text(button));
    }

    private static int number(String text) {
        if (!text.matches("[0-9]{1,3}")) {
            throw new InputException("the form is not one of these pages");
        }
        return Integer.parseInt(text);
    }

    private static UUID begun(String text) {
        try {
            return UUID.fromString(text);
        } catch (IllegalArgumentException e) {
            throw new InputException("the form is not one of these pages");
        }
    }

    private static Told told(Filled form, int step) {
        String minutes = "minutes_" + step;
        var took = form.number(minutes, MINUTES);
        var celsius = form.number("celsius_" + step, CELSIUS);
        return form.at(
                minutes,
                () -> new Told(took, celsius, form.said("noted_" + step).orElse("")));
    }

    private List<String> ticked(StudyName study, Form form, String group) {
        return workspace.plans().forTreating(study).specimens().stream()
                .filter(each -> each.placed().group().equals(group))
                .map(Registered::code)
                .filter(code -> !form.text(TICK + code).isEmpty())
                .toList();
    }
}
