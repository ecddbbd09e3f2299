package org.twinbar.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.twinbar.exchange.InputException;
import org.twinbar.study.FieldException;
import org.twinbar.study.Filled;
import org.twinbar.study.Workspace;
import org.twinbar.study.calculation.Progress;
import org.twinbar.study.judged.Answer;
import org.twinbar.study.judged.StudyName;
import org.twinbar.study.table.Upload;

/**
 * "What would have to hold, and who decides?": for claims that no bench can settle, each condition
 * with the evidence that there is; decided there: what to attach. Twinbar decides nothing.
 */
public final class ConditionPages {

    private final Workspace workspace;
    private final StudyPages studies;

    ConditionPages(Workspace workspace, StudyPages studies) {
        this.workspace = workspace;
        this.studies = studies;
    }

    void routes(RoutesConfig routes) {
        routes.get("/studies/{study}/conditions", this::list);
        routes.post("/studies/{study}/conditions", this::attach);
    }

    /** A claim that no bench can settle. */
    public record OffBenchClaim(String words, Answer.OffBench answer) {}

    static List<OffBenchClaim> claims(Workspace workspace, StudyName study) {
        return workspace.judge(study, Progress.SILENT).claims().stream()
                .flatMap(claim -> claim.answers().stream()
                        .filter(Answer.OffBench.class::isInstance)
                        .map(Answer.OffBench.class::cast)
                        .map(answer -> new OffBenchClaim(claim.words(), answer)))
                .toList();
    }

    private void list(Context request) {
        show(request, Form.EMPTY, Amiss.NOTHING);
    }

    private void show(Context request, Form form, Amiss amiss) {
        StudyName study = studies.find(request);
        Map<String, Object> with = new LinkedHashMap<>();
        with.put("study", study);
        with.put("claims", claims(workspace, study));
        with.put("form", form);
        with.put("amiss", amiss);
        with.put("act", UUID.randomUUID().toString());
        Pages.show(request, "conditions", with);
    }

    private void attach(Context request) {
        StudyName study = studies.find(request);
        Form form = Form.of(request);
        try {
            Filled filled = new Filled(form.fields());
            int condition = filled.whole("condition", 1, 99)
                    .orElseThrow(() -> new InputException("the form is not one of these pages"));
            String evidence = filled.needed("evidence", "what the evidence is and what it shows");
            workspace
                    .treating()
                    .evidence(
                            Acts.by(form),
                            study,
                            form.text("claim"),
                            condition,
                            evidence,
                            file(request));
            request.redirect(Links.conditions(study), HttpStatus.SEE_OTHER);
        } catch (FieldException | InputException e) {
            request.status(400);
            show(request, form, Amiss.of(e));
        }
    }

    private static Optional<Upload> file(Context request) {
        if (!request.isMultipart()) {
            return Optional.empty();
        }
        UploadedFile file = request.uploadedFile("file");
        if (file == null || file.filename().isBlank()) {
            return Optional.empty();
        }
        try (InputStream content = file.content()) {
            return Optional.of(
                    Upload.of(file.filename().replace('\\', '/'), content.readAllBytes()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
