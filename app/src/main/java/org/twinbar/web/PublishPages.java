package org.twinbar.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.nio.file.Files;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.twinbar.study.Act;
import org.twinbar.study.Workspace;
import org.twinbar.study.judged.JudgedStudy;
import org.twinbar.study.judged.StudyName;

/**
 * What goes out of a study: its verdicts, kept as they are published, and the kit.
 *
 * <p>The page of the kit, "What to show of it?": what the kit holds, and how far it is drawn;
 * decided there: whether to have it drawn, and to take it.
 */
final class PublishPages implements AutoCloseable {

    private final Workspace workspace;
    private final StudyPages studies;
    private final Kits kits = new Kits();

    PublishPages(Workspace workspace, StudyPages studies) {
        this.workspace = workspace;
        this.studies = studies;
    }

    void routes(RoutesConfig routes) {
        routes.post("/studies/{study}/publications", this::publish);
        routes.get("/studies/{study}/kit", this::kit);
        routes.post("/studies/{study}/kit", this::draw);
    }

    private void publish(Context request) {
        StudyName study = studies.find(request);
        Form form = Form.of(request);
        workspace.publish(act(form), study, form.text("where"));
        request.redirect(Links.study(study) + "#published", HttpStatus.SEE_OTHER);
    }

    private static Act act(Form form) {
        try {
            return new Act(UUID.fromString(form.text("act")), Words.WHO);
        } catch (IllegalArgumentException e) {
            throw Refusal.badRequest("The form was not whole; load the page again.");
        }
    }

    private void kit(Context request) throws IOException {
        StudyName study = studies.find(request);
        JudgedStudy now = studies.judge(study);
        Optional<Kits.Job> job = kits.of(study.id()).filter(it -> it.isOf(now));
        Optional<Kits.Job> ready = job.filter(it -> it.state() == Kits.Job.State.READY);
        if (request.queryParam("download") != null && ready.isPresent()) {
            request.header("Content-Disposition", StudyPages.attachment(study, "kit.zip"));
            request.contentType("application/zip")
                    .result(Files.newInputStream(ready.get().zip()));
            return;
        }
        boolean drawing = job.filter(it -> it.state() == Kits.Job.State.DRAWING).isPresent();
        if (drawing) {
            request.header("Refresh", "2");
        }
        Map<String, Object> with = new LinkedHashMap<>();
        with.put("study", study);
        with.put("invented", now.invented());
        with.put("stills", workspace.stills(study, now).size());
        with.put("drawing", drawing);
        with.put("ready", ready.isPresent());
        with.put("failed", job.filter(it -> it.state() == Kits.Job.State.FAILED).isPresent());
        with.put("done", job.map(Kits.Job::done).orElse(0));
        with.put("of", job.map(Kits.Job::of).orElse(0));
        Pages.show(request, "kit", with);
    }

    private void draw(Context request) {
        StudyName study = studies.find(request);
        if (!Form.of(request).is("draw", "kit")) {
            throw Refusal.badRequest("The form was not whole; load the page again.");
        }
        JudgedStudy now = studies.judge(study);
        kits.draw(study.id(), now, workspace.stills(study, now));
        request.redirect(Links.study(study) + "/kit", HttpStatus.SEE_OTHER);
    }

    @Override
    public void close() {
        kits.close();
    }
}
