package org.twinbar.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import org.twinbar.decision.LeftOut;
import org.twinbar.exchange.InputException;
import org.twinbar.study.Act;
import org.twinbar.study.Typed;
import org.twinbar.study.TypedReading;
import org.twinbar.study.TypedReading.Doubt;
import org.twinbar.study.Typing;
import org.twinbar.study.Workspace;
import org.twinbar.study.judged.StudyName;
import org.twinbar.study.table.Upload;
import org.twinbar.web.RigField.Ask;

/**
 * What is entered at the rig. A script sends forms one after the other and gets back the parts of
 * the page that changed; without one, a form leads to the page again.
 */
final class RigEntries {

    /** Says that a script sent the form, and that an answer is for it. */
    static final String PART = "X-Twinbar-Part";

    /** What stands before the identity of an act whose entry a form has not seen yet. */
    private static final String ACT = "act:";

    private final Workspace workspace;
    private final Function<Context, String> who;
    private final RigPages pages;

    RigEntries(Workspace workspace, Function<Context, String> who, RigPages pages) {
        this.workspace = workspace;
        this.who = who;
        this.pages = pages;
    }

    void routes(RoutesConfig routes) {
        routes.post("/studies/{study}/rig/{method}/readings", this::reading);
        routes.post("/studies/{study}/rig/{method}/undo", this::undo);
        routes.post("/studies/{study}/rig/{method}/photos", this::photo);
        routes.post("/studies/{study}/rig/{method}/left-out", this::leaveOut);
        routes.post("/studies/{study}/rig/{method}/counts", this::count);
    }

    private void reading(Context request) {
        Sent sent = sent(request);
        Form form = sent.form();
        TypedReading reading = new TypedReading(
                sent.method(),
                sent.specimen(),
                form.text("column"),
                form.text("text"),
                seen(form),
                form.said("why").or(() -> form.said("other")),
                form.is("confirmed", "yes") ? Doubt.CONFIRMED : Doubt.ASK,
                noted(form));
        try {
            Typed typed = workspace.typing().enter(act(request, form), sent.study(), reading);
            answer(request, sent, reading.column(), ask(typed, reading));
        } catch (InputException e) {
            answer(
                    request,
                    sent,
                    reading.column(),
                    Optional.of(new Asked(
                            400,
                            Optional.empty(),
                            new Ask(Ask.Kind.REFUSED, Words.sentence(e), "", false))));
        }
    }

    /** What is to be answered, and the entry that the form has seen with it. */
    private record Asked(int status, Optional<UUID> sees, Ask ask) {}

    private static Optional<Asked> ask(Typed typed, TypedReading reading) {
        boolean confirmed = reading.doubt() == Doubt.CONFIRMED;
        if (typed instanceof Typed.Doubted doubted) {
            return Optional.of(new Asked(
                    422,
                    reading.seen(),
                    new Ask(Ask.Kind.DOUBTED, doubted.sentence() + " Does it stay?", "", false)));
        }
        if (typed instanceof Typed.WhyAsked why) {
            String sentence = reading.text().isEmpty()
                    ? "%s is taken away. Why?".formatted(why.before())
                    : "%s takes the place of %s. Why?".formatted(reading.text(), why.before());
            return Optional.of(new Asked(
                    422, reading.seen(), new Ask(Ask.Kind.WHY, sentence, why.before(), confirmed)));
        }
        if (typed instanceof Typed.Conflict conflict) {
            String theirs = conflict.theirs().isBlank() ? "nothing" : conflict.theirs();
            return Optional.of(new Asked(
                    409,
                    conflict.entry(),
                    new Ask(
                            Ask.Kind.CONFLICT,
                            "Meanwhile %s entered %s here; you typed %s. Which is right?"
                                    .formatted(conflict.who(), theirs, reading.text()),
                            theirs,
                            confirmed)));
        }
        return Optional.empty();
    }

    private void undo(Context request) {
        Sent sent = sent(request);
        String column = sent.form().text("column");
        UUID seen = seen(sent.form())
                .orElseThrow(() -> Refusal.badRequest("There is nothing to undo here."));
        Typed typed = workspace
                .typing()
                .undo(
                        act(request, sent.form()),
                        sent.study(),
                        sent.method(),
                        sent.specimen(),
                        column,
                        seen);
        if (typed instanceof Typed.Conflict conflict) {
            String sentence = "Nothing was undone: meanwhile %s entered %s."
                    .formatted(conflict.who(), conflict.theirs());
            answer(
                    request,
                    sent,
                    column,
                    Optional.of(new Asked(
                            409,
                            conflict.entry(),
                            new Ask(Ask.Kind.REFUSED, sentence, conflict.theirs(), false))));
        } else {
            answer(request, sent, column, Optional.empty());
        }
    }

