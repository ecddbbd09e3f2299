package org.twinbar.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.twinbar.exchange.InputException;
import org.twinbar.method.Property;
import org.twinbar.method.TestMethod;
import org.twinbar.planning.Series;
import org.twinbar.quantity.Quantity;
import org.twinbar.quantity.QuantityException;
import org.twinbar.study.Act;
import org.twinbar.study.Workspace;
import org.twinbar.study.file.StudyFile;
import org.twinbar.study.judged.Asked;
import org.twinbar.study.judged.Change;
import org.twinbar.study.judged.Claim;
import org.twinbar.study.judged.JudgedStudy;
import org.twinbar.study.judged.Making;
import org.twinbar.study.judged.Plan;
import org.twinbar.study.judged.StudyName;

/**
 * How the specimens of a study are made: the form that deals them, and the plan that was dealt, its
 * seal and what departed from it.
 */
public final class PlanPages {

    private final Workspace workspace;
    private final StudyPages pages;

    PlanPages(Workspace workspace, StudyPages pages) {
        this.workspace = workspace;
        this.pages = pages;
    }

    void routes(RoutesConfig routes) {
        routes.get("/studies/{study}/plan", this::open);
        routes.post("/studies/{study}/plan", this::keep);
        routes.get("/studies/{study}/plan/form", this::form);
        routes.get("/studies/{study}/plan/numbers", this::numbers);
        routes.post("/studies/{study}/plan/seal", this::seal);
        routes.post("/studies/{study}/plan/key", this::openKey);
        routes.post("/studies/{study}/plan/pilots", this::pilots);
        routes.post("/studies/{study}/plan/repeat", this::repeat);
    }

    private void open(Context request) {
        StudyName study = pages.find(request);
        if (workspace.plans().of(study).plan().isPresent()) {
            show(request, study, Trouble.NONE, Form.asked(request));
        } else {
            form(request);
        }
    }

    private void form(Context request) {
        StudyName study = pages.find(request);
        show(request, formOf(study, Form.asked(request)));
    }

    private void show(Context request, PlanForm form) {
        Making making = workspace.plans().of(form.study());
        Map<String, Object> with = new LinkedHashMap<>();
        // What is wrong with the numbers is found on the way.
        with.put("numbers", NumbersView.of(known(form)));
        with.put("form", form);
        with.put("isSealed", making.seal().isPresent());
        with.put("act", UUID.randomUUID().toString());
        Pages.show(request, "plan-form", with);
    }

    private void numbers(Context request) {
        PlanForm form = formOf(pages.find(request), Form.asked(request));
        NumbersView numbers = NumbersView.of(known(form));
        Optional<PlanKind> kind = form.kinds().stream()
                .filter(it -> Integer.toString(it.index()).equals(request.queryParam("kind")))
                .findFirst();
        if (kind.isPresent()) {
            Pages.show(
                    request,
                    "plan-numbers",
                    Map.of("numbers", numbers, "form", form, "kind", kind.get(), "isLive", true));
        } else {
            Pages.show(request, "plan-cost", Map.of("numbers", numbers));
        }
    }

    private List<PlanNumbers.Known> known(PlanForm form) {
        PlanNumbers numbers = new PlanNumbers(workspace, form);
        return form.kinds().stream()
                .filter(kind -> form.number(kind.field("n"), 0) > 0)
                .map(numbers::of)
                .flatMap(Optional::stream)
                .toList();
    }

    private PlanForm formOf(StudyName study, Form sent) {
        Optional<Plan> plan = workspace.plans().of(study).plan();
        List<Claim.Question> questions = workspace.plans().questions(study);
        List<PlanKind> kinds = kinds(study, plan, questions);
        String control = questions.stream()
                .flatMap(it -> it.asked().said(Asked.Term.CONTROL).stream())
                .findFirst()
                .orElse("plain");
        return PlanForm.of(study, sent, PlanForm.begun(plan, kinds, control), kinds);
    }

    /** Those of the plan, then those that claims ask for beside. */
    private List<PlanKind> kinds(
            StudyName study, Optional<Plan> plan, List<Claim.Question> questions) {
        List<Series> series = new ArrayList<>(plan.map(Plan::series).orElse(List.of()));
        if (!questions.isEmpty()) {
            workspace.plans().seriesForClaims(study, 6, 0).stream()
                    .filter(asked -> series.stream()
                            .noneMatch(it -> it.method().equals(asked.method())
                                    && it.orientation() == asked.orientation()))
                    .filter(asked ->
                            series.stream().noneMatch(it -> it.name().equals(asked.name())))
                    .toList()
                    .forEach(series::add);
        }
        List<PlanKind> kinds = new ArrayList<>();
        for (Series each : series) {
            List<Claim.Question> answered = questions.stream()
                    .filter(it -> it.method().equals(each.method()))
                    .filter(it -> it.asked()
                            .where()
                            .getOrDefault("orientation", each.orientation().word())
                            .equals(each.orientation().word()))
                    .toList();
            kinds.add(new PlanKind(
                    kinds.size(), each, title(each.method()), scale(each, answered), answered));
        }
        return kinds;
    }

    private Property.Scale scale(Series series, List<Claim.Question> questions) {
        return workspace
                .methods()
                .named(series.method())
                .map(TestMethod::description)
                .flatMap(it -> questions.stream()
                        .findFirst()
                        .flatMap(asked -> it.property(asked.asked().property()))
                        .or(() -> it.properties().stream().findFirst()))
                .map(Property::scale)
                .orElse(Property.Scale.RATIO);
    }

