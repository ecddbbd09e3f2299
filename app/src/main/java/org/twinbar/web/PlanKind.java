package org.twinbar.web;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.twinbar.exchange.InputException;
import org.twinbar.method.Property.Scale;
import org.twinbar.planning.Series;
import org.twinbar.quantity.Quantity;
import org.twinbar.quantity.QuantityException;
import org.twinbar.quantity.Unit;
import org.twinbar.report.Written;
import org.twinbar.report.paper.Drawings;
import org.twinbar.specimen.Form;
import org.twinbar.specimen.PrintOrientation;
import org.twinbar.specimen.Shape;
import org.twinbar.specimen.StandardShapes;
import org.twinbar.study.judged.Asked;
import org.twinbar.study.judged.Asked.Term;
import org.twinbar.study.judged.Claim;
import org.twinbar.study.judged.Plan;

/**
 * A kind of specimens on the form of a plan.
 *
 * @param index tells its fields from those of another kind
 * @param series as the plan has it, or as the claims ask
 * @param title of its test
 * @param scale of what its first question asks
 * @param questions that it answers
 */
public record PlanKind(
        int index, Series series, String title, Scale scale, List<Claim.Question> questions) {

    private static final Unit MILLIMETRES = Unit.of("mm");
    private static final String OWN = "own";

    public PlanKind {
        questions = List.copyOf(questions);
    }

    /** Returns the name of a field of this kind. */
    public String field(String name) {
        return "s" + index + "." + name;
    }

    /**
     * Returns what the fields hold before anybody typed.
     *
     * @param reason why there are as many in a plan that there is
     */
    Map<String, String> begun(Optional<Plan.NumberReason> reason) {
        Map<String, String> fields = new LinkedHashMap<>();
        Optional<Shape> shape = StandardShapes.named(series.shape());
        Optional<Form> own = shape.flatMap(it -> ownForm(it.name()));
        fields.put(field("shape"), own.map(Form::word).orElse(series.shape()));
        if (own.isPresent()) {
            fields.put(field("sizes"), sizes(shape.orElseThrow()));
        }
        fields.put(field("orientation"), series.orientation().word());
        fields.put(field("n"), Integer.toString(series.perGroup()));
        fields.put(field("pilots"), Integer.toString(series.pilots()));
        said(Term.CLAIMED)
                .or(() ->
                        isOfLevel() || said(Term.EXPECT).filter("same"::equals).isPresent()
                                ? Optional.empty()
                                : said(Term.WORTH).flatMap(PlanKind::twice))
                .ifPresent(it -> fields.put(field("expected"), it));
        said(Term.WORTH).ifPresent(it -> fields.put(field("worth"), it));
        reason.ifPresent(it -> {
            fields.put(field("expected"), it.expected().replace("past the level by ", ""));
            it.worth().ifPresent(worth -> fields.put(field("worth"), worth));
            if (it.from().equals("given")) {
                fields.put(field("scatter"), it.scatter());
            }
        });
        return fields;
    }

    /** Where nothing is claimed but something is worth having, twice that is looked for. */
    private static Optional<String> twice(String worth) {
        try {
            Quantity size = Quantity.parse(worth);
            return Optional.of("%s %s"
                    .formatted(Written.number(2 * size.value(), 3), size.unit().symbol())
                    .strip());
        } catch (QuantityException e) {
            return Optional.empty();
        }
    }

    private static Optional<Form> ownForm(String name) {
        boolean standard =
                StandardShapes.all().stream().anyMatch(it -> it.name().equals(name));
        return standard ? Optional.empty() : Form.named(name.replaceAll("-.*", ""));
    }

    private static String sizes(Shape shape) {
        List<String> sizes = new ArrayList<>();
        shape.measures()
                .forEach(it -> sizes.add(it.name() + " " + Written.number(it.millimetres(), 5)));
        return String.join(", ", sizes);
    }

    Optional<String> said(Term term) {
        return asked().flatMap(it -> it.said(term));
    }

    Optional<Asked> asked() {
        return questions.stream().findFirst().map(Claim.Question::asked);
    }

    private boolean isYesNo() {
        return scale == Scale.YES_NO;
    }

    /** Whether its claims are about a level rather than a change. */
    public boolean isOfLevel() {
        return said(Term.AT).isPresent()
                || said(Term.OF).isPresent()
                || isYesNo() && said(Term.CLAIMED).isEmpty();
    }

    public boolean needsControlShare() {
        return isYesNo() && !isOfLevel();
    }

    /** Returns what is expected, as the form asks for it. */
    public String expectedWords() {
        if (!isOfLevel()) {
            return "Change that is expected";
        }
        return isYesNo()
                ? "Share that passes, if it is true"
                : "How far the mean lies past the level";
    }

    /** Returns which way up its claims ask for; empty where they leave it open. */
    public String askedOrientation() {
        return asked().map(it -> it.where().getOrDefault("orientation", "")).orElse("");
    }

    /** A shape that may be chosen. */
    public record Offer(String value, String title, String about, String picture) {}

    /** Returns the shapes that may be chosen, the usual one first, those of own sizes last. */
    public List<Offer> shapes() {
        List<Offer> offers = new ArrayList<>();
        StandardShapes.all().stream()
                .filter(it -> it.name().equals(series.shape()))
                .forEach(it -> offers.add(offer(it)));
        StandardShapes.all().stream()
                .filter(it -> !it.name().equals(series.shape()))
                .forEach(it -> offers.add(offer(it)));
        for (Form each : Form.values()) {
            offers.add(new Offer(
                    each.word(),
                    PlanForm.heading(each.word()) + " of own sizes",
                    each.usual().stream()
                            .map(Shape.Measure::name)
                            .collect(Collectors.joining(", ")),
                    ""));
        }
        offers.add(new Offer(OWN, "The part itself, or another shape", "no file is made", ""));
        return offers;
    }

    /** Returns what is chosen, in words. */
    public String chosen(PlanForm form) {
        return shapes().stream()
                .filter(it -> form.is(field("shape"), it.value()))
                .map(it -> "%s; choose another".formatted(it.title()))
                .findFirst()
                .orElse("Choose one");
    }

    /** Returns the drawing of the shape that is chosen; empty where there is none. */
    public String picture(PlanForm form) {
        return shape(form).map(Drawings::shape).orElse("");
    }

    /** Returns in words what the drawing shows. */
    public String legend(PlanForm form) {
        return shape(form).map(Drawings::legend).orElse("");
    }

    private Optional<Shape> shape(PlanForm form) {
        return form.series(this).flatMap(it -> StandardShapes.named(it.shape()));
    }

    private static Offer offer(Shape shape) {
        return new Offer(shape.name(), shape.title(), shape.source(), Drawings.shape(shape));
    }

    /**
     * Returns the name of the shape that a form chooses.
     *
     * @throws InputException where its sizes can't be read
     */
    String shape(org.twinbar.web.Form form) {
        String chosen = form.said(field("shape")).orElse(series.shape());
        return Form.named(chosen)
                .map(it -> it.of(sizes(form.text(field("sizes")))).name())
                .orElse(chosen);
    }

    private static Map<String, Double> sizes(String text) {
        Map<String, Double> sizes = new LinkedHashMap<>();
        for (String part : text.split("[;\\n]|,(?!\\d)", -1)) {
            String size = part.strip();
            if (!size.isEmpty()) {
                String[] words = size.split("\\s*=\\s*|\\s+(?=[-+]?\\d)", 2);
                if (words.length != 2) {
                    throw new InputException(
                            "'%s' is no size: write its name and millimetres, such as length 100"
                                    .formatted(size));
                }
                try {
                    sizes.put(words[0], Quantity.parse(words[1], MILLIMETRES));
                } catch (QuantityException e) {
                    throw new InputException("%s: %s".formatted(words[0], e.getMessage()));
                }
            }
        }
        return sizes;
    }

    PrintOrientation orientation(org.twinbar.web.Form form) {
        String word = form.text(field("orientation")).toLowerCase(Locale.ROOT);
        return Arrays.stream(PrintOrientation.values())
                .filter(it -> it.word().equals(word))
                .findFirst()
                .orElse(series.orientation());
    }

    /** A kind that is printed another way up than its name says is called anew. */
    String name(org.twinbar.web.Form form) {
        PrintOrientation chosen = orientation(form);
        return chosen == series.orientation()
                ? series.name()
                : "%s, %s"
                        .formatted(
                                series.name().replaceAll(", (flat|edge|upright)$", ""),
                                chosen.word());
    }
}
