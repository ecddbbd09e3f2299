package org.twinbar.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.twinbar.quantity.Unit;
import org.twinbar.study.FieldException;
import org.twinbar.study.Filled;
import org.twinbar.study.MixSheet;
import org.twinbar.treatment.Batch;
import org.twinbar.treatment.Pouring;
import org.twinbar.treatment.Recipe;
import org.twinbar.treatment.Scale;
import org.twinbar.treatment.Thinner;
import org.twinbar.treatment.WorkingLife;

/**
 * What a person wants to mix, as they typed it.
 *
 * @param pouring the batch that is meant, and what the scale showed of it so far
 * @param limit of the ratio, relative
 * @param thinned where thinner is to go in
 * @param working how long the mix can be worked, where the data sheet was asked
 * @param celsius of room and resin, where it was read
 */
public record MixForm(
        Pouring pouring,
        double limit,
        Optional<Thinned> thinned,
        Optional<Working> working,
        OptionalDouble celsius) {

    static final String TOTAL = "total";
    static final String STEP = "step";
    static final String LIMIT = "limit";
    static final String THINNER = "thinner";
    static final String THINNER_DENSITY = "thinner_density";
    static final String LIFE = "life";
    static final String LIFE_AT = "life_at";
    static final String CELSIUS = "celsius";
    static final String SPREADING = "spreading";
    static final String READING = "reading";
    static final String SHOWN = "shown_";

    /** Components that were poured a second time, as their places parted by commas. */
    static final String AGAIN = "again";

    static final String SHOWN_AGAIN = "more_";

    private static final double USUAL_LIMIT = 0.02;

    private static final Unit GRAMS = Unit.of("g");
    private static final Unit DENSITIES = Unit.of("g/cm³");
    private static final Unit MINUTES = Unit.of("min");
    private static final Unit DEGREES = Unit.of("°C");
    private static final Unit SPREAD = Unit.of("g/min");

    /** A thinner's part, and its mass where its density is known (g). */
    public record Thinned(Thinner part, OptionalDouble grams) {}

    /**
     * How long a mix can be worked.
     *
     * @param temperature that it is worked at (°C), read or the usual one
     * @param gramsPerMinute how quickly it is spread, where that is known
     */
    public record Working(WorkingLife life, double temperature, OptionalDouble gramsPerMinute) {

        double minutes() {
            return life.minutesAt(temperature);
        }

        double largestBatch() {
            return gramsPerMinute.isPresent()
                    ? life.largestBatch(temperature, gramsPerMinute.getAsDouble())
                    : Batch.MOST_IN_A_CUP;
        }
    }

    /**
     * Reads a form.
     *
     * @throws FieldException where a field is missing or wrong, the first of them
     */
    static MixForm of(Filled form) {
        Recipe recipe = MixSheet.recipe(form);
        double total = form.number(TOTAL, GRAMS, "how much is to be mixed in all");
        Batch batch = form.at(TOTAL, () -> recipe.ofTotal(total));
        double step = form.number(STEP, GRAMS, "the smallest step that the scale shows");
        Scale scale = form.at(STEP, () -> new Scale(step));
        form.at(TOTAL, () -> batch.onScale(scale));
        double limit = form.share(LIMIT).orElse(USUAL_LIMIT);
        form.at(LIMIT, () -> scale.smallestBatch(recipe, limit));
        OptionalDouble celsius = form.number(CELSIUS, DEGREES);
        return new MixForm(
                pouring(form, batch, scale),
                limit,
                thinned(form, batch),
                working(form, celsius),
                celsius);
    }

    private static Pouring pouring(Filled form, Batch batch, Scale scale) {
        Pouring.Reading reading = form.said(READING).filter("running"::equals).isPresent()
                ? Pouring.Reading.RUNNING
                : Pouring.Reading.TARED;
        List<Pouring.Pour> pours = new ArrayList<>();
        Pouring pouring = new Pouring(batch, pours, reading, scale);
        for (Poured field : poured(form, batch.grams().size())) {
            OptionalDouble shown = form.number(field.name(), GRAMS);
            if (shown.isPresent()) {
                pours.add(new Pouring.Pour(field.component(), shown.getAsDouble()));
                List<Pouring.Pour> soFar = List.copyOf(pours);
                pouring = form.at(field.name(), () -> new Pouring(batch, soFar, reading, scale));
            }
        }
        return pouring;
    }

    /** A field for what the scale shows after a pour. */
    public record Poured(String name, int component) {}

    /** Returns the fields of what was poured: each component, then those that were poured again. */
    static List<Poured> poured(Filled form, int components) {
        List<Poured> fields = new ArrayList<>();
        for (int i = 0; i < components; i++) {
            fields.add(new Poured(SHOWN + i, i));
        }
        List<Integer> again = again(form, components);
        for (int i = 0; i < again.size(); i++) {
            fields.add(new Poured(SHOWN_AGAIN + i, again.get(i)));
        }
        return fields;
    }

    /** Returns the names of all fields that may be wrong. */
    public static List<String> fields(List<Poured> poured) {
        List<String> fields = new ArrayList<>(List.of(
                "number",
                TOTAL,
                STEP,
                LIMIT,
                LIFE,
                LIFE_AT,
                CELSIUS,
                SPREADING,
                THINNER,
                THINNER_DENSITY));
        for (int i = 0; i < MixSheet.MOST_COMPONENTS; i++) {
            fields.add(MixSheet.PARTS + i);
            fields.add(MixSheet.DENSITY + i);
        }
        poured.forEach(each -> fields.add(each.name()));
        return fields;
    }

    /** Returns which components were poured again, in their order. */
    static List<Integer> again(Filled form, int components) {
        List<Integer> again = new ArrayList<>();
        for (String place : form.said(AGAIN).orElse("").split(",", -1)) {
            if (place.matches("[0-3]") && Integer.parseInt(place) < components) {
                again.add(Integer.parseInt(place));
            }
        }
        return again;
    }

    private static Optional<Thinned> thinned(Filled form, Batch batch) {
        OptionalDouble share = form.share(THINNER);
        if (share.isEmpty()) {
            return Optional.empty();
        }
        batch.recipe().components().forEach(each -> {
            if (each.density().isEmpty()) {
                throw new FieldException(
                        THINNER,
                        "thinner is measured by volume: write down the density of %s as well"
                                .formatted(each.name()));
            }
        });
        Thinner part = form.at(THINNER, () -> batch.thinner(share.getAsDouble()));
        OptionalDouble density = form.number(THINNER_DENSITY, DENSITIES);
        return Optional.of(new Thinned(
                part,
                density.isPresent()
                        ? OptionalDouble.of(
                                form.at(THINNER_DENSITY, () -> part.grams(density.getAsDouble())))
                        : OptionalDouble.empty()));
    }

    private static Optional<Working> working(Filled form, OptionalDouble celsius) {
        OptionalDouble minutes = form.number(LIFE, MINUTES);
        OptionalDouble spreading = form.number(SPREADING, SPREAD);
        if (minutes.isEmpty()) {
            if (spreading.isPresent()) {
                throw new FieldException(
                        LIFE, "batches are split by the working life: take it from the data sheet");
            }
            return Optional.empty();
        }
        OptionalDouble at = form.number(LIFE_AT, DEGREES);
        WorkingLife life = form.at(
                at.isPresent() ? LIFE_AT : LIFE,
                () -> new WorkingLife(
                        minutes.getAsDouble(), at.orElse(WorkingLife.USUAL_TEMPERATURE)));
        double temperature = celsius.orElse(WorkingLife.USUAL_TEMPERATURE);
        form.at(CELSIUS, () -> life.minutesAt(temperature));
        spreading.ifPresent(rate -> form.at(SPREADING, () -> life.largestBatch(temperature, rate)));
        return Optional.of(new Working(life, temperature, spreading));
    }
}
