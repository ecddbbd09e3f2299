package org.twinbar.study.table;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import org.twinbar.instrument.Instrument;
import org.twinbar.quantity.Unit;

/**
 * How a reading was had from a picture or a film.
 *
 * @param scale by which all that was measured on one scale shares its error; none where the reading
 *     is another instrument's that was seen on the film, such as a thermometer's
 * @param unit of the reading's own standard uncertainty
 * @param own standard uncertainty from its own places and frames
 * @param ownFreedom degrees of freedom of that
 * @param share standard uncertainty of the scale, as a share
 * @param shareFreedom degrees of freedom of that
 * @param file name of the picture, which itself stays with whoever measured on it
 * @param looks the places, as they were set, so that a stranger can reckon again
 */
public record OnPicture(
        Optional<String> scale,
        Unit unit,
        double own,
        double ownFreedom,
        double share,
        double shareFreedom,
        String file,
        JsonNode looks) {

    /** A rectangle's standard uncertainty is its width over √12: what a display's step gives. */
    private static final double STANDARD_TO_STEP = Math.sqrt(12);

    /** @throws IllegalArgumentException unless all uncertainties are zero or more and finite */
    public OnPicture {
        if (!(own >= 0 && own < Double.POSITIVE_INFINITY)
                || !(share >= 0 && share < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "uncertainties on a picture are %s and %s, must be zero or more"
                            .formatted(own, share));
        }
    }

    /** Returns what the reading was read on: a pixel is its step, the scale its gain. */
    public Optional<Instrument> instrument() {
        return scale.map(name -> new Instrument(
                name,
                unit,
                own * STANDARD_TO_STEP,
                share,
                0,
                shareFreedom,
                Instrument.Origin.GIVEN,
                Optional.empty()));
    }

    /** Returns the standard uncertainty of a value, that of the scale included. */
    public double standardUncertainty(double value) {
        double shared = share * value;
        return Math.sqrt(own * own + shared * shared);
    }

    /** Returns what an entry says of the picture it was read on; most say nothing of one. */
    public static Optional<OnPicture> read(JsonNode entry) {
        JsonNode json = entry.path("picture");
        return json.isObject()
                ? Optional.of(new OnPicture(
                        Optional.ofNullable(json.path("scale").textValue()),
                        Unit.of(json.path("unit").asText()),
                        json.path("own").asDouble(),
                        freedom(json.path("own_df")),
                        json.path("share").asDouble(),
                        freedom(json.path("share_df")),
                        json.path("file").asText(),
                        json.path("looks")))
                : Optional.empty();
    }

    /** Adds it to what an entry says. */
    public void into(ObjectNode entry) {
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        scale.ifPresent(name -> json.put("scale", name));
        json.put("unit", unit.code()).put("own", own);
        put(json, "own_df", ownFreedom);
        json.put("share", share);
        put(json, "share_df", shareFreedom);
        json.put("file", file).set("looks", looks);
        entry.set("picture", json);
    }

    /** What is exactly known has no degrees of freedom to write down: JSON has no infinity. */
    private static void put(ObjectNode json, String key, double freedom) {
        if (Double.isFinite(freedom)) {
            json.put(key, freedom);
        }
    }

    private static double freedom(JsonNode json) {
        return json.isNumber() ? json.asDouble() : Double.POSITIVE_INFINITY;
    }
}
