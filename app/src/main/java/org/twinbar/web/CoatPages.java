package org.twinbar.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.UUID;
import java.util.stream.Collectors;
import org.twinbar.exchange.InputException;
import org.twinbar.exchange.MeshFile;
import org.twinbar.exchange.Source;
import org.twinbar.planning.Series;
import org.twinbar.quantity.Unit;
import org.twinbar.report.Written;
import org.twinbar.specimen.ShapeException;
import org.twinbar.specimen.StandardShapes;
import org.twinbar.study.FieldException;
import org.twinbar.study.Filled;
import org.twinbar.study.KeptRecipe;
import org.twinbar.study.RecipeKind;
import org.twinbar.study.Workspace;
import org.twinbar.study.judged.Making;
import org.twinbar.study.judged.StudyName;
import org.twinbar.treatment.Coated;
import org.twinbar.treatment.Film;
import org.twinbar.treatment.Scale;
import org.twinbar.treatment.TreatmentException;

/**
 * "How much does the coat take?": from an area and a film to the mix; decided there: how much to
 * weigh out. Below it, once specimens were weighed before and after: which film each got.
 */
public final class CoatPages {

    private static final Unit DENSITY = Unit.of("g/cm³");
    private static final Unit GRAMS = Unit.of("g");
    private static final Unit SQUARE_CENTIMETRES = Unit.of("cm²");
    private static final double SQUARE_MM_PER_SQUARE_CM = 100;
    private static final double USUAL_STEP = 0.01;

    private final Workspace workspace;
    private final StudyPages studies;

    CoatPages(Workspace workspace, StudyPages studies) {
        this.workspace = workspace;
        this.studies = studies;
    }

    void routes(RoutesConfig routes) {
        routes.get("/studies/{study}/coat", this::coat);
        routes.post("/studies/{study}/coat/mesh", this::mesh);
        routes.post("/studies/{study}/coat/film", this::film);
    }

    private void coat(Context request) {
        show(request, Form.asked(request), Amiss.NOTHING);
    }

    private void show(Context request, Form form, Amiss refused) {
        StudyName study = studies.find(request);
        Making making = workspace.plans().forTreating(study);
        Form shown = usual(form, making);
        Optional<CoatView> view = Optional.empty();
        Amiss amiss = refused;
        try {
            view = form.said("film").isPresent()
                    ? Optional.of(CoatView.of(new Filled(shown.fields())))
                    : Optional.empty();
        } catch (FieldException | TreatmentException e) {
            request.status(400);
            amiss = amiss.sentence().isEmpty() ? Amiss.of(e) : amiss;
        }
        Map<String, Object> with = new LinkedHashMap<>();
        with.put("study", study);
        with.put("form", shown);
        with.put("amiss", amiss);
        with.put("view", view);
        with.put("shapes", StandardShapes.all());
        with.put("mixes", densities());
        with.put("films", making.coated().map(CoatPages::films));
        with.put("isPlanned", making.plan().isPresent());
        with.put("act", UUID.randomUUID().toString());
        Pages.show(request, Pages.isPart(request) ? "coat-part" : "coat", with);
    }

    /** Puts in what the plan knows: the shape, and how many are treated. */
    private static Form usual(Form form, Making making) {
        Form more = form;
        if (form.said("shape").isEmpty() && form.said("area").isEmpty()) {
            Optional<String> shape = making.plan().stream()
                    .flatMap(plan -> plan.series().stream())
                    .map(Series::shape)
                    .filter(name -> StandardShapes.named(name).isPresent())
                    .findFirst();
            more = shape.isPresent() ? more.with("shape", shape.get()) : more;
        }
        long treated = making.specimens().stream()
                .filter(each -> each.placed().mix().isPresent())
                .count();
        return more.said("specimens").isEmpty() && treated > 0
                ? more.with("specimens", Long.toString(treated))
                : more;
    }

    /** A density that is kept. */
    public record Kept(String name, String density) {}

    private List<Kept> densities() {
        return workspace.recipes().all().stream()
                .flatMap(each -> density(each).stream())
                .toList();
    }

