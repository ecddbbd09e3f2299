package org.twinbar.study.picture;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.twinbar.exchange.InputException;
import org.twinbar.picture.Figure;
import org.twinbar.picture.Repeated;
import org.twinbar.picture.Scale;
import org.twinbar.picture.Spot;
import org.twinbar.picture.View;
import org.twinbar.quantity.QuantityException;
import org.twinbar.quantity.Unit;
import org.twinbar.study.table.OnPicture;
import org.twinbar.study.table.TypedNumber;

/**
 * What a person set on a picture: the places, and what is known of them, as a page sends it. The
 * picture itself is not here. Each part is read when it is asked for, so that one that can't be
 * understood keeps no other from being told.
 */
public final class PictureSheet {

    /** More than anybody sets by hand. */
    private static final int LONGEST = 256 << 10;

    private static final JsonMapper JSON = new JsonMapper();
    private static final Unit DEGREE = Unit.of("°");
    private static final Unit MM = Unit.of("mm");

    private final JsonNode json;

    private PictureSheet(JsonNode json) {
        this.json = json;
    }

    /** @throws InputException where it isn't what the page sends */
    public static PictureSheet read(String text) {
        if (text.length() > LONGEST) {
            throw new InputException("there are %s characters of places, must be %s or fewer"
                    .formatted(text.length(), LONGEST));
        }
        try {
            JsonNode json = JSON.readTree(text);
            if (json != null && json.isObject()) {
                return new PictureSheet(json);
            }
        } catch (JsonProcessingException e) {
            // It is refused below, like whatever else no page of ours sends.
        }
        throw new InputException("the places on the picture did not arrive whole; try again");
    }

    /** Returns the name of the picture's file. */
    public String file() {
        return json.path("file").asText("picture");
    }

    /**
     * A scale that was set.
     *
     * @param name by which readings share its error
     * @param unit of its distance
     * @param looks at the known distance, in pixels
     * @param exact whether nobody said how well the distance is known
     */
    public record Set(String name, Unit unit, Scale scale, Repeated looks, boolean exact) {}

