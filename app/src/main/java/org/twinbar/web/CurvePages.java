package org.twinbar.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.twinbar.exchange.InputException;
import org.twinbar.study.Act;
import org.twinbar.study.Workspace;
import org.twinbar.study.judged.JudgedStudy;
import org.twinbar.study.judged.StudyName;
import org.twinbar.study.table.Upload;

/**
 * "Do the curves look alike?": all curves of a test over each other. Decided there: which specimen
 * to look at by itself; curves that came after the table are handed in here.
 */
final class CurvePages {

    private final Workspace workspace;
    private final StudyPages pages;

    CurvePages(Workspace workspace, StudyPages pages) {
        this.workspace = workspace;
        this.pages = pages;
    }

    void routes(RoutesConfig routes) {
        routes.get("/studies/{study}/curves", request -> show(request, ""));
        routes.post("/studies/{study}/curves", this::handIn);
        routes.get("/studies/{study}/overlay", this::overlay);
    }

    private void show(Context request, String trouble) {
        StudyName study = pages.find(request);
        JudgedStudy judged = pages.judge(study);
        Optional<CurvesView> view = CurvesView.of(study, judged, asked(request));
        Map<String, Object> with = new HashMap<>();
        with.put("study", study);
        with.put("view", view);
        with.put("tests", CurvesView.tests(judged));
        with.put("trouble", trouble);
        Pages.show(request, "curves", with);
    }

    private void overlay(Context request) {
        StudyName study = pages.find(request);
        String json = CurvesView.of(study, pages.judge(study), asked(request))
                .map(CurvesView::json)
                .orElseThrow(() -> Refusal.notFound("The study has no curves."));
        request.contentType("application/json").result(json);
    }

    private static Optional<String> asked(Context request) {
        String query = request.queryParam("test");
        return Optional.ofNullable(query == null ? request.formParam("test") : query)
                .filter(it -> !it.isBlank());
    }

    private void handIn(Context request) {
        StudyName study = pages.find(request);
        Form form = Form.of(request);
        String test = form.text("test");
        try {
            Act act = new Act(MarkPages.identity(form), Words.WHO);
            workspace.curves().handIn(act, study, test, files(request));
            request.redirect(Links.curves(study, test), HttpStatus.SEE_OTHER);
        } catch (InputException e) {
            request.status(400);
            show(request, Words.sentence(e));
        }
    }

    private static List<Upload> files(Context request) {
        List<Upload> files = new ArrayList<>();
        if (request.isMultipart()) {
            for (UploadedFile file : request.uploadedFiles("curves")) {
                if (!file.filename().isBlank()) {
                    try (InputStream content = file.content()) {
                        files.add(Upload.of(file.filename(), content.readAllBytes()));
                    } catch (IOException e) {
                        throw new UncheckedIOException(e);
                    }
                }
            }
        }
        return files;
    }
}
