package org.twinbar.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.ZonedDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.twinbar.exchange.InputException;
import org.twinbar.study.Act;
import org.twinbar.study.PhotoKind;
import org.twinbar.study.Workspace;
import org.twinbar.study.judged.Making;
import org.twinbar.study.judged.Photo;
import org.twinbar.study.judged.Registered;
import org.twinbar.study.judged.Registered.Fate;
import org.twinbar.study.judged.Registered.Measured;
import org.twinbar.study.judged.Registered.Moment;
import org.twinbar.study.judged.Registered.Step;
import org.twinbar.study.judged.StudyName;
import org.twinbar.study.table.Upload;

/**
 * What was done to the specimens of a plan: the list with the state of each, and one specimen with
 * its dates, dimensions, masses, photos and fate, for one hand at the printer or the bench.
 */
final class RegisterPages {

    private final Workspace workspace;
    private final StudyPages pages;

    RegisterPages(Workspace workspace, StudyPages pages) {
        this.workspace = workspace;
        this.pages = pages;
    }

    void routes(RoutesConfig routes) {
        routes.get("/studies/{study}/register", it -> list(it, "", Form.EMPTY));
        routes.post("/studies/{study}/register", this::doneToMany);
        routes.get("/studies/{study}/register/{code}", it -> one(it, "", "", Form.asked(it)));
        routes.get("/studies/{study}/register/{code}/measured", this::live);
        routes.get("/studies/{study}/register/{code}/photos/{photo}", this::photo);
        routes.post("/studies/{study}/register/{code}/done", this::doneToOne);
        routes.post("/studies/{study}/register/{code}/measured", this::measured);
        routes.post("/studies/{study}/register/{code}/photos", this::keepPhoto);
        routes.post("/studies/{study}/register/{code}/fate", this::fate);
    }

    private void list(Context request, String trouble, Form form) {
        StudyName study = pages.find(request);
        Map<String, Object> with = new LinkedHashMap<>();
        with.put("view", new RegisterView(study, workspace.plans().of(study), form));
        with.put("trouble", trouble);
        with.put("act", UUID.randomUUID().toString());
        Pages.show(request, "register", with);
    }

    private void one(Context request, String where, String trouble, Form form) {
        StudyName study = pages.find(request);
        Making making = workspace.plans().of(study);
        Registered one = find(request, making);
        Map<String, Object> with = new LinkedHashMap<>();
        with.put("view", new RegisteredView(study, making, one, form));
        with.put("trouble", new PlanPages.Trouble(where, trouble));
        with.put("form", form);
        with.put("act", UUID.randomUUID().toString());
        Pages.show(request, "registered", with);
    }

    private static Registered find(Context request, Making making) {
        return making.madeAs(request.pathParam("code"))
                .orElseThrow(() -> Refusal.notFound(
                        "The plan has no specimen '%s'.".formatted(request.pathParam("code"))));
    }

    private void doneToMany(Context request) {
        StudyName study = pages.find(request);
        Form form = Form.of(request);
        try {
            List<String> codes = codes(study, request, form);
            workspace
                    .register()
                    .done(act(form), study, codes, step(form), when(form), form.text("what"));
            request.redirect(Links.register(study), HttpStatus.SEE_OTHER);
        } catch (InputException e) {
            request.status(400);
            list(request, Words.sentence(e), form);
        }
    }

    /** Whoever treats may choose by group, though the list shows none. */
    private List<String> codes(StudyName study, Context request, Form form) {
        String which = form.text("which");
        List<Registered> all = workspace.plans().forTreating(study).made();
        if (all.isEmpty()) {
            throw new InputException("the study has no plan yet, so it has no specimens");
        }
        if (which.equals(RegisterView.TICKED)) {
            return request.formParams("code");
        }
        return all.stream()
                .filter(it -> it.fate().kind().waits())
                .filter(it -> RegisterView.isOf(it, which))
                .map(Registered::code)
                .toList();
    }

    private interface Doing {
        void with(StudyName study, String code, Form form);
    }

