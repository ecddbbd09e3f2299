package org.twinbar.web;

import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import org.twinbar.exchange.InputException;
import org.twinbar.picture.View;
import org.twinbar.report.Written;
import org.twinbar.study.Act;
import org.twinbar.study.Picturing;
import org.twinbar.study.Typed;
import org.twinbar.study.TypedReading;
import org.twinbar.study.TypedReading.Doubt;
import org.twinbar.study.TypedTest;
import org.twinbar.study.Workspace;
import org.twinbar.study.judged.StudyName;
import org.twinbar.study.picture.FilmSheet;
import org.twinbar.study.picture.PictureSheet;

/**
 * Measuring on a picture or a film. The browser opens the file and sends places alone; what they
 * come to is reckoned here, once, and what is kept is reckoned again from the places.
 */
final class PicturePages {

    /** The file is shown from where the browser has it, and from nowhere else. */
    private static final String POLICY =
            Guard.POLICY.replace("img-src 'self' data:;", "img-src 'self' data: blob:;")
                    + "; media-src blob:";

    private static final JsonMapper JSON = new JsonMapper();

    private final Workspace workspace;
    private final Function<Context, String> who;
    private final RigPages pages;

    PicturePages(Workspace workspace, Function<Context, String> who, RigPages pages) {
        this.workspace = workspace;
        this.who = who;
        this.pages = pages;
    }

    void routes(RoutesConfig routes) {
        String picture = "/studies/{study}/rig/{method}/picture";
        routes.get(picture, this::page);
        routes.get(picture + "/columns", this::columns);
        routes.post(picture + "/looks", this::looks);
        routes.post(picture + "/readings", this::reading);
        routes.post(picture + "/curve", this::curve);
    }

    private void page(Context request) {
        StudyName study = pages.study(request);
        String method = pages.method(request);
        TypedTest test = workspace.typing().test(study, method);
        String wanted = Optional.ofNullable(request.queryParam("specimen")).orElse("");
        Optional<TypedTest.Specimen> found = test.specimen(wanted);
        if (found.isEmpty() && !wanted.isEmpty()) {
            throw Refusal.notFound("The %s test has no specimen '%s'.".formatted(method, wanted));
        }
        TypedTest.Specimen specimen = found.orElseGet(() -> test.specimens().get(0));
        request.header("Content-Security-Policy", POLICY);
        Pages.show(
                request,
                "rig/picture",
                Map.of(
                        "study", study,
                        "method", method,
                        "test", test,
                        "columns", columns(study, method, test, specimen),
                        "home", pages.home(),
                        "short5", shortened(5),
                        "short10", shortened(10)));
    }

    private static String shortened(double deg) {
        return Written.number(100 * View.foreshortening(deg), 2) + " %";
    }

    private void columns(Context request) {
        StudyName study = pages.study(request);
        String method = pages.method(request);
        TypedTest test = workspace.typing().test(study, method);
        String wanted = Optional.ofNullable(request.queryParam("specimen")).orElse("");
        TypedTest.Specimen specimen = wanted.isEmpty()
                ? test.specimens().get(0)
                : test.specimen(wanted)
                        .orElseThrow(() -> Refusal.notFound(
                                "The %s test has no specimen '%s'.".formatted(method, wanted)));
        Pages.show(
                request,
                "rig/picture-columns",
                Map.of("columns", columns(study, method, test, specimen)));
    }

    private PictureColumns columns(
            StudyName study, String method, TypedTest test, TypedTest.Specimen specimen) {
        return PictureColumns.of(
                test, specimen, workspace.picturing().room(study, method, specimen.code()));
    }

    private void looks(Context request) {
        json(request, PictureAnswer.of(sheet(request)));
    }

    /** The places are longer than any field that somebody types. */
    private static PictureSheet sheet(Context request) {
        return PictureSheet.read(Optional.ofNullable(request.formParam("sheet")).orElse(""));
    }

    /** What every form of the page says, the places aside. */
    private record Sent(
            Act act,
            String specimen,
            Optional<UUID> seen,
            Optional<String> why,
            Doubt doubt,
            String which,
            String column) {}

    private Sent sent(Context request) {
        return new Sent(
                new Act(uuid(said(request, "act").orElse("")), who.apply(request)),
                said(request, "specimen").orElse(""),
                said(request, "seen").map(PicturePages::uuid),
                said(request, "why"),
                said(request, "confirmed").isPresent() ? Doubt.CONFIRMED : Doubt.ASK,
                said(request, "which").orElse(""),
                said(request, "column").orElse(""));
    }

