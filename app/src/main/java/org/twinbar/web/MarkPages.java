package org.twinbar.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.UUID;
import org.twinbar.exchange.InputException;
import org.twinbar.study.Act;
import org.twinbar.study.Marking;
import org.twinbar.study.Workspace;
import org.twinbar.study.judged.StudyName;

/** Puts a mark on a curve where a person wants it, or lets the method find it again. */
final class MarkPages {

    private final Workspace workspace;
    private final StudyPages pages;

    MarkPages(Workspace workspace, StudyPages pages) {
        this.workspace = workspace;
        this.pages = pages;
    }

    void routes(RoutesConfig routes) {
        routes.post("/studies/{study}/marks/<code>", this::move);
    }

    private void move(Context request) {
        StudyName study = pages.find(request);
        Form form = Form.of(request);
        String code = request.pathParam("code");
        Marking.On on = new Marking.On(form.text("test"), code, form.text("mark"));
        try {
            Act act = new Act(identity(form), Words.WHO);
            if (form.text("do").equals("find")) {
                workspace.marking().findAgain(act, study, on, form.text("why"));
            } else {
                workspace.marking().put(act, study, on, form.text("at"), form.text("why"));
            }
            request.redirect(
                    Links.specimen(study, code, on.method()) + "#marks", HttpStatus.SEE_OTHER);
        } catch (InputException e) {
            request.status(400);
            pages.specimen(request, form, Words.sentence(e));
        }
    }

    /** A form that is sent twice is done once. */
    static UUID identity(Form form) {
        try {
            return UUID.fromString(form.text("act"));
        } catch (IllegalArgumentException e) {
            throw Refusal.badRequest("The form was not whole; open the page again.");
        }
    }
}