    private static Optional<Kept> density(KeptRecipe each) {
        try {
            return each.sheet().kind() == RecipeKind.MATERIAL
                    ? each.sheet()
                            .filled()
                            .said("density")
                            .map(it -> new Kept(each.sheet().name(), it))
                    : each.sheet().kind() == RecipeKind.MIX
                            ? Optional.of(new Kept(
                                    each.sheet().name(),
                                    Written.number(each.sheet().mix().density(), 4)))
                            : Optional.empty();
        } catch (TreatmentException withoutDensities) {
            return Optional.empty();
        }
    }

    /** A film that a specimen got. */
    public record Got(String specimen, String thickness) {}

    /** The films of all that were weighed. */
    public record Films(String sentence, List<Got> films, List<String> findings) {}

    private static Films films(Coated coated) {
        return new Films(
                "The film is %s thick in the mean, with a standard deviation of %s between %s."
                        .formatted(
                                Written.number(coated.mean(), 3) + "\u2009µm",
                                Written.number(coated.deviation(), 2) + "\u2009µm",
                                Words.count(coated.films().size(), "specimen")),
                coated.films().stream()
                        .map(film -> new Got(
                                film.specimen(),
                                Written.value(film.micrometres(), film.uncertainty(), "µm")))
                        .toList(),
                coated.findings().stream().map(it -> it.text()).toList());
    }

    /** Takes the area from a mesh, and leads back to the page with it. */
    private void mesh(Context request) {
        Form form = Form.of(request);
        try {
            UploadedFile file = request.isMultipart() ? request.uploadedFile("mesh") : null;
            if (file == null || file.filename().isBlank()) {
                throw new FieldException("mesh", "choose a mesh: an STL or 3MF file");
            }
            MeshFile.Read read = read(file);
            double area = read.mesh().area() / SQUARE_MM_PER_SQUARE_CM;
            Form more = form.with(
                            "area",
                            BigDecimal.valueOf(area)
                                    .round(new MathContext(4))
                                    .stripTrailingZeros()
                                    .toPlainString())
                    .with("mesh_name", file.filename())
                    .with(
                            "mesh_findings",
                            read.findings().stream()
                                    .map(it -> it.text())
                                    .collect(Collectors.joining(" ")));
            request.redirect(
                    Links.coat(studies.find(request)) + "?" + query(more), HttpStatus.SEE_OTHER);
        } catch (FieldException | InputException | ShapeException e) {
            request.status(400);
            show(request, form, new Amiss("mesh", Words.sentence(e)));
        }
    }

    private static MeshFile.Read read(UploadedFile file) {
        try (InputStream content = file.content()) {
            return MeshFile.read(Source.of(file.filename(), content.readAllBytes()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String query(Form form) {
        return form.fields().entrySet().stream()
                .filter(field -> !field.getValue().isEmpty())
                .map(field -> field.getKey() + "="
                        + URLEncoder.encode(field.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
    }

    /** Keeps what films are reckoned with. */
    private void film(Context request) {
        StudyName study = studies.find(request);
        Form form = Form.of(request);
        try {
            Filled filled = new Filled(form.fields());
            double density =
                    filled.number("cured_density", DENSITY, "the density of the cured film");
            filled.at("cured_density", () -> new Film(1, density));
            double step = filled.number("film_step", GRAMS).orElse(USUAL_STEP);
            filled.at("film_step", () -> new Scale(step));
            var area = filled.number("film_area", SQUARE_CENTIMETRES);
            workspace
                    .treating()
                    .film(
                            Acts.by(form),
                            study,
                            density,
                            step,
                            area.isPresent()
                                    ? OptionalDouble.of(
                                            SQUARE_MM_PER_SQUARE_CM * area.getAsDouble())
                                    : area);
            request.redirect(Links.coat(study) + "#films", HttpStatus.SEE_OTHER);
        } catch (FieldException | TreatmentException | InputException e) {
            request.status(400);
            show(request, form, Amiss.of(e));
        }
    }
}
