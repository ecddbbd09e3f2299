package org.twinbar.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.Map;
import org.twinbar.study.Demo;
import org.twinbar.study.StudyName;
import org.twinbar.study.Workspace;

/** The first page and the three doors on it. */
final class Doors {

    private final Workspace workspace;

    Doors(Workspace workspace) {
        this.workspace = workspace;
    }

    void routes(RoutesConfig routes) {
        routes.get("/", this::home);
        routes.post("/demo", this::demo);
    }

    private void home(Context request) {
        Pages.show(request, "home", Map.of("studies", workspace.studies()));
    }

    private void demo(Context request) {
        StudyName demo = Demo.into(workspace);
        request.redirect(Links.study(demo), HttpStatus.SEE_OTHER);
    }
}
