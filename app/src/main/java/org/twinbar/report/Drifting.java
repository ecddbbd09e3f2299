package org.twinbar.report;

import java.util.List;
import java.util.Optional;
import org.twinbar.quantity.Unit;
import org.twinbar.study.bench.Drift;
import org.twinbar.study.bench.KeptReference;

/** Whether the bench still reads what it read, in the words of pages and of the command line. */
public final class Drifting {

    /** Said where no rule says otherwise. */
    public static final String STEADY = "The bench reads as it did.";

    private Drifting() {}

    /**
     * Returns what is said where a chart sees a change.
     *
     * @param lastInControl where the last value in control stands; empty where there is none
     */
    public static String moved(Optional<String> lastInControl) {
        return "The bench reads otherwise than before. Test nothing until it is found: check the"
                + " zero and the grips, test the reference again, calibrate anew if it stays, and"
                + " doubt "
                + lastInControl
                        .map("what was tested since the last value in control (%s)"::formatted)
                        .orElse("all that was tested")
                + ".";
    }

    /** Returns what the values of a reference say, as a sentence. */
    public static String sentence(KeptReference reference) {
        Optional<Drift> chart = reference.drift();
        if (chart.isEmpty()) {
            return reference.values().size() < 4
                    ? "%s so far; a chart needs 4, and good limits 10 or more."
                            .formatted(count(reference.values().size()))
                    : "All values are equal; a chart needs a finer reading.";
        }
        var signal = chart.get().firstSignal();
        if (signal.isEmpty()) {
            return STEADY;
        }
        int place = signal.getAsInt();
        return moved(
                place == 0
                        ? Optional.empty()
                        : Optional.of(reference.values().get(place - 1).date().toString()));
    }

    private static String count(int values) {
        return values == 1 ? "1 value" : values + " values";
    }

    /** Returns the rules that a chart is read by, a sentence each. */
    public static List<String> rules() {
        return List.of(
                "One value outside the dotted limits, which lie three standard deviations away.",
                "Two of three in a row more than two standard deviations out, on one side.",
                "Four of five in a row more than one standard deviation out, on one side.",
                "Eight in a row on one side of the centre.",
                "Six in a row rising, or falling.",
                "The weighted mean (the line, in which the newest value counts a quarter) outside"
                        + " limits of its own: it sees slow drift sooner than single values do.");
    }

    /** Returns what to do when a bench drifts, in order. */
    public static List<String> advice() {
        return List.of(
                "Test nothing else until it is found.",
                "Look at the zero with nothing on the instrument, at the grips or supports, at screws,"
                        + " cables and the battery, and at what was moved since the last value in"
                        + " control.",
                "Test the reference once more, and another one of its kind: printed parts take up"
                        + " water and age, so that it may be the reference that changed.",
                "If it stays, hold the instrument against weights or gauges and calibrate it anew.",
                "Doubt what was tested since the last value in control. Studies whose test was"
                        + " read on this instrument in that time say so themselves; test them again.",
                "If the change is understood and stays, begin a new reference. Limits are never"
                        + " moved to fit.");
    }

    /** Returns the chart, ready to be drawn. */
    public static Control picture(Drift drift) {
        String unit = drift.unit()
                .map(Unit::symbol)
                .filter(it -> !it.isEmpty())
                .map(it -> " in " + it)
                .orElse("");
        String name = drift.header().replaceAll("_[^_]*$", "").replace('_', ' ');
        return new Control(
                (drift.unit().isPresent() ? name : drift.header().replace('_', ' ')) + unit,
                drift.single().points(),
                drift.weighted().points(),
                drift.baseline(),
                drift.single().centre(),
                drift.single().low(),
                drift.single().high(),
                List.copyOf(drift.said().keySet()));
    }
}
