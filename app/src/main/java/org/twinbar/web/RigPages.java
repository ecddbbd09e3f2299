package org.twinbar.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.twinbar.study.PhotoKind;
import org.twinbar.study.TypedTest;
import org.twinbar.study.Workspace;
import org.twinbar.study.judged.KeptFile;
import org.twinbar.study.judged.Photo;
import org.twinbar.study.judged.StudyName;

/** What somebody with a phone at the rig sees: a test, one specimen after the other. */
public final class RigPages {

    private final Workspace workspace;
    private final From from;
    private final RigEntries entries;
    private final PicturePages pictures;

    /** Where the pages are looked at. */
    enum From {
        /** This machine, where the study's own page is a link away. */
        DESK,
        /** A phone that was let in, for which there is nothing else. */
        PHONE
    }

    /** @param who acts in a request, as they named themselves */
    RigPages(Workspace workspace, Function<Context, String> who, From from) {
        this.workspace = workspace;
        this.from = from;
        this.entries = new RigEntries(workspace, who, this);
        this.pictures = new PicturePages(workspace, who, this);
    }

    /** A test and how far it is. */
    public record Begun(String method, String title, String progress) {}

    void routes(RoutesConfig routes) {
        routes.get("/rig", this::studies);
        routes.get("/studies/{study}/rig", this::tests);
        routes.get("/studies/{study}/rig/{method}", this::test);
        routes.get("/studies/{study}/rig/{method}/result", this::result);
        routes.get("/studies/{study}/rig/{method}/photos/{photo}", this::photo);
        entries.routes(routes);
        pictures.routes(routes);
    }

    /** Returns where a person came from. */
    String home() {
        return from == From.DESK ? "/" : "/rig";
    }

    private void studies(Context request) {
        Pages.show(request, "rig/studies", Map.of("studies", workspace.studies()));
    }

    private void tests(Context request) {
        StudyName study = study(request);
        List<Begun> tests = begun(workspace, study);
        String wanted = Optional.ofNullable(request.queryParam("specimen")).orElse("");
        List<String> those = tests.stream()
                .map(Begun::method)
                .filter(method -> tests.size() == 1 || has(study, method, wanted))
                .toList();
        if (!those.isEmpty()) {
            String rig = Links.rig(study, those.get(0));
            request.redirect(wanted.isBlank() ? rig : Links.at(rig, wanted), HttpStatus.SEE_OTHER);
        } else {
            Pages.show(request, "rig/tests", Map.of("study", study, "tests", tests));
        }
    }

    private boolean has(StudyName study, String method, String code) {
        return workspace.typing().test(study, method).specimens().stream()
                .anyMatch(it -> it.code().equalsIgnoreCase(code));
    }

    /** Returns the tests of a study that are typed, and how far each is. */
    static List<Begun> begun(Workspace workspace, StudyName study) {
        return workspace.typing().tests(study).stream()
                .map(method -> {
                    TypedTest test = workspace.typing().test(study, method);
                    return new Begun(method, test.description().title(), test.progress());
                })
                .toList();
    }

    private void test(Context request) {
        String wanted = Optional.ofNullable(request.queryParam("specimen")).orElse("");
        RigView view = view(study(request), method(request), wanted);
        if (!view.trouble().isEmpty()) {
            request.status(404);
        }
        show(request, view, "");
    }

    private void result(Context request) {
        String wanted = Optional.ofNullable(request.queryParam("specimen")).orElse("");
        RigSpecimen one = view(study(request), method(request), wanted).one();
        Pages.show(request, "rig/result", Map.of("number", one.number(), "result", one.result()));
    }

    private void photo(Context request) {
        String wanted = request.pathParam("photo");
        KeptFile file =
                workspace.typing().test(study(request), method(request)).specimens().stream()
                        .flatMap(specimen -> specimen.photos().stream())
                        .map(Photo::file)
                        .filter(it -> it.sha256().equals(wanted))
                        .findFirst()
                        .orElseThrow(() -> Refusal.notFound("The test has no such photo."));
        byte[] bytes = workspace.bytes(file);
        String type = PhotoKind.find(bytes)
                .map(PhotoKind::type)
                .orElseThrow(() -> Refusal.notFound("The test has no such photo."));
        // What is named by its digest never changes; others on the machine must not find it.
        request.header("Cache-Control", "private, max-age=86400, immutable");
        request.contentType(type).result(bytes);
    }

    /** Shows the whole page of a test. */
    void show(Context request, RigView view, String trouble) {
        Pages.show(
                request,
                "rig/test",
                Map.of("view", view, "atDesk", from == From.DESK, "trouble", trouble));
    }

    RigView view(StudyName study, String method, String wanted) {
        return RigView.of(
                study,
                method,
                workspace.typing().test(study, method),
                wanted,
                specimen ->
                        RigView.result(workspace.typing().result(study, method, specimen.code())));
    }

    StudyName study(Context request) {
        String id = request.pathParam("study");
        return workspace.studies().stream()
                .filter(study -> study.id().toString().equals(id))
                .findFirst()
                .orElseThrow(() -> Refusal.notFound("There is no such study in this workspace."));
    }

    /** @throws Refusal where the study has no test of it */
    String method(Context request) {
        String method = request.pathParam("method");
        if (!workspace.typing().tests(study(request)).contains(method)) {
            throw Refusal.notFound("The study has no %s test.".formatted(method));
        }
        return method;
    }
}
