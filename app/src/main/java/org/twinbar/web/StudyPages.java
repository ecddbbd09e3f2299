package org.twinbar.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.twinbar.report.Attachment;
import org.twinbar.report.Report;
import org.twinbar.study.TypedTest;
import org.twinbar.study.Workspace;
import org.twinbar.study.file.TestSheet;
import org.twinbar.study.judged.JudgedSpecimen;
import org.twinbar.study.judged.JudgedStudy;
import org.twinbar.study.judged.Photo;
import org.twinbar.study.judged.StudyName;

/** A kept study: the sheet from its claims to its verdicts, and its report. */
final class StudyPages {

    private final Workspace workspace;
    private final Judged judged;

    StudyPages(Workspace workspace) {
        this.workspace = workspace;
        this.judged = new Judged(workspace);
    }

    void routes(RoutesConfig routes) {
        routes.get("/studies/{study}", this::sheet);
        routes.get("/studies/{study}/state", this::state);
        routes.get("/studies/{study}/specimens", this::specimens);
        routes.get("/studies/{study}/specimens/<code>", this::specimen);
        routes.get("/studies/{study}/curves/<code>", this::curve);
        routes.get("/studies/{study}/report", this::report);
        routes.get("/studies/{study}/report.pdf", this::pdf);
        routes.get("/studies/{study}/package.zip", this::dataPackage);
    }

    private void sheet(Context request) {
        StudyName study = find(request);
        Judged.Of now = judged.of(study);
        Pages.show(
                request,
                "study",
                Map.of(
                        "study", study,
                        "sheet", now.sheet(),
                        "parts", StudyParts.of(now.study(), now.sheet()),
                        "published", StudyParts.published(now.study()),
                        "act", UUID.randomUUID().toString(),
                        "typed", RigPages.begun(workspace, study),
                        "treating", TreatView.of(workspace, study),
                        "tests", tests(now.study()),
                        "plan",
                                PlanState.of(
                                        now.study().making(),
                                        workspace.plans().questions(study).size())));
    }

    /** Returns the tests whose readings were calculated here, which is where instruments matter. */
    private static Map<String, String> tests(JudgedStudy study) {
        Map<String, String> tests = new LinkedHashMap<>();
        study.methods().stream()
                .filter(used -> !used.name().equals(TestSheet.OF_RESULTS))
                .forEach(used -> tests.put(used.name(), used.description().title()));
        return tests;
    }

    private void state(Context request) {
        Judged.Of now = judged.of(find(request));
        request.contentType("text/plain; charset=utf-8")
                .result(PlanState.words(now.study().making())
                                .map(it -> it + "; ")
                                .orElse("")
                        + Words.state(now.sheet(), now.study().specimens().size()));
    }

    private void specimens(Context request) {
        StudyName study = find(request);
        JudgedStudy now = judge(study);
        Pages.show(
                request,
                "specimens",
                Map.of(
                        "study", study,
                        "invented", now.invented(),
                        "tests", SpecimenList.of(study, now)));
    }

    private void specimen(Context request) {
        specimen(request, Form.EMPTY, "");
    }

    /**
     * Shows a specimen.
     *
     * @param form what was typed about a mark, where that was refused
     * @param trouble why, in a sentence; empty where all is well
     */
    void specimen(Context request, Form form, String trouble) {
        StudyName study = find(request);
        JudgedStudy now = judge(study);
        JudgedSpecimen specimen = specimen(request, now);
        boolean typed = workspace.typing().tests(study).contains(specimen.method());
        Map<String, Object> with = new HashMap<>();
        with.put("study", study);
        with.put("invented", now.invented());
        with.put("specimen", specimen);
        with.put("shown", ShownSpecimen.of(now, specimen));
        with.put("rig", typed ? Links.rig(study, specimen.method()) : "");
        with.put("photos", typed ? photos(study, specimen) : List.of());
        with.put("form", form);
        with.put("trouble", trouble);
        Pages.show(request, "specimen", with);
    }

    private List<Photo> photos(StudyName study, JudgedSpecimen specimen) {
        return workspace
                .typing()
                .test(study, specimen.method())
                .specimen(specimen.code())
                .map(TypedTest.Specimen::photos)
                .orElse(List.of());
    }

    private void curve(Context request) {
        JudgedStudy now = judge(find(request));
        JudgedSpecimen specimen = specimen(request, now);
        String json = ("all".equals(request.queryParam("rows"))
                        ? workspace.curves().whole(specimen)
                        : specimen.curve())
                .map(curve -> CurveJson.of(curve, ShownSpecimen.isControl(now, specimen)))
                .orElseThrow(() -> Refusal.notFound(
                        "No curve of '%s' was handed in.".formatted(specimen.code())));
        request.contentType("application/json").result(json);
    }

    private static JudgedSpecimen specimen(Context request, JudgedStudy study) {
        String code = request.pathParam("code");
        String asked = request.queryParam("test");
        String test = asked == null ? request.formParam("test") : asked;
        return study.specimens().stream()
                .filter(it -> it.code().equals(code))
                .filter(it -> test == null || it.method().equals(test))
                .findFirst()
                .orElseThrow(() -> Refusal.notFound("The study has no such specimen."));
    }

    private void report(Context request) {
        String page = judged.report(find(request));
        request.header("Content-Security-Policy", StylePolicy.of(page));
        if (request.queryParam("download") != null) {
            request.header("Content-Disposition", attachment(find(request), "html"));
        }
        request.html(page);
    }

    private void pdf(Context request) throws IOException {
        StudyName study = find(request);
        ByteArrayOutputStream pdf = new ByteArrayOutputStream();
        Report.pdf(judge(study), List.of(Attachment.dataPackage("package.zip", zip(study))), pdf);
        request.header("Content-Disposition", attachment(study, "pdf"));
        request.contentType("application/pdf").result(pdf.toByteArray());
    }

    private void dataPackage(Context request) {
        StudyName study = find(request);
        request.header("Content-Disposition", attachment(study, "zip"));
        request.contentType("application/zip").result(zip(study));
    }

    private byte[] zip(StudyName study) {
        return workspace.packages().zip(study, judge(study), Optional.empty());
    }

    static String attachment(StudyName study, String ending) {
        String name = study.name().replaceAll("[^A-Za-z0-9._-]+", "-");
        return "attachment; filename=\"%s.%s\"".formatted(name, ending);
    }

    JudgedStudy judge(StudyName study) {
        return judged.of(study).study();
    }

    StudyName find(Context request) {
        String id = request.pathParam("study");
        return workspace.studies().stream()
                .filter(study -> study.id().toString().equals(id))
                .findFirst()
                .orElseThrow(() -> Refusal.notFound("There is no such study in this workspace."));
    }
}
