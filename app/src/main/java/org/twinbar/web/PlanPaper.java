package org.twinbar.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.twinbar.exchange.InputException;
import org.twinbar.exchange.MeshFile;
import org.twinbar.method.TestMethod;
import org.twinbar.planning.Series;
import org.twinbar.report.paper.BenchSheets;
import org.twinbar.report.paper.LabelSheet;
import org.twinbar.report.paper.Labels;
import org.twinbar.report.paper.Paper;
import org.twinbar.report.paper.Pieces;
import org.twinbar.specimen.Plate;
import org.twinbar.specimen.ShapeException;
import org.twinbar.study.Workspace;
import org.twinbar.study.judged.Making;
import org.twinbar.study.judged.StudyName;

/** What a plan takes to the printer and the bench: files to print, sheets for a pen, labels. */
final class PlanPaper {

    private final Workspace workspace;
    private final StudyPages pages;
    private final Supplier<Optional<String>> phones;

    /** @param phones where phones begin, while they are let in */
    PlanPaper(Workspace workspace, StudyPages pages, Supplier<Optional<String>> phones) {
        this.workspace = workspace;
        this.pages = pages;
        this.phones = phones;
    }

    void routes(RoutesConfig routes) {
        routes.get("/studies/{study}/plan/plate.3mf", it -> plate(it, MeshFile.Format.THREE_MF));
        routes.get("/studies/{study}/plan/plate.stl", it -> plate(it, MeshFile.Format.STL));
        routes.get("/studies/{study}/plan/print-sheets.pdf", this::print);
        routes.get("/studies/{study}/plan/treatment-sheets.pdf", this::treat);
        routes.get("/studies/{study}/plan/run-sheet.pdf", this::test);
        routes.get("/studies/{study}/plan/labels.pdf", this::labels);
    }

    private void plate(Context request, MeshFile.Format format) {
        StudyName study = pages.find(request);
        Form form = Form.asked(request);
        int run = number(form, "run", 1);
        byte[] file = sized(() -> {
            Plate plate = PlanPlates.plate(
                    planned(workspace.plans().of(study)),
                    run,
                    PlanPlates.bed(form),
                    PlanPlates.TO_PRINT);
            List<MeshFile.Part> parts = plate.specimens().stream()
                    .map(it -> new MeshFile.Part(it.name(), it.mesh()))
                    .toList();
            return MeshFile.bytes(parts, format, study.name() + ", run " + run);
        });
        boolean isStl = format == MeshFile.Format.STL;
        send(
                request,
                file,
                StudyPages.attachment(study, "run-" + run + (isStl ? ".stl" : ".3mf")),
                isStl ? "model/stl" : "model/3mf");
    }

    private void print(Context request) {
        StudyName study = pages.find(request);
        Form form = Form.asked(request);
        byte[] pdf = sized(() -> BenchSheets.on(paper(form))
                .print(
                        pieces(study, workspace.plans().forTreating(study)),
                        form.said("bed").map(it -> PlanPlates.bed(form))));
        pdf(request, pdf, StudyPages.attachment(study, "print-sheets.pdf"));
    }

    private void treat(Context request) {
        StudyName study = pages.find(request);
        byte[] pdf = BenchSheets.on(paper(Form.asked(request)))
                .treat(pieces(study, workspace.plans().forTreating(study)));
        pdf(request, pdf, StudyPages.attachment(study, "treatment-sheets.pdf"));
    }

    private void test(Context request) {
        StudyName study = pages.find(request);
        Form form = Form.asked(request);
        Making making = planned(workspace.plans().of(study));
        List<String> methods = making.plan().orElseThrow().series().stream()
                .map(Series::method)
                .distinct()
                .toList();
        String method = form.said("test").orElse(methods.get(0));
        TestMethod described = workspace
                .methods()
                .named(method)
                .filter(it -> methods.contains(method))
                .orElseThrow(() -> Refusal.notFound("The plan has no %s test.".formatted(method)));
        byte[] pdf = BenchSheets.on(paper(form))
                .test(
                        pieces(study, making).testedBy(method),
                        described.description(),
                        Map.of(),
                        List.of(),
                        workspace.plans().readOn(study, method, Map.of()));
        pdf(request, pdf, StudyPages.attachment(study, method + ".pdf"));
    }

    private void labels(Context request) {
        StudyName study = pages.find(request);
        Form form = Form.asked(request);
        LabelSheet sheet =
                LabelSheet.of(paper(form), number(form, "columns", 3), number(form, "rows", 8));
        Optional<String> open = phones.get();
        byte[] pdf = Labels.pdf(
                pieces(study, workspace.plans().of(study)),
                sheet,
                number(form, "first", 1),
                code -> open.map(it -> LabelAddress.of(it, study, code)).orElse(code));
        pdf(request, pdf, StudyPages.attachment(study, "labels.pdf"));
    }

    private static Pieces pieces(StudyName study, Making making) {
        return Pieces.of(planned(making), study.name());
    }

    private static Making planned(Making making) {
        if (making.plan().isEmpty()) {
            throw new InputException("the study has no plan yet, so there is nothing to print");
        }
        return making;
    }

    private static Paper paper(Form form) {
        return Optional.of(form)
                .filter(it -> it.is("paper", Paper.LETTER.word()))
                .map(it -> Paper.LETTER)
                .orElse(Paper.A4);
    }

    private static int number(Form form, String field, int otherwise) {
        String text = form.text(field);
        if (text.isEmpty()) {
            return otherwise;
        }
        if (!text.matches("\\d{1,4}")) {
            throw Refusal.badRequest("'%s' is not a whole number.".formatted(text));
        }
        return Integer.parseInt(text);
    }

    private static <T> T sized(Supplier<T> made) {
        try {
            return made.get();
        } catch (ShapeException e) {
            throw Refusal.badRequest(Words.sentence(e));
        }
    }

    private static void pdf(Context request, byte[] pdf, String attachment) {
        send(request, pdf, attachment, "application/pdf");
    }

    private static void send(Context request, byte[] file, String attachment, String type) {
        request.header("Content-Disposition", attachment);
        request.contentType(type).result(file);
    }
}
