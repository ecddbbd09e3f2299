package org.twinbar.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.twinbar.study.Workspace;
import org.twinbar.study.archive.Archive;
import org.twinbar.study.archive.Filter;
import org.twinbar.study.archive.Gain;
import org.twinbar.study.calculation.Progress;

/** What all studies of the workspace say, on one page. */
final class ArchivePages {

    private final Archive archive;

    ArchivePages(Workspace workspace) {
        this.archive = new Archive(workspace);
    }

    void routes(RoutesConfig routes) {
        routes.get("/archive", this::show);
    }

    private void show(Context request) {
        Form form = Form.EMPTY;
        for (String field : List.of("property", "group", "where")) {
            String said = request.queryParam(field);
            form = said == null ? form : form.with(field, said.strip());
        }
        Optional<String> where = form.said("where");
        String trouble = where.filter(it -> it.indexOf('=') < 1)
                .map(
                        "'%s' must be written as factor = value, such as orientation = upright."
                                ::formatted)
                .orElse("");
        List<Gain> all = archive.gains(Filter.ALL, Progress.SILENT);
        Filter filter = new Filter(
                Optional.empty(),
                form.said("property"),
                form.said("group"),
                where.filter(it -> it.indexOf('=') > 0).map(ArchivePages::pair).orElse(Map.of()));
        ArchiveView view = ArchiveView.of(
                all,
                archive.gains(filter, Progress.SILENT),
                archive.scatter(filter.anyGroup(), Progress.SILENT));
        if (!trouble.isEmpty()) {
            request.status(400);
        }
        Pages.show(request, "archive", Map.of("view", view, "form", form, "trouble", trouble));
    }

    private static Map<String, String> pair(String text) {
        int equals = text.indexOf('=');
        return Map.of(
                text.substring(0, equals).strip(), text.substring(equals + 1).strip());
    }
}
