package org.twinbar.study.file;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.twinbar.exchange.Keys;
import org.twinbar.study.judged.Ordered;

/**
 * What is the same for all specimens of a test, as a person wrote it.
 *
 * @param method its name
 * @param things what the specimens are called, such as {@code bars}
 * @param date when it was made, where somebody said; tells which calibrations held
 * @param set inputs, words and settings by name
 * @param instrument instruments of the workspace, by the name of a reading or of a kind
 * @param resolution steps of displays, by the name of a reading or of a kind of instrument
 * @param calibration standard uncertainties of gains, as shares
 * @param zero standard uncertainties of zeros
 */
public record TestSheet(
        String method,
        String things,
        Optional<LocalDate> date,
        Map<String, String> set,
        Map<String, String> instrument,
        Map<String, String> resolution,
        Map<String, String> calibration,
        Map<String, String> zero) {

    /** Stands for a method where results were calculated elsewhere and are taken as they are. */
    public static final String OF_RESULTS = "results";

    public static final Set<String> KEYS = Set.of(
            "method", "things", "date", "set", "instrument", "resolution", "calibration", "zero");

    public TestSheet {
        set = Ordered.copy(set);
        instrument = Ordered.copy(instrument);
        resolution = Ordered.copy(resolution);
        calibration = Ordered.copy(calibration);
        zero = Ordered.copy(zero);
    }

    public static TestSheet of(String method) {
        return new TestSheet(
                method,
                "specimens",
                Optional.empty(),
                Map.of(),
                Map.of(),
                Map.of(),
                Map.of(),
                Map.of());
    }

    public static TestSheet read(Keys keys) {
        return new TestSheet(
                keys.text("method"),
                keys.optional("things").orElse("specimens"),
                keys.optional("date").map(CalibrationSheet::date),
                keys.map("set"),
                keys.map("instrument"),
                keys.map("resolution"),
                keys.map("calibration"),
                keys.map("zero"));
    }

    public boolean isOfResults() {
        return method.equals(OF_RESULTS);
    }

    public TestSheet calling(String newThings) {
        return new TestSheet(
                method, newThings, date, set, instrument, resolution, calibration, zero);
    }

    public TestSheet on(LocalDate day) {
        return new TestSheet(
                method, things, Optional.of(day), set, instrument, resolution, calibration, zero);
    }

    public TestSheet withSet(Map<String, String> newSet) {
        return new TestSheet(
                method, things, date, newSet, instrument, resolution, calibration, zero);
    }

    public TestSheet withInstruments(Map<String, String> newInstrument) {
        return new TestSheet(
                method, things, date, set, newInstrument, resolution, calibration, zero);
    }

    public TestSheet withErrors(
            Map<String, String> newResolution,
            Map<String, String> newCalibration,
            Map<String, String> newZero) {
        return new TestSheet(
                method, things, date, set, instrument, newResolution, newCalibration, newZero);
    }

    public ObjectNode json() {
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("method", method);
        json.put("things", things);
        date.ifPresent(day -> json.put("date", day.toString()));
        put(json, "set", set);
        put(json, "instrument", instrument);
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
