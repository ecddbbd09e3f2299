package org.twinbar.report.paper;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.twinbar.exchange.InputException;
import org.twinbar.method.Caution;
import org.twinbar.method.Description;
import org.twinbar.method.Named;
import org.twinbar.report.paper.Form.Line;
import org.twinbar.report.paper.Form.Part;
import org.twinbar.specimen.Bed;
import org.twinbar.specimen.Plate;
import org.twinbar.specimen.PrintOrientation;
import org.twinbar.specimen.Shape;
import org.twinbar.specimen.StandardShapes;
import org.twinbar.specimen.ToPrint;
import org.twinbar.study.ReadOn;
import org.twinbar.treatment.Cautions;

/** Run sheets, print sheets and treatment sheets, as PDF. */
public final class BenchSheets {

    /** Finer than a drawing of a bed shows (mm). */
    private static final double MAP_CHORD = 0.2;

    private static final String DATE = "Date";
    private static final String BY = "By whom";

    /** What is written down of every run; METHODS.md L, minimum print record. */
    private static final List<Field> PRINT = List.of(
            Field.words(DATE),
            Field.words(BY),
            Field.words("Printer"),
            Field.words("Polymer, maker, grade"),
            Field.words("Colour, lot"),
            Field.words("Drying: °C, hours"),
            Field.number("Nozzle, its material", "mm"),
            Field.number("Layer height", "mm"),
            Field.number("Line width", "mm"),
            Field.number("Outlines", "lines"),
            Field.number("Top and bottom", "layers"),
            Field.words("Infill: pattern, %"),
            Field.words("Raster angles, seam"),
            Field.number("Nozzle temperature", "°C"),
            Field.number("Bed temperature", "°C"),
            Field.number("Chamber temperature", "°C"),
            Field.number("Speed", "mm/s"),
            Field.words("Cooling"));

    private static final List<String> PRINT_CAUTIONS = List.of(
            "Nozzle and bed burn: let both cool, or use the scraper away from your hand.",
            "Air the room; some polymers give off fumes that do harm.");

    private final Paper paper;
    private final Function<String, Optional<Shape>> shapes;

    /** @param shapes finds a shape by its name, for its picture */
    public BenchSheets(Paper paper, Function<String, Optional<Shape>> shapes) {
        this.paper = paper;
        this.shapes = shapes;
    }

    /** Returns sheets whose pictures are those of the standard shapes. */
    public static BenchSheets on(Paper paper) {
        return new BenchSheets(paper, StandardShapes::named);
    }

    /** Sets the run sheet of a test whose instruments are not known. */
    public byte[] test(
            Pieces pieces, Description method, Map<String, String> known, List<String> wanted) {
        return test(pieces, method, known, wanted, ReadOn.UNKNOWN);
    }

    /**
     * Sets the run sheet of a test: specimens in test order, with fields for what is read. It never
     * tells a group.
     *
     * @param readOn tells to which step each is read
     * @param known names and values of what is the same for all
     * @param wanted names of what is read on each specimen; empty for the usual
     * @throws InputException where a wanted name is unknown
     */
    public byte[] test(
            Pieces pieces,
            Description method,
            Map<String, String> known,
            List<String> wanted,
            ReadOn readOn) {
        Set<String> fields = wanted.stream().map(Asked::key).collect(Collectors.toSet());
        requireKnown(method, wanted);
        Map<String, String> said = new LinkedHashMap<>();
        known.forEach((name, value) -> said.put(Asked.key(name), value));
        List<Part> parts = new ArrayList<>();
        List<Field> once = new ArrayList<>();
        Set<String> instruments = new java.util.LinkedHashSet<>();
        for (List<Piece> alike : pieces.by(it -> it.kind() + "\t" + it.shape()).values()) {
            Optional<Shape> shape = shapes.apply(alike.get(0).shape());
            int places = shape.map(it -> it.places().size()).orElse(3);
            Asked asked = Asked.of(method, said.keySet(), fields, places, readOn);
            asked.once().stream().filter(it -> !once.contains(it)).forEach(once::add);
            instruments.addAll(asked.instruments());
            parts.add(part(alike, shape, asked.each()));
        }
        List<Field> head = new ArrayList<>(List.of(
                Field.words(DATE),
                Field.words(BY),
                Field.number("Room temperature", "°C"),
                Field.number("Humidity", "%")));
        instruments.forEach(it -> head.add(Field.words("Which " + it)));
        head.addAll(once);
        List<String> about = new ArrayList<>(pieces.about());
        if (pieces.all().stream().anyMatch(Piece::isPilot)) {
            about.add("Pilots come first: they tell the scatter, the range of the instrument and"
                    + " whether the camera can read it. Nothing read on them is compared.");
        }
        about.add("%s specimens in test order: keep to it, and write down what you see before you"
                        .formatted(pieces.all().size())
                + " look at the next.");
        method.asked().stream()
                .filter(it -> said.containsKey(Asked.key(it.name())))
                .forEach(it -> about.add(it.label() + ": " + said.get(Asked.key(it.name()))));
        return Setting.pdf(
                List.of(new Form(
                        method.title() + ": run sheet",
                        pieces.study(),
                        about,
                        head,
                        method.cautions().stream().map(Caution::text).toList(),
                        parts,
                        "Photograph what broke beside its code. A specimen that could not be tested"
                                + " stays on this sheet, with the reason.")),
                paper);
    }

