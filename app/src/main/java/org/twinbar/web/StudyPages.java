package org.twinbar.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Map;
import org.twinbar.report.Report;
import org.twinbar.report.Sheet;
import org.twinbar.study.JudgedStudy;
import org.twinbar.study.Progress;
import org.twinbar.study.StudyName;
import org.twinbar.study.Workspace;

/** A kept study: the sheet from its claims to its verdicts, and its report. */
final class StudyPages {

    private final Workspace workspace;

    StudyPages(Workspace workspace) {
        this.workspace = workspace;
    }

    void routes(RoutesConfig routes) {
        routes.get("/studies/{study}", this::sheet);
        routes.get("/studies/{study}/state", this::state);
        routes.get("/studies/{study}/report", this::report);
        routes.get("/studies/{study}/report.pdf", this::pdf);
    }

    private void sheet(Context request) {
        StudyName study = find(request);
        JudgedStudy judged = judge(study);
        Pages.show(
                request,
                "study",
                Map.of("study", study, "judged", judged, "sheet", Report.sheet(judged)));
    }

    private void state(Context request) {
        JudgedStudy judged = judge(find(request));
        Sheet sheet = Report.sheet(judged);
        request.contentType("text/plain; charset=utf-8")
                .result(Words.state(sheet, judged.specimens().size()));
    }

    private void report(Context request) {
        String page = Report.html(judge(find(request)));
        request.header("Content-Security-Policy", StylePolicy.of(page));
        if (request.queryParam("download") != null) {
            request.header("Content-Disposition", attachment(find(request), "html"));
        }
        request.html(page);
    }

    private void pdf(Context request) throws IOException {
        StudyName study = find(request);
        ByteArrayOutputStream pdf = new ByteArrayOutputStream();
        Report.pdf(judge(study), pdf);
        request.header("Content-Disposition", attachment(study, "pdf"));
        request.contentType("application/pdf").result(pdf.toByteArray());
    }

    private static String attachment(StudyName study, String ending) {
        String name = study.name().replaceAll("[^A-Za-z0-9._-]+", "-");
        return "attachment; filename=\"%s.%s\"".formatted(name, ending);
    }

    private JudgedStudy judge(StudyName study) {
        return workspace.judge(study, Progress.SILENT);
    }

    private StudyName find(Context request) {
        String id = request.pathParam("study");
        return workspace.studies().stream()
                .filter(study -> study.id().toString().equals(id))
                .findFirst()
                .orElseThrow(() -> Refusal.notFound("There is no such study in this workspace."));
    }
}