    private void photo(Context request) {
        Sent sent = sent(request);
        UploadedFile file = Optional.ofNullable(request.uploadedFile("photo"))
                .filter(it -> !it.filename().isBlank())
                .orElseThrow(() -> Refusal.badRequest("Choose or take a photo first."));
        try (InputStream content = file.content()) {
            workspace
                    .typing()
                    .photo(
                            act(request, sent.form()),
                            sent.study(),
                            sent.method(),
                            sent.specimen(),
                            Upload.of(file.filename(), content.readAllBytes()),
                            noted(sent.form()),
                            sent.form().text("words"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        answer(request, sent, "", Optional.empty());
    }

    private void leaveOut(Context request) {
        Sent sent = sent(request);
        LeftOut.Sight sight;
        try {
            sight = LeftOut.Sight.valueOf(sent.form().text("sight"));
        } catch (IllegalArgumentException e) {
            throw Refusal.badRequest("Say whether the specimen's value had been seen by then.");
        }
        workspace.leaveOut(
                act(request, sent.form()),
                sent.study(),
                sent.method(),
                sent.specimen(),
                sight,
                why(sent.form()));
        answer(request, sent, "", Optional.empty());
    }

    private void count(Context request) {
        Sent sent = sent(request);
        workspace.takeBack(
                act(request, sent.form()),
                sent.study(),
                sent.method(),
                sent.specimen(),
                why(sent.form()));
        answer(request, sent, "", Optional.empty());
    }

    private static String why(Form form) {
        return form.said("why").orElseThrow(() -> Refusal.badRequest("Say why."));
    }

    /** What every form of the rig says. */
    private record Sent(StudyName study, String method, String specimen, Form form) {}

    private Sent sent(Context request) {
        Form form = Form.of(request);
        StudyName study = pages.study(request);
        String method = pages.method(request);
        String specimen = form.text("specimen");
        if (workspace.typing().test(study, method).specimen(specimen).isEmpty()) {
            throw Refusal.badRequest(
                    "The %s test has no specimen '%s'.".formatted(method, specimen));
        }
        return new Sent(study, method, specimen, form);
    }

    private void answer(Context request, Sent sent, String column, Optional<Asked> asked) {
        RigView fresh = pages.view(sent.study(), sent.method(), sent.specimen());
        Optional<RigField> field = fresh.one()
                .field(column)
                .map(it -> asked.map(question -> it.asking(
                                sent.form().text("text"), question.sees(), question.ask()))
                        .orElse(it));
        asked.ifPresent(question -> request.status(question.status()));
        RigView view = field.map(fresh::with).orElse(fresh);
        if (request.header(PART) != null) {
            request.header(PART, "rig");
            Map<String, Object> with = new HashMap<>();
            with.put("view", view);
            with.put("one", view.one());
            with.put("field", field);
            with.put("trouble", "");
            Pages.show(request, "rig/changed", with);
        } else if (asked.isEmpty()) {
            String place = field.map(it -> "#" + it.id()).orElse("");
            request.redirect(Links.at(view.rig(), sent.specimen()) + place, HttpStatus.SEE_OTHER);
        } else {
            // A field that the test doesn't have can't say so beside itself.
            pages.show(request, view, field.isPresent() ? "" : asked.get().ask().sentence());
        }
    }

    private Act act(Context request, Form form) {
        return new Act(uuid(form.text("act")), who.apply(request));
    }

    private static Optional<UUID> seen(Form form) {
        return form.said("seen")
                .map(seen -> seen.startsWith(ACT)
                        ? Typing.entryOf(uuid(seen.substring(ACT.length())))
                        : uuid(seen));
    }

    private static UUID uuid(String text) {
        try {
            return UUID.fromString(text);
        } catch (IllegalArgumentException e) {
            throw Refusal.badRequest("The form was not whole; load the page again.");
        }
    }

    private static Optional<Instant> noted(Form form) {
        try {
            return form.said("noted").map(Instant::parse);
        } catch (DateTimeException e) {
            throw Refusal.badRequest("'%s' is not a time.".formatted(form.text("noted")));
        }
    }
}
