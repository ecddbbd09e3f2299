package org.twinbar.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.twinbar.decision.QuestionException;
import org.twinbar.exchange.InputException;
import org.twinbar.planning.PlanException;
import org.twinbar.planning.claim.ClaimGuide;
import org.twinbar.planning.claim.Guided;
import org.twinbar.study.Act;
import org.twinbar.study.GuidedClaim;
import org.twinbar.study.Workspace;
import org.twinbar.study.file.StudyFile;
import org.twinbar.study.judged.JudgedStudy;
import org.twinbar.study.judged.StudyName;
import org.twinbar.study.table.Handed;

/**
 * Leads from a claim in words to the questions of a study, by a page that is answered bit by bit.
 */
final class GuidePages {

    /** Before the key of an answer, so that it can't be taken for another field. */
    static final String ANSWER = "a.";

    private static final String NOTHING_CLAIMED = "Write down what is claimed.";

    private final Workspace workspace;

    GuidePages(Workspace workspace) {
        this.workspace = workspace;
    }

    void routes(RoutesConfig routes) {
        routes.get("/claims/guide", request -> show(request, request.queryParamMap(), ""));
        routes.post("/claims/guide", this::begin);
    }

    private void show(Context request, Map<String, List<String>> said, String trouble) {
        Form form = form(said);
        if (form.text("words").isBlank()) {
            boolean typed = said.containsKey("words");
            request.status(typed ? 400 : 200);
            Doors.show(
                    request,
                    workspace,
                    typed ? Doors.Trouble.withClaim(NOTHING_CLAIMED) : Doors.Trouble.NONE,
                    form);
            return;
        }
        String wrong = trouble;
        Guided guided = guide(form.text("words"), Map.of());
        Map<String, String> understood = new LinkedHashMap<>();
        for (Map.Entry<String, String> answer : answers(said).entrySet()) {
            Map<String, String> more = new LinkedHashMap<>(understood);
            more.put(answer.getKey(), answer.getValue());
            try {
                guided = guide(form.text("words"), more);
                understood = more;
            } catch (PlanException e) {
                wrong = wrong.isEmpty() ? Words.sentence(e) : wrong;
            }
        }
        if (!wrong.isEmpty()) {
            request.status(400);
        }
        Pages.show(
                request,
                "guide",
                Map.of(
                        "form", form,
                        "guided", guided,
                        "act", UUID.randomUUID().toString(),
                        "trouble", wrong));
    }

    private Guided guide(String words, Map<String, String> answers) {
        return ClaimGuide.to(workspace.methods().all()).guide(words, answers);
    }

    private void begin(Context request) {
        Map<String, List<String>> said = request.formParamMap();
        Form form = form(said);
        try {
            Guided guided = guide(form.text("words"), answers(said));
            StudyName study = workspace.importStudy(
                    new Act(MarkPages.identity(form), Words.WHO),
                    new StudyFile(
                            Optional.of(new StudyFile.Head(
                                    form.said("name").orElse(Words.slug(form.text("words"))),
                                    "Is it so: %s?"
                                            .formatted(
                                                    form.text("words").replaceAll("[.?!]+$", "")),
                                    "",
                                    JudgedStudy.Origin.MEASURED)),
                            List.of(),
                            List.of(GuidedClaim.of(
                                    guided,
                                    form.text("said_by"),
                                    form.said("control").orElse("plain"),
                                    List.of())),
                            List.of()),
                    Handed.nothing());
            request.redirect(Links.study(study), HttpStatus.SEE_OTHER);
        } catch (InputException | QuestionException | PlanException e) {
            show(request, said, Words.sentence(e));
        }
    }

    private static Form form(Map<String, List<String>> said) {
        Form form = Form.EMPTY;
        for (Map.Entry<String, List<String>> field : said.entrySet()) {
            form = form.with(field.getKey(), String.join(",", field.getValue()).strip());
        }
        return form;
    }

    /** What was ticked several times is one answer, with commas between. */
    private static Map<String, String> answers(Map<String, List<String>> said) {
        Map<String, String> answers = new LinkedHashMap<>();
        said.forEach((name, values) -> {
            String text = String.join(",", values).strip();
            if (name.startsWith(ANSWER) && !text.isEmpty()) {
                answers.put(name.substring(ANSWER.length()), text);
            }
        });
        return answers;
    }
}
