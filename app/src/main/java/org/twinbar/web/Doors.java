package org.twinbar.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.twinbar.exchange.InputException;
import org.twinbar.study.Act;
import org.twinbar.study.Demo;
import org.twinbar.study.Workspace;
import org.twinbar.study.file.StudyFile;
import org.twinbar.study.judged.Claim;
import org.twinbar.study.judged.JudgedStudy;
import org.twinbar.study.judged.StudyName;
import org.twinbar.study.table.Handed;

/** The first page and the three doors on it. */
final class Doors {

    private final Workspace workspace;

    Doors(Workspace workspace) {
        this.workspace = workspace;
    }

    void routes(RoutesConfig routes) {
        routes.get("/", request -> show(request, workspace, Trouble.NONE, Form.EMPTY));
        routes.post("/claims", this::claim);
        routes.post("/demo", this::demo);
    }

    /**
     * What was wrong, beside the door where it was.
     *
     * @param readings of what was handed in, nothing where all was well
     * @param claim of what was claimed
     */
    public record Trouble(String readings, String claim) {

        static final Trouble NONE = new Trouble("", "");

        static Trouble withReadings(String sentence) {
            return new Trouble(sentence, "");
        }

        static Trouble withClaim(String sentence) {
            return new Trouble("", sentence);
        }
    }

    static void show(Context request, Workspace workspace, Trouble trouble, Form form) {
        Pages.show(
                request,
                "home",
                Map.of(
                        "studies", workspace.studies(),
                        "readingsTrouble", trouble.readings(),
                        "claimTrouble", trouble.claim(),
                        "form", form));
    }

    private void claim(Context request) {
        Form form = Form.of(request);
        try {
            String words = form.said("words")
                    .orElseThrow(() -> new InputException("write down what is claimed"));
            StudyName study = workspace.importStudy(
                    Act.by(Words.WHO),
                    new StudyFile(
                            Optional.of(new StudyFile.Head(
                                    form.said("name").orElse(Words.slug(words)),
                                    "Is it so: %s?".formatted(words.replaceAll("[.?!]+$", "")),
                                    "",
                                    JudgedStudy.Origin.MEASURED)),
                            List.of(),
                            List.of(new Claim(
                                    words, form.text("said_by"), List.of(), Optional.empty())),
                            List.of()),
                    Handed.nothing());
            request.redirect(Links.study(study), HttpStatus.SEE_OTHER);
        } catch (InputException e) {
            request.status(400);
            show(request, workspace, Trouble.withClaim(Words.sentence(e)), form);
        }
    }

    private void demo(Context request) {
        request.redirect(Links.study(Demo.into(workspace)), HttpStatus.SEE_OTHER);
    }
}
