package org.twinbar.study;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.twinbar.exchange.InputException;
import org.twinbar.exchange.Spelling;
import org.twinbar.instrument.Bench;
import org.twinbar.instrument.Kind;
import org.twinbar.method.Channel;
import org.twinbar.method.Description;
import org.twinbar.method.Input;
import org.twinbar.quantity.Quantity;
import org.twinbar.quantity.QuantityException;

/**
 * What is the same for all specimens of a test, as a person wrote it.
 *
 * @param method its name
 * @param things what the specimens are called, such as {@code bars}
 * @param set inputs, words and settings by name
 * @param resolution steps of displays, by the name of a reading or of a kind of instrument
 * @param calibration standard uncertainties of gains, as shares
 * @param zero standard uncertainties of zeros
 */
public record TestSheet(
        String method,
        String things,
        Map<String, String> set,
        Map<String, String> resolution,
        Map<String, String> calibration,
        Map<String, String> zero) {

    /** Stands for a method where results were calculated elsewhere and are taken as they are. */
    public static final String OF_RESULTS = "results";

    static final Set<String> KEYS =
            Set.of("method", "things", "set", "resolution", "calibration", "zero");

    public TestSheet {
        set = Ordered.copy(set);
        resolution = Ordered.copy(resolution);
        calibration = Ordered.copy(calibration);
        zero = Ordered.copy(zero);
    }

    public static TestSheet of(String method) {
        return new TestSheet(method, "specimens", Map.of(), Map.of(), Map.of(), Map.of());
    }

    static TestSheet read(Keys keys) {
        return new TestSheet(
                keys.text("method"),
                keys.optional("things").orElse("specimens"),
                keys.map("set"),
                keys.map("resolution"),
                keys.map("calibration"),
                keys.map("zero"));
    }

    boolean isOfResults() {
        return method.equals(OF_RESULTS);
    }

    public TestSheet calling(String newThings) {
        return new TestSheet(method, newThings, set, resolution, calibration, zero);
    }

    public TestSheet withSet(Map<String, String> newSet) {
        return new TestSheet(method, things, newSet, resolution, calibration, zero);
    }

    public TestSheet withErrors(
            Map<String, String> newResolution,
            Map<String, String> newCalibration,
            Map<String, String> newZero) {
        return new TestSheet(method, things, set, newResolution, newCalibration, newZero);
    }

    /**
     * Returns the instruments.
     *
     * @throws InputException where a name is neither a reading of the method nor a kind of
     *     instrument, or a size is none
     */
    Bench bench(Description description) {
        Map<String, String> known = names(description);
        Bench bench = Bench.usual();
        for (Map.Entry<String, String> each : resolution.entrySet()) {
            String name = require(known, "resolution", each.getKey());
            Quantity step = quantity("resolution", each);
            bench = bench.withResolution(name, inUnit(step, description, name));
        }
        for (Map.Entry<String, String> each : calibration.entrySet()) {
            String name = require(known, "calibration", each.getKey());
            bench = bench.withGain(name, share(each));
        }
        for (Map.Entry<String, String> each : zero.entrySet()) {
            String name = require(known, "zero", each.getKey());
            bench = bench.withZero(name, inUnit(quantity("zero", each), description, name));
        }
        return bench;
    }

    private static Map<String, String> names(Description description) {
        Map<String, String> names = new LinkedHashMap<>();
        description.inputs().forEach(input -> names.put(plain(input.name()), input.name()));
        description.channels().forEach(channel -> names.put(plain(channel.name()), channel.name()));
        for (Kind kind : Kind.values()) {
            names.put(plain(kind.word()), kind.word());
        }
        return names;
    }

    private static String require(Map<String, String> known, String what, String name) {
        String found = known.get(plain(name));
        if (found == null) {
            throw new InputException("%s '%s': no reading and no instrument is called so%s"
                    .formatted(what, name, Spelling.hint(name, known.values())));
        }
        return found;
    }

    private static Quantity quantity(String what, Map.Entry<String, String> each) {
        try {
            Quantity quantity = Quantity.parse(each.getValue());
            if (!(quantity.value() >= 0)) {
                throw new InputException("%s of %s is %s, must be zero or more"
                        .formatted(what, each.getKey(), each.getValue()));
            }
            return quantity;
        } catch (QuantityException e) {
            throw new InputException("%s of %s: %s".formatted(what, each.getKey(), e.getMessage()));
        }
    }

    /** A bare number is in the unit of the reading, or in the one that such instruments show. */
    private static Quantity inUnit(Quantity quantity, Description description, String name) {
        if (!quantity.unit().symbol().isEmpty()) {
            return quantity;
        }
        for (Input input : description.inputs()) {
            if (input.name().equals(name)) {
                return new Quantity(quantity.value(), input.unit());
            }
        }
        for (Channel channel : description.channels()) {
            if (channel.name().equals(name)) {
                return new Quantity(quantity.value(), channel.unit());
            }
        }
        throw new InputException("'%s' of the %s needs its unit".formatted(quantity.value(), name));
    }

    private static double share(Map.Entry<String, String> each) {
        try {
            double share = Quantity.parseShare(each.getValue());
            if (!(share >= 0)) {
                throw new InputException("calibration of %s is %s, must be zero or more"
                        .formatted(each.getKey(), each.getValue()));
            }
            return share;
        } catch (QuantityException e) {
            throw new InputException("calibration of %s: %s, as a share of the reading"
                    .formatted(each.getKey(), e.getMessage()));
        }
    }

    private static String plain(String name) {
        return name.strip().toLowerCase(java.util.Locale.ROOT).replace(' ', '_');
    }

    ObjectNode json() {
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("method", method);
        json.put("things", things);
        put(json, "set", set);
        put(json, "resolution", resolution);
        put(json, "calibration", calibration);
        put(json, "zero", zero);
        return json;
    }

    private static void put(ObjectNode json, String key, Map<String, String> map) {
        if (!map.isEmpty()) {
            ObjectNode table = json.putObject(key);
            map.forEach(table::put);
        }
    }
}