    /**
     * Sets a sheet for each print run: what was set, which specimen lies where, what it weighs.
     *
     * @param bed on which they are laid out, drawn where it is known
     * @throws org.twinbar.specimen.ShapeException where the bed is too small
     */
    public byte[] print(Pieces pieces, Optional<Bed> bed) {
        List<Form> forms = new ArrayList<>();
        for (Map.Entry<String, List<Piece>> run : pieces.by(Piece::run).entrySet()) {
            List<Piece> inPlace = run.getValue().stream()
                    .sorted(java.util.Comparator.comparingInt(BenchSheets::position))
                    .toList();
            List<String> about = new ArrayList<>(pieces.about());
            about.add("%s specimens, in their places on the bed.".formatted(inPlace.size()));
            if (changesBetweenRuns(pieces)) {
                about.add("The whole run: "
                        + Stream.of(
                                        inPlace.get(0).group().orElse(""),
                                        inPlace.get(0).treatment())
                                .filter(it -> !it.isEmpty())
                                .collect(Collectors.joining(", "))
                        + ". This sheet tells groups: keep it from whoever tests.");
            }
            forms.add(new Form(
                    title(run.getKey()),
                    pieces.study(),
                    about,
                    PRINT,
                    PRINT_CAUTIONS,
                    List.of(new Part(
                            "",
                            List.of(),
                            bed.map(it -> BedMap.svg(plate(inPlace, it))),
                            "The bed from above, as far as it is taken.",
                            facts(inPlace, PRINTED),
                            List.of(
                                    new Field("Mass", "g", "scale", 1, List.of()),
                                    Field.words("Warped, gaps, strings, remarks")),
                            lines(inPlace, PRINTED))),
                    "Mark each specimen before it leaves the bed. A specimen that is printed again"
                            + " keeps its code, and the sheet says so."));
        }
        forms.sort(java.util.Comparator.comparingInt(it -> number(it.title())));
        return Setting.pdf(forms, paper);
    }

    private static String title(String run) {
        if (run.equals(Piece.PILOT_RUN)) {
            return "Pilots, before print run 1";
        }
        return run.isEmpty() ? "Print sheet" : "Print run " + run;
    }

    private Plate plate(List<Piece> pieces, Bed bed) {
        List<ToPrint> specimens = pieces.stream()
                .map(it -> ToPrint.of(
                        shapes.apply(it.shape())
                                .orElseThrow(() -> new InputException(
                                        "specimen '%s' has no known shape, so no place on a bed"
                                                .formatted(it.code()))),
                        Optional.of(it.code()),
                        orientation(it)))
                .toList();
        return Plate.of(bed, specimens, MAP_CHORD);
    }

    private static PrintOrientation orientation(Piece piece) {
        return Stream.of(PrintOrientation.values())
                .filter(it -> it.word().equalsIgnoreCase(piece.orientation()))
                .findFirst()
                .orElse(PrintOrientation.FLAT);
    }

    /** Where each run has one group of several, whoever prints has to know which. */
    private static boolean changesBetweenRuns(Pieces pieces) {
        List<Long> groupsOfRuns = pieces.withoutPilots().by(Piece::run).values().stream()
                .map(run -> run.stream().map(Piece::group).distinct().count())
                .toList();
        long groups = pieces.all().stream().map(Piece::group).distinct().count();
        return groups > 1 && groupsOfRuns.stream().allMatch(it -> it == 1);
    }

