package org.twinbar.study.judged;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.twinbar.instrument.Instrument;
import org.twinbar.method.Description;

/**
 * A test of a study: its method, how it was set, and what it was read on.
 *
 * @param tested when it was made, where somebody said
 * @param settings what a person set, by name, as they wrote it; the rest is as preset
 * @param instruments what the readings were read on, the assumed ones included
 */
public record MethodUsed(
        Description description,
        Optional<LocalDate> tested,
        Map<String, String> settings,
        List<Instrument> instruments) {

    public MethodUsed {
        settings = Ordered.copy(settings);
        instruments = List.copyOf(instruments);
    }

    /** A test of which nobody said when it was made. */
    public MethodUsed(
            Description description, Map<String, String> settings, List<Instrument> instruments) {
        this(description, Optional.empty(), settings, instruments);
    }

    public String name() {
        return description.name();
    }
}