    /** Does what a form asks of one specimen, and shows it: anew, or with what was wrong. */
    private void act(Context request, String where, Doing doing) {
        StudyName study = pages.find(request);
        String code = find(request, workspace.plans().of(study)).code();
        Form form = Form.of(request);
        try {
            doing.with(study, code, form);
            String moment = form.said("moment")
                    .filter(Moment.AFTER.word()::equals)
                    .map(it -> "?moment=" + it)
                    .orElse("");
            request.redirect(
                    Links.registered(study, code) + moment + "#" + where, HttpStatus.SEE_OTHER);
        } catch (InputException e) {
            request.status(400);
            one(request, where, Words.sentence(e), form);
        }
    }

    private void doneToOne(Context request) {
        act(
                request,
                "done",
                (study, code, form) -> workspace
                        .register()
                        .done(
                                act(form),
                                study,
                                List.of(code),
                                step(form),
                                when(form),
                                form.text("what")));
    }

    private void measured(Context request) {
        act(
                request,
                form(request, "quantity", "sizes"),
                (study, code, form) -> workspace
                        .register()
                        .measured(act(form), study, code, read(form), form.said("why")));
    }

    private static String form(Context request, String field, String otherwise) {
        String said = request.formParam(field);
        return said == null || said.isBlank() ? otherwise : said;
    }

    private void live(Context request) {
        find(request, workspace.plans().of(pages.find(request)));
        Form form = Form.asked(request);
        String words;
        try {
            words = RegisteredView.told(read(form));
        } catch (InputException e) {
            words = form.fields().isEmpty() ? "Nothing was measured yet." : Words.sentence(e);
        }
        Pages.show(request, "told", Map.of("sentence", words));
    }

    private static Measured read(Form form) {
        return RegisteredView.read(form, moment(form));
    }

    private static Moment moment(Form form) {
        return form.is("moment", Moment.AFTER.word()) ? Moment.AFTER : Moment.BEFORE;
    }

    private void keepPhoto(Context request) {
        act(request, "photos", (study, code, form) -> {
            UploadedFile file = Optional.ofNullable(
                            request.isMultipart() ? request.uploadedFile("photo") : null)
                    .filter(it -> !it.filename().isBlank())
                    .orElseThrow(() -> new InputException("choose or take a photo first"));
            try (InputStream content = file.content()) {
                Upload photo = Upload.of(file.filename(), content.readAllBytes());
                workspace
                        .register()
                        .photo(act(form), study, code, photo, Optional.empty(), form.text("words"));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
    }

    private void photo(Context request) {
        Registered one = find(request, workspace.plans().of(pages.find(request)));
        byte[] bytes = one.photos().stream()
                .map(Photo::file)
                .filter(it -> it.sha256().equals(request.pathParam("photo")))
                .findFirst()
                .map(workspace::bytes)
                .orElseThrow(RegisterPages::noPhoto);
        // What is named by its digest never changes; others on the machine must not find it.
        request.header("Cache-Control", "private, max-age=86400, immutable");
        request.contentType(PhotoKind.find(bytes)
                        .map(PhotoKind::type)
                        .orElseThrow(RegisterPages::noPhoto))
                .result(bytes);
    }

    private static Refusal noPhoto() {
        return Refusal.notFound("The specimen has no such photo.");
    }

    private void fate(Context request) {
        act(
                request,
                "fate",
                (study, code, form) -> workspace
                        .register()
                        .fate(act(form), study, code, fate(form), form.text("why")));
    }

    private static Act act(Form form) {
        return new Act(MarkPages.identity(form), Words.WHO);
    }

    private static Step step(Form form) {
        return named(Step.class, form.text("step"), "say what was done");
    }

    private static Fate.Kind fate(Form form) {
        return named(Fate.Kind.class, form.text("fate"), "say what became of it");
    }

    private static <E extends Enum<E>> E named(Class<E> kind, String word, String otherwise) {
        try {
            return Enum.valueOf(kind, word.toUpperCase(Locale.ROOT));
        } catch (IllegalArgumentException e) {
            throw new InputException(otherwise);
        }
    }

    private Optional<ZonedDateTime> when(Form form) {
        try {
            return form.said("when")
                    .map(it -> LocalDateTime.parse(it.replace(' ', 'T'))
                            .atZone(workspace.treating().now().getZone()));
        } catch (DateTimeException e) {
            throw new InputException(
                    "'%s' is not a time such as 2026-05-04 18:30".formatted(form.text("when")));
        }
    }
}
