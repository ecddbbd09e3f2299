package org.twinbar.study;

import java.util.List;
import java.util.Map;
import org.twinbar.instrument.Instrument;
import org.twinbar.method.Description;

/**
 * A test of a study: its method, how it was set, and what it was read on.
 *
 * @param settings what a person set, by name, as they wrote it; the rest is as preset
 * @param instruments what the readings were read on, the assumed ones included
 */
public record MethodUsed(
        Description description, Map<String, String> settings, List<Instrument> instruments) {

    public MethodUsed {
        settings = Ordered.copy(settings);
        instruments = List.copyOf(instruments);
    }

    public String name() {
        return description.name();
    }
}
