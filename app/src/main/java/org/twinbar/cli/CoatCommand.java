package org.twinbar.cli;

import java.io.IOException;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.twinbar.exchange.MeshFile;
import org.twinbar.finding.Finding;
import org.twinbar.report.Written;
import org.twinbar.specimen.Solid;
import org.twinbar.treatment.Cautions;
import org.twinbar.treatment.Film;
import org.twinbar.treatment.Scale;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code twinbar coat}: how much mix a film takes, or how thick the film is that was gained. */
@Command(
        name = "coat",
        description = "How much mix a film takes, or how thick a film the gained mass is.",
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class CoatCommand implements Callable<Integer> {

    /** What is known of an area or a density where nothing better is said; common practice. */
    private static final double USUAL_DOUBT = 0.02;

    /** Thicker than this is a casting (µm); our own choice. */
    private static final double MOST_FILM = 5000;

    private static final String ONLY_AREA = "an area alone has no volume";
    private static final String OPEN = "the mesh does not enclose a volume";

    private final Context context;

    @Option(
            names = "--mesh",
            paramLabel = "FILE",
            description = "Coated part as .stl or .3mf; - for standard input.")
    @Nullable
    String mesh;

    @Option(
            names = "--shape",
            paramLabel = "NAME",
            description = "Coated standard specimen; 'shape --list' names them.")
    @Nullable
    String shape;

    @Option(
            names = "--area",
            paramLabel = "AREA",
            description = "Coated area, such as 120cm2; in mm² where no unit stands.")
    @Nullable
    String area;

    @Option(
            names = "--film",
            paramLabel = "LENGTH",
            description = "Film to be had, such as 150um; in mm where no unit stands.")
    @Nullable
    String film;

    @Option(
            names = "--density",
            required = true,
            paramLabel = "D",
            description = "Of the mix, or of the cured film for --gained; in g/cm³.")
    String density = "";

    @Option(
            names = "--transfer",
            paramLabel = "SHARE",
            description = "Share of the mix that ends up on the part; 100%% unless said.")
    @Nullable
    String transfer;

    @Option(
            names = "--coats",
            paramLabel = "N",
            description = "Number of coats that make up the film; 1 unless said.")
    int coats = 1;

    @Option(
            names = "--solids",
            paramLabel = "SHARE",
            description = "Share of the volume that stays: tells the wet film.")
    @Nullable
    String solids;

    @Option(names = "--gained", paramLabel = "MASS", description = "Mass that a part gained.")
    @Nullable
    String gained;

    @Option(
            names = "--scale",
            paramLabel = "STEP",
            description = "Smallest step of the scale, for the film's uncertainty.")
    @Nullable
    String scale;

    @Option(names = "--json", description = "Writes JSON.")
    boolean json;

    CoatCommand(Context context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        Surface surface = surface();
        Film made = new Film(surface.area(), Typed.in(Typed.DENSITY, "--density", density));
        if ((film == null) == (gained == null)) {
            throw new UsageException(
                    "give --film for the mix that it takes, or --gained for the film that it is");
        }
        if (coats < 1 || coats > 100) {
            throw new UsageException(
                    "--coats: a film is made of 1 to 100 coats, not %s".formatted(coats));
        }
        Coated coated = film != null ? planned(made, film) : gained(made, gained);
        if (json) {
            json(surface, coated);
        } else {
            context.terminal().out().print(text(surface, coated));
        }
        return Cli.DONE;
    }

    /** What is coated. */
    private record Surface(double area, OptionalDouble volume, List<Finding> findings) {}

    /** The answer: a film with the mix that it takes, or with its uncertainty. */
    private record Coated(
            double filmMicrometres,
            OptionalDouble neededGrams,
            OptionalDouble uncertainty,
            OptionalDouble wetMicrometres) {}

    private Coated planned(Film made, String typed) {
        double thickness = film(typed);
        double needed = made.needed(thickness, Typed.share("--transfer", transfer, 1));
        return new Coated(
                thickness, OptionalDouble.of(needed), OptionalDouble.empty(), wet(thickness));
    }

    private Coated gained(Film made, @Nullable String typed) {
        double grams = Typed.in(Typed.GRAMS, "--gained", String.valueOf(typed));
        OptionalDouble uncertainty = scale == null
                ? OptionalDouble.empty()
                : OptionalDouble.of(made.uncertainty(
                        grams,
                        new Scale(Typed.in(Typed.GRAMS, "--scale", scale)),
                        USUAL_DOUBT,
                        USUAL_DOUBT));
        double thickness = made.thickness(grams);
        return new Coated(thickness, OptionalDouble.empty(), uncertainty, wet(thickness));
    }

    private OptionalDouble wet(double dry) {
        return solids == null
                ? OptionalDouble.empty()
                : OptionalDouble.of(Film.wet(dry, Typed.share("--solids", solids)));
    }

    /** Lengths are mm where no unit stands, and nobody means 150 mm of film. */
    private static double film(String typed) {
        double micrometres = Typed.in(Typed.MILLIMETRES, "--film", typed) * 1000;
        if (micrometres > MOST_FILM) {
            throw new UsageException(
                    "--film: '%s' is a film of %s mm, and the limit is %s mm; micrometres are written 150um"
                            .formatted(
                                    typed.strip(),
                                    Written.number(micrometres / 1000, 4),
                                    Written.number(MOST_FILM / 1000, 4)));
        }
        return micrometres;
    }

    private Surface surface() {
        long given = Stream.of(mesh, shape, area).filter(Objects::nonNull).count();
        if (given != 1) {
            throw new UsageException("say what is coated by one of --mesh, --shape and --area");
        }
        if (mesh != null) {
            MeshFile.Read read = MeshFile.read(context.source(mesh));
            boolean closed = read.soundness().isWatertight();
            return new Surface(
                    read.mesh().area(),
                    closed
                            ? OptionalDouble.of(Math.abs(read.mesh().volume()))
                            : OptionalDouble.empty(),
                    read.findings());
        }
        if (shape != null) {
            Solid solid = ShapeCommand.shape(shape).solid();
            return new Surface(solid.area(), OptionalDouble.of(solid.volume()), List.of());
        }
        double typed = Typed.in(Typed.SQUARE_MILLIMETRES, "--area", String.valueOf(area));
        return new Surface(typed, OptionalDouble.empty(), List.of());
    }

    private void json(Surface surface, Coated coated) {
        Json.write(context.terminal().out(), out -> {
            out.put("area_mm2", surface.area());
            either(out, "volume_mm3", surface.volume(), area == null ? OPEN : ONLY_AREA);
            either(out, "needed_g", coated.neededGrams(), "--gained asks for the film");
            out.put("film_um", coated.filmMicrometres()).put("coats", coats);
            out.put("eachCoat_um", coated.filmMicrometres() / coats);
            if (gained != null) {
                either(out, "film_u_um", coated.uncertainty(), "say the scale's step with --scale");
            }
            if (coated.wetMicrometres().isPresent()) {
                out.put("wetFilm_um", coated.wetMicrometres().getAsDouble());
            }
            out.findings(surface.findings()).texts("cautions", Cautions.MIXING);
        });
    }

    private static void either(Json out, String name, OptionalDouble value, String reason)
            throws IOException {
        if (value.isPresent()) {
            out.put(name, value.getAsDouble());
        } else {
            out.reason(name, reason);
        }
    }

    private String text(Surface surface, Coated coated) {
        Aligned rows = new Aligned().row("area", four(surface.area()) + " mm²");
        surface.volume().ifPresent(it -> rows.row("volume", four(it) + " mm³"));
        coated.neededGrams().ifPresent(it -> rows.row("mix needed", three(it) + " g"));
        rows.row("film", three(coated.filmMicrometres()) + " µm");
        coated.uncertainty()
                .ifPresent(it -> rows.row("its standard uncertainty", three(it) + " µm"));
        if (coats > 1) {
            rows.row(
                    "each of %s coats".formatted(coats),
                    three(coated.filmMicrometres() / coats) + " µm");
        }
        coated.wetMicrometres().ifPresent(it -> rows.row("wet film", three(it) + " µm"));
        StringBuilder text = new StringBuilder(rows.toString());
        surface.findings()
                .forEach(it -> text.append(
                        ComparisonsText.wrapped(it.level().word() + ": " + it.text(), "")));
        Cautions.MIXING.forEach(it -> text.append(ComparisonsText.wrapped("caution: " + it, "")));
        return text.toString();
    }

    private static String three(double value) {
        return Written.number(value, 3);
    }

    private static String four(double value) {
        return Written.number(value, 4);
    }
}