    private static Optional<String> said(Context request, String field) {
        return Optional.ofNullable(request.formParam(field))
                .map(String::strip)
                .filter(text -> !text.isEmpty());
    }

    private static UUID uuid(String text) {
        try {
            return UUID.fromString(text);
        } catch (IllegalArgumentException e) {
            throw Refusal.badRequest("The form was not whole; load the page again.");
        }
    }

    private void reading(Context request) {
        StudyName study = pages.study(request);
        String method = pages.method(request);
        Sent sent = sent(request);
        PictureSheet.Measured measured = measured(sheet(request), sent.which());
        TypedTest.Field field = workspace
                .typing()
                .test(study, method)
                .field(sent.column())
                .filter(it -> it.unit().measuresSameAs(measured.unit()))
                .orElseThrow(() -> Refusal.badRequest("Choose what %s is of the specimen."
                        .formatted(PictureColumns.measures(measured.unit()))));
        String text = PictureAnswer.typed(measured, field.unit());
        Typed typed = workspace
                .typing()
                .enter(
                        sent.act(),
                        study,
                        new TypedReading(
                                method,
                                sent.specimen(),
                                sent.column(),
                                text,
                                sent.seen(),
                                sent.why(),
                                sent.doubt(),
                                Optional.empty(),
                                Optional.of(measured.how())));
        String kept = "%s %s is kept as %s of %s."
                .formatted(text, field.unit().symbol(), field.label(), sent.specimen());
        answer(request, typed, kept, text + " " + field.unit().symbol());
    }

    private static PictureSheet.Measured measured(PictureSheet sheet, String which) {
        String[] parts = which.split(":", 2);
        if (parts.length == 2 && parts[1].matches("\\d{1,4}")) {
            int number = Integer.parseInt(parts[1]);
            Optional<FilmSheet> film = sheet.film().filter(it -> number < it.marks());
            if (parts[0].equals("figure") && number < sheet.figures()) {
                return sheet.figure(number);
            } else if (parts[0].equals("temperature") && film.isPresent()) {
                return film.get().temperature(number);
            } else if (parts[0].equals("time") && film.isPresent()) {
                return film.get().elapsed(number);
            }
        }
        throw Refusal.badRequest("That was not measured on the picture; load the page again.");
    }

    private void curve(Context request) {
        StudyName study = pages.study(request);
        String method = pages.method(request);
        Sent sent = sent(request);
        FilmSheet film = sheet(request)
                .film()
                .orElseThrow(() -> new InputException("a curve is followed on a film"));
        FilmSheet.Followed followed = film.followed();
        Typed typed = workspace
                .picturing()
                .keep(
                        sent.act(),
                        new Picturing.Wanted(
                                study, method, sent.specimen(), sent.seen(), sent.why()),
                        followed);
        answer(
                request,
                typed,
                "The curve of %s rows is kept as that of %s."
                        .formatted(followed.rows().size(), sent.specimen()),
                "this curve");
    }

    private static void answer(Context request, Typed typed, String kept, String mine) {
        ObjectNode json = JSON.createObjectNode();
        if (typed instanceof Typed.Saved saved) {
            json.put("state", "saved").put("sentence", kept);
            saved.entry().ifPresent(entry -> json.put("entry", entry.toString()));
        } else if (typed instanceof Typed.Doubted doubted) {
            json.put("state", "doubted").put("sentence", doubted.sentence() + " Does it stay?");
        } else if (typed instanceof Typed.WhyAsked why) {
            json.put("state", "why")
                    .put(
                            "sentence",
                            "%s takes the place of %s. Why?".formatted(mine, why.before()));
        } else if (typed instanceof Typed.Conflict conflict) {
            String theirs = conflict.theirs().isBlank() ? "nothing" : conflict.theirs();
            json.put("state", "conflict")
                    .put(
                            "sentence",
                            "Meanwhile %s entered %s there; you measured %s. Which is right?"
                                    .formatted(conflict.who(), theirs, mine));
            conflict.entry().ifPresent(entry -> json.put("entry", entry.toString()));
        }
        json(request, json.toString());
    }

    private static void json(Context request, String json) {
        request.contentType("application/json; charset=utf-8").result(json);
    }
}
