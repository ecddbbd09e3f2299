package org.twinbar.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.twinbar.exchange.InputException;
import org.twinbar.study.Remembered;
import org.twinbar.study.Stamp;
import org.twinbar.study.Workspace;
import org.twinbar.study.archive.Archive;
import org.twinbar.study.archive.Filter;
import org.twinbar.study.archive.Gain;
import org.twinbar.study.archive.Paired;
import org.twinbar.study.calculation.Progress;

/** What all studies of the workspace say, on one page. */
final class ArchivePages {

    /** Part of the program's memory that pages put together may hold. */
    private static final int SHARE = 32;

    private final Workspace workspace;
    private final Archive archive;
    private final Remembered<Filter, List<Stamp>, ArchiveView> views =
            new Remembered<>(Remembered.shareOfMemory(SHARE), ArchiveView::bytes);

    private final Remembered<Filter, List<Stamp>, Whole> wholes =
            new Remembered<>(Remembered.shareOfMemory(SHARE), Whole::bytes);

    /**
     * What all studies say, whatever a person looks for.
     *
     * @param measured every property that some group has a mean of, whether anything was claimed of
     *     it
     */
    private record Whole(List<Gain> gains, List<String> measured) {

        /** Above what one of each takes, words included. */
        long bytes() {
            return 2_000L * gains.size() + 200L * measured.size();
        }
    }

    ArchivePages(Workspace workspace) {
        this.workspace = workspace;
        this.archive = new Archive(workspace);
    }

    void routes(RoutesConfig routes) {
        routes.get("/archive", this::show);
    }

    private void show(Context request) {
        Form form = Form.EMPTY;
        for (String field : List.of("property", "group", "where", "against", "per")) {
            String said = request.queryParam(field);
            form = said == null ? form : form.with(field, said.strip());
        }
        Optional<String> where = form.said("where");
        String trouble = where.filter(it -> it.indexOf('=') < 1)
                .map(
                        "'%s' must be written as factor = value, such as orientation = upright."
                                ::formatted)
                .orElse("");
        Filter filter = new Filter(
                Optional.empty(),
                form.said("property"),
                form.said("group"),
                where.filter(it -> it.indexOf('=') > 0).map(ArchivePages::pair).orElse(Map.of()));
        List<Paired> pairs = List.of();
        try {
            pairs = pairs(form, filter);
        } catch (InputException e) {
            trouble = Words.sentence(e);
        }
        List<Stamp> state = workspace.studies().stream().map(workspace::stamp).toList();
        Whole whole = wholes.get(
                Filter.ALL,
                state,
                () -> new Whole(archive.gains(Filter.ALL, Progress.SILENT), measured()));
        ArchiveView view = views.get(
                        filter,
                        state,
                        () -> ArchiveView.of(
                                whole.gains(),
                                archive.gains(filter, Progress.SILENT),
                                archive.scatter(filter.anyGroup(), Progress.SILENT)))
                .with(ArchiveView.against(pairs, whole.gains(), form.said("per")));
        if (!trouble.isEmpty()) {
            request.status(400);
        }
        Pages.show(
                request,
                "archive",
                Map.of(
                        "view",
                        view,
                        "form",
                        form,
                        "trouble",
                        trouble,
                        "measured",
                        whole.measured()));
    }

    private List<String> measured() {
        return archive.means(Filter.ALL, Optional.empty(), Progress.SILENT).stream()
                .map(it -> it.property().name())
                .distinct()
                .sorted()
                .toList();
    }

    /** Of any group, since a treatment is looked at beside its control. */
    private List<Paired> pairs(Form form, Filter filter) {
        Optional<String> other = form.said("against");
        if (other.isEmpty() || form.said("property").isEmpty()) {
            if (form.said("per").isPresent() || other.isPresent()) {
                throw new InputException("choose two properties, the one against the other");
            }
            return List.of();
        }
        List<Paired> pairs = Paired.of(
                archive.means(filter.anyGroup(), form.said("per"), Progress.SILENT),
                archive.means(
                        filter.anyGroup().of(other.get()), form.said("per"), Progress.SILENT));
        if (pairs.isEmpty()) {
            throw new InputException("no group of a study has both %s and %s"
                    .formatted(form.text("property"), other.get()));
        }
        return pairs;
    }

    private static Map<String, String> pair(String text) {
        int equals = text.indexOf('=');
        return Map.of(
                text.substring(0, equals).strip(), text.substring(equals + 1).strip());
    }
}