    /** Sets a sheet for each mix: what was weighed, what each specimen gained. It tells groups. */
    public byte[] treat(Pieces all) {
        Pieces pieces = all.withoutPilots();
        List<Form> forms = new ArrayList<>();
        for (Map.Entry<String, List<Piece>> mix : pieces.by(Piece::mix).entrySet()) {
            boolean isMix = !mix.getKey().isEmpty();
            boolean onlyTreated = pieces.all().stream().allMatch(it -> it.mix().isEmpty());
            forms.add(
                    new Form(
                            isMix
                                    ? "Mix " + mix.getKey()
                                    : onlyTreated ? "Treatment sheet" : "No mix",
                            pieces.study(),
                            about(pieces, isMix || onlyTreated),
                            isMix || onlyTreated
                                    ? MIX
                                    : List.of(Field.words(DATE), Field.words(BY)),
                            isMix || onlyTreated ? Cautions.MIXING : List.of(),
                            List.of(new Part(
                                    "",
                                    List.of(),
                                    Optional.empty(),
                                    "",
                                    facts(mix.getValue(), TREATED),
                                    List.of(
                                            new Field("Mass before", "g", "scale", 1, List.of()),
                                            new Field("Mass after", "g", "scale", 1, List.of()),
                                            Field.words("When, how many coats"),
                                            Field.words("What really happened")),
                                    lines(mix.getValue(), TREATED))),
                            "What was planned and what was done are both kept: write down every departure."));
        }
        forms.sort(java.util.Comparator.comparingInt(it -> number(it.title())));
        return Setting.pdf(forms, paper);
    }

    private static final List<Field> MIX = List.of(
            Field.words(DATE),
            Field.words(BY),
            Field.number("Room temperature", "°C"),
            Field.number("Humidity", "%"),
            Field.words("Component A, lot"),
            Field.number("A to be weighed", "g"),
            Field.number("A as weighed", "g"),
            Field.words("Time of mixing"),
            Field.words("Component B, lot"),
            Field.number("B to be weighed", "g"),
            Field.number("B as weighed", "g"),
            Field.words("To be used up by"));

    private static List<String> about(Pieces pieces, boolean isMix) {
        List<String> about = new ArrayList<>(pieces.about());
        about.add("This sheet tells groups: keep it from whoever tests.");
        if (!isMix) {
            about.add(
                    "These take none of the mix: weigh and handle them as the others all the same.");
        }
        return about;
    }

    private static void requireKnown(Description method, List<String> wanted) {
        Set<String> names = method.asked().stream().map(Named::name).collect(Collectors.toSet());
        for (String one : wanted) {
            if (names.stream().noneMatch(it -> Asked.key(it).equals(Asked.key(one)))) {
                throw new InputException("%s asks for no '%s'%s"
                        .formatted(
                                method.name(),
                                one,
                                org.twinbar.exchange.Spelling.hint(one, names)));
            }
        }
    }

    private Part part(List<Piece> alike, Optional<Shape> shape, List<Field> fields) {
        return new Part(
                alike.get(0).kind(),
                List.of(),
                shape.map(ShapePicture::svg),
                shape.map(ShapePicture::legend).orElse(""),
                List.of(),
                fields,
                alike.stream().map(it -> new Line(it.code(), List.of())).toList());
    }

    /** A header, and what stands below it. */
    private record Fact(String header, Function<Piece, String> of) {}

    private static final List<Fact> PRINTED = List.of(
            new Fact("Place", Piece::position),
            new Fact("Kind", Piece::kind),
            new Fact("Shape", Piece::shape),
            new Fact("Standing", Piece::orientation));

    private static final List<Fact> TREATED = List.of(
            new Fact("Group", it -> it.group().orElse("")),
            new Fact("Treatment", Piece::treatment),
            new Fact("Oven load", Piece::load),
            new Fact("Kind", Piece::kind));

    private static Stream<Fact> told(List<Piece> pieces, List<Fact> facts) {
        return facts.stream()
                .filter(fact ->
                        pieces.stream().anyMatch(it -> !fact.of().apply(it).isEmpty()));
    }

    private static List<String> facts(List<Piece> pieces, List<Fact> facts) {
        return told(pieces, facts).map(Fact::header).toList();
    }

    private static List<Line> lines(List<Piece> pieces, List<Fact> facts) {
        List<Fact> told = told(pieces, facts).toList();
        return pieces.stream()
                .map(piece -> new Line(
                        piece.code(),
                        told.stream().map(it -> it.of().apply(piece)).toList()))
                .toList();
    }

    private static int position(Piece piece) {
        return number(piece.position());
    }

    /** Returns the number that a text ends in; the highest where it ends in none. */
    private static int number(String text) {
        String digits = text.replaceAll(".*\\D", "");
        return digits.isEmpty() || digits.length() > 9
                ? Integer.MAX_VALUE
                : Integer.parseInt(digits);
    }
}
