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
import org.twinbar.study.FieldException;
import org.twinbar.study.Filled;
import org.twinbar.study.KeptRecipe;
import org.twinbar.study.RecipeAsk;
import org.twinbar.study.RecipeKind;
import org.twinbar.study.RecipeSheet;
import org.twinbar.study.Recipes;
import org.twinbar.study.Workspace;

/**
 * "What do we treat with?": recipes and materials that any study may use, each a form that is made
 * from what its kind asks for; decided there: which to look at, to add one, to write one anew.
 */
final class RecipePages {

    private final Recipes recipes;

    RecipePages(Workspace workspace) {
        this.recipes = workspace.recipes();
    }

    void routes(RoutesConfig routes) {
        routes.get("/recipes", this::list);
        routes.get("/recipes/new", request -> form(request, Optional.empty(), Form.asked(request)));
        routes.post("/recipes", this::add);
        routes.get("/recipes/{recipe}", this::one);
        routes.post("/recipes/{recipe}", this::change);
    }

    private void list(Context request) {
        Map<RecipeKind, List<KeptRecipe>> byKind = new LinkedHashMap<>();
        for (RecipeKind kind : RecipeKind.values()) {
            byKind.put(kind, recipes.all(kind));
        }
        Pages.show(request, "recipes", Map.of("recipes", byKind));
    }

    /** Returns a form with what a recipe says, beside what stands in it already. */
    static Form filled(Form form, RecipeSheet sheet) {
        Form more = form.with("kind", sheet.kind().word());
        for (RecipeAsk ask : sheet.kind().asks()) {
            Optional<String> said = sheet.filled().said(ask.key());
            if (said.isPresent()) {
                more = more.with(ask.key(), said.get());
            }
        }
        return more;
    }

    private void one(Context request) {
        KeptRecipe kept = find(request);
        form(
                request,
                Optional.of(kept),
                filled(Form.EMPTY, kept.sheet()).with("name", kept.sheet().name()));
    }

    private void form(Context request, Optional<KeptRecipe> kept, Form form) {
        show(request, kept, form, Amiss.NOTHING);
    }

    private void show(Context request, Optional<KeptRecipe> kept, Form form, Amiss amiss) {
        RecipeKind kind = kept.map(it -> it.sheet().kind())
                .or(() -> RecipeKind.of(form.text("kind")))
                .orElse(RecipeKind.MIX);
        Map<String, Object> with = new LinkedHashMap<>();
        with.put("kept", kept);
        with.put("kind", kind);
        with.put("form", form);
        with.put("amiss", amiss);
        with.put("act", UUID.randomUUID().toString());
        Pages.show(request, "recipe", with);
    }

    private void add(Context request) {
        Form form = Form.of(request);
        try {
            recipes.add(Acts.by(form), sheet(form));
            request.redirect("/recipes", HttpStatus.SEE_OTHER);
        } catch (FieldException | InputException e) {
            request.status(400);
            show(request, Optional.empty(), form, Amiss.of(e));
        }
    }

    private static RecipeSheet sheet(Form form) {
        return new RecipeSheet(
                RecipeKind.of(form.text("kind"))
                        .orElseThrow(() -> new InputException("choose what it is")),
                form.text("name"),
                new Filled(form.fields()));
    }

    private void change(Context request) {
        KeptRecipe kept = find(request);
        Form form = Form.of(request);
        try {
            recipes.change(
                    Acts.by(form),
                    kept.id(),
                    sheet(form.with("kind", kept.sheet().kind().word())),
                    form.text("why"));
            request.redirect("/recipes", HttpStatus.SEE_OTHER);
        } catch (FieldException | InputException e) {
            request.status(400);
            show(request, Optional.of(kept), form, Amiss.of(e));
        }
    }

    private KeptRecipe find(Context request) {
        return recipes.all().stream()
                .filter(each -> each.id().toString().equals(request.pathParam("recipe")))
                .findFirst()
                .orElseThrow(() -> Refusal.notFound("There is no such recipe in this workspace."));
    }
}