    private String title(String method) {
        return workspace
                .methods()
                .named(method)
                .map(it -> it.description().title())
                .orElse(method);
    }

    private void keep(Context request) {
        StudyName study = pages.find(request);
        PlanForm form = formOf(study, Form.of(request));
        if (!PlanForm.isSent(form.form()) || form.kinds().isEmpty()) {
            form.trouble("act", "the form was not whole; open the page again");
        }
        List<Plan.NumberReason> reasons = new ArrayList<>();
        known(form).forEach(it -> it.reason().ifPresent(reasons::add));
        Optional<Plan> plan = form.plan(reasons);
        if (plan.isPresent()) {
            try {
                workspace
                        .plans()
                        .keep(
                                new Act(MarkPages.identity(form.form()), Words.WHO),
                                study,
                                plan.get(),
                                form.form().said("why"));
                request.redirect(Links.plan(study), HttpStatus.SEE_OTHER);
                return;
            } catch (InputException e) {
                form.trouble("why", Words.sentence(e));
            }
        }
        request.status(400);
        show(request, form);
    }

    /**
     * What is wrong with a form on the page of a plan.
     *
     * @param where the form that it belongs to
     */
    public record Trouble(String where, String sentence) {
        static final Trouble NONE = new Trouble("", "");

        public String of(String form) {
            return where.equals(form) ? sentence : "";
        }
    }

    private void show(Context request, StudyName study, Trouble trouble, Form form) {
        boolean groups = form.is("groups", "shown");
        Making making = groups
                ? workspace.plans().forTreating(study)
                : workspace.plans().of(study);
        Map<String, Object> with = new LinkedHashMap<>();
        with.put("study", study);
        with.put("view", new PlanView(study, making, form, this::title));
        with.put("tests", tests(study, making));
        with.put("act", UUID.randomUUID().toString());
        with.put("trouble", trouble);
        with.put("form", form);
        with.put("groups", groups);
        Pages.show(request, "plan", with);
    }

    /**
     * A test of a plan.
     *
     * @param progress how far it is; empty where it was not begun
     */
    public record Test(String method, String title, int specimens, String progress) {}

    private List<Test> tests(StudyName study, Making making) {
        List<RigPages.Begun> begun = RigPages.begun(workspace, study);
        return making.plan().orElseThrow().series().stream()
                .map(Series::method)
                .distinct()
                .map(method -> new Test(
                        method,
                        title(method),
                        making.of(method).size(),
                        begun.stream()
                                .filter(it -> it.method().equals(method))
                                .map(RigPages.Begun::progress)
                                .findFirst()
                                .orElse("")))
                .toList();
    }

    /** Returns what departed, and why. */
    public static String sentence(Change change) {
        return "%s: %s (%s).".formatted(Links.time(change.when()), change.what(), change.why());
    }

    private interface Doing {
        void with(StudyName study, Form form, Act act);
    }

    /** Does what a form of the plan's page asks, and shows the page: anew, or with its trouble. */
    private void act(Context request, String where, Doing doing) {
        StudyName study = pages.find(request);
        Form form = Form.of(request);
        try {
            doing.with(study, form, new Act(MarkPages.identity(form), Words.WHO));
            request.redirect(Links.plan(study) + "#" + where, HttpStatus.SEE_OTHER);
        } catch (InputException e) {
            request.status(400);
            if (workspace.plans().of(study).plan().isPresent()) {
                show(request, study, new Trouble(where, Words.sentence(e)), form);
            } else {
                throw e;
            }
        }
    }

    private void seal(Context request) {
        act(request, "seal", (study, form, act) -> workspace.plans().seal(act, study));
    }

    private void openKey(Context request) {
        act(
                request,
                "key",
                (study, form, act) -> workspace.plans().openKey(act, study, form.said("why")));
    }

    private void pilots(Context request) {
        act(request, "pilots", (study, form, act) -> {
            List<Double> values = new ArrayList<>();
            for (String value : form.text("values").split("[;\\s]+")) {
                try {
                    values.add(Quantity.parse(value).value());
                } catch (QuantityException e) {
                    throw new InputException(String.valueOf(e.getMessage()));
                }
            }
            workspace
                    .plans()
                    .pilots(
                            act,
                            study,
                            form.text("series"),
                            form.said("what")
                                    .orElseThrow(() -> new InputException(
                                            "say what was read, such as strength in MPa")),
                            values);
        });
    }

    private void repeat(Context request) {
        StudyName study = pages.find(request);
        Form form = Form.of(request);
        try {
            String change = form.said("change")
                    .orElseThrow(() -> new InputException("say in a few words what is changed"));
            StudyName repeated = workspace
                    .plans()
                    .repeat(
                            new Act(MarkPages.identity(form), Words.WHO),
                            study,
                            new StudyFile.Head(
                                    form.said("name")
                                            .orElse(Words.slug(study.name() + " " + change)),
                                    study.question(),
                                    "As %s, but: %s".formatted(study.name(), change),
                                    study.origin() == JudgedStudy.Origin.INVENTED
                                            ? JudgedStudy.Origin.INVENTED
                                            : JudgedStudy.Origin.MEASURED));
            request.redirect(Links.plan(repeated) + "/form", HttpStatus.SEE_OTHER);
        } catch (InputException e) {
            request.status(400);
            if (workspace.plans().of(study).plan().isEmpty()) {
                throw e;
            }
            show(request, study, new Trouble("repeat", Words.sentence(e)), form);
        }
    }
}