    /**
     * Returns the scale; empty where no place of it is set.
     *
     * @throws InputException where it can't be reckoned with
     */
    public Optional<Set> scale() {
        JsonNode scale = json.path("scale");
        if (scale.path("looks").isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(sensible("the scale", () -> {
            Unit unit = unit(scale);
            Repeated looks = looks(Figure.LENGTH, scale.path("looks"));
            double distance = number("the known distance", scale.path("distance"), unit);
            View view = new View(
                    typed("the tilt", scale.path("tilt"), DEGREE, 0),
                    typed("the difference in depth", scale.path("depth"), MM, 0),
                    typed("the camera's distance", scale.path("away"), MM, 1));
            double known = typed("known to", scale.path("known"), unit, 0);
            return new Set(
                    "picture scale %s of %s"
                            .formatted(id(scale), scale.path("file").asText(file())),
                    unit,
                    Scale.of(looks, distance, known, view),
                    looks,
                    known == 0);
        }));
    }

    private static String id(JsonNode scale) {
        String id = scale.path("id").asText();
        if (!id.matches("[0-9a-z]{4,32}")) {
            throw new InputException("the scale has no name; load the page again");
        }
        return id;
    }

    private static Unit unit(JsonNode scale) {
        try {
            Unit unit = Unit.of(scale.path("unit").asText("mm"));
            if (!unit.measuresSameAs(MM)) {
                throw new InputException(
                        "the known distance is in %s, must be a length".formatted(unit.named()));
            }
            return unit;
        } catch (QuantityException e) {
            throw new InputException(e.getMessage());
        }
    }

    /** How many things were measured. */
    public int figures() {
        return json.path("figures").size();
    }

    /**
     * What was measured on a picture.
     *
     * @param sd what its repeats scatter
     * @param looks how often it was measured
     * @param how to keep it
     */
    public record Measured(double value, Unit unit, double sd, int looks, OnPicture how) {

        /** Returns the standard uncertainty, that of the scale included. */
        public double standardUncertainty() {
            return how.standardUncertainty(value);
        }
    }

    /**
     * Returns what was measured.
     *
     * @param number from 0
     * @throws InputException where it can't be reckoned with, such as a length without a scale
     */
    public Measured figure(int number) {
        JsonNode figure = json.path("figures").path(number);
        Figure kind = kind(figure.path("figure").asText());
        Repeated looks = sensible(
                kind.name().toLowerCase(java.util.Locale.ROOT),
                () -> looks(kind, figure.path("looks")));
        ObjectNode places = JsonNodeFactory.instance.objectNode();
        places.set("figure", figure);
        if (kind == Figure.ANGLE) {
            return measured(
                    Scale.Measured.withoutScale(looks),
                    looks.n(),
                    new Basis("picture " + file(), DEGREE, Double.POSITIVE_INFINITY, places));
        }
        Set scale = scale().orElseThrow(() ->
                new InputException("set the scale first: a length in pixels says nothing"));
        places.set("scale", json.path("scale"));
        return measured(
                scale.scale().of(looks),
                looks.n(),
                new Basis(scale.name(), scale.unit(), scale.scale().degreesOfFreedom(), places));
    }

    /** What a measurement stands on. */
    private record Basis(String scale, Unit unit, double shareFreedom, JsonNode places) {}

    private Measured measured(Scale.Measured on, int looks, Basis basis) {
        return new Measured(
                on.value(),
                basis.unit(),
                on.sd(),
                looks,
                new OnPicture(
                        Optional.of(basis.scale()),
                        basis.unit(),
                        on.own(),
                        on.ownDegreesOfFreedom(),
                        on.sharedShare(),
                        basis.shareFreedom(),
                        file(),
                        basis.places()));
    }

    private static Figure kind(String word) {
        for (Figure figure : Figure.values()) {
            if (figure.name().equalsIgnoreCase(word)) {
                return figure;
            }
        }
        throw new InputException(
                "'%s' can't be measured on a picture, a length, height or angle can"
                        .formatted(word));
    }

    private static Repeated looks(Figure figure, JsonNode looks) {
        List<org.twinbar.picture.Sighted> seen = new ArrayList<>();
        for (JsonNode look : looks) {
            List<Spot> spots = new ArrayList<>();
            look.forEach(spot -> spots.add(spot(spot)));
            seen.add(figure.of(spots));
        }
        return Repeated.of(seen);
    }

    static Spot spot(JsonNode spot) {
        if (spot.size() != 3) {
            throw new IllegalArgumentException("a place has a column, a row and a step");
        }
        return new Spot(
                spot.path(0).asDouble(Double.NaN),
                spot.path(1).asDouble(Double.NaN),
                spot.path(2).asDouble(Double.NaN));
    }

    /** Returns the places of the scale, as they were set. */
    JsonNode scaleSet() {
        return json.path("scale");
    }

    /** Returns the film, where there is one. */
    public Optional<FilmSheet> film() {
        return json.path("film").isObject()
                ? Optional.of(new FilmSheet(this, json.path("film")))
                : Optional.empty();
    }

    static double typed(String what, JsonNode text, Unit unit, double otherwise) {
        return text.asText("").isBlank() ? otherwise : number(what, text, unit);
    }

    static double number(String what, JsonNode text, Unit unit) {
        String typed = text.asText("").strip();
        if (typed.isEmpty()) {
            throw new InputException("type %s, in %s".formatted(what, unit.named()));
        }
        try {
            return TypedNumber.parse(typed, unit);
        } catch (QuantityException e) {
            throw new InputException("%s: %s".formatted(what, e.getMessage()));
        }
    }

    /** Core refuses what can't be in its own words, which are fit to be shown. */
    static <T> T sensible(String what, Supplier<T> reckoning) {
        try {
            return reckoning.get();
        } catch (IllegalArgumentException e) {
            throw new InputException("%s: %s".formatted(what, e.getMessage()));
        }
    }
}
