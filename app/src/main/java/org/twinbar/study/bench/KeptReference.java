package org.twinbar.study.bench;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.UUID;
import java.util.stream.IntStream;
import org.twinbar.exchange.Place;
import org.twinbar.finding.Figures;
import org.twinbar.finding.Finding;
import org.twinbar.quantity.Unit;
import org.twinbar.study.file.TestSheet;

/**
 * A reference with what was read on it over time, on one instrument.
 *
 * @param instrument its name
 * @param values those that count, the oldest first
 * @param withdrawn those that don't
 */
public record KeptReference(
        UUID id,
        String instrument,
        ReferenceSheet sheet,
        List<Value> values,
        List<Withdrawn> withdrawn) {

    static final Finding.Kind OUT_OF_CONTROL = Finding.Kind.warning(
            "bench-out-of-control",
            "This was tested on %s, when the bench was out of control: the reference '%s' read %s"
                    + " on %s (%s), within %s to %s before. All groups may be off alike, or not;"
                    + " test again once the bench reads as it did.");
    static final Finding.Kind CHANGED_AROUND = Finding.Kind.warning(
            "bench-changed-around-test",
            "This was tested on %s, and the next look at the reference '%s', on %s, found the"
                    + " bench out of control (%s): it %s, so nobody can tell whether it changed"
                    + " before the test. Test the reference on each day of tests.");
    static final Finding.Kind UNDATED = Finding.Kind.note(
            "bench-date-unknown",
            "The reference '%s' found the bench out of control on %s, and when this was tested was"
                    + " not said (date), so nobody can tell whether it concerns this.");

    /**
     * What was read on one specimen of a reference.
     *
     * @param value in the unit of the property
     * @param who entered it
     */
    public record Value(UUID id, LocalDate date, double value, String who) {}

    /**
     * A value that counts no longer.
     *
     * @param why in the words of whoever withdrew it
     */
    public record Withdrawn(Value value, String why, String who) {}

    public KeptReference {
        values = List.copyOf(values);
        withdrawn = List.copyOf(withdrawn);
    }

    /**
     * Returns its control chart; empty while there are too few values, or all that would set the
     * limits are equal.
     */
    public Optional<Drift> drift() {
        int baseline = Math.min(sheet.first(), values.size());
        double[] read = values.stream().mapToDouble(Value::value).toArray();
        boolean scatters = IntStream.range(1, baseline).anyMatch(i -> read[i] != read[0]);
        return baseline < Drift.FEWEST || !scatters
                ? Optional.empty()
                : Optional.of(Drift.of(
                        Place.of(sheet.name()),
                        sheet.property(),
                        Optional.of(sheet.unit()).filter(it -> !it.equals(Unit.ONE)),
                        IntStream.rangeClosed(1, read.length).boxed().toList(),
                        read,
                        baseline));
    }

    /** Returns what references say of the bench at a test that was read on their instruments. */
    public static List<Finding> at(TestSheet test, Shelf shelf) {
        return test.instrument().values().stream()
                .distinct()
                .flatMap(name -> shelf.find(name).stream())
                .flatMap(instrument -> instrument.references().stream())
                .filter(reference -> reference.sheet().method().equals(test.method()))
                .flatMap(reference -> reference.at(test.date()).stream())
                .toList();
    }

    /**
     * Returns what is to be said of the bench at a test, from the last look at the reference until
     * then and the first look after; nothing where both found it as it was.
     */
    public Optional<Finding> at(Optional<LocalDate> tested) {
        Optional<Drift> chart = drift();
        if (chart.isEmpty() || chart.get().isInControl()) {
            return Optional.empty();
        }
        SortedMap<Integer, List<String>> said = chart.get().said();
        if (tested.isEmpty()) {
            return Optional.of(
                    UNDATED.with(sheet.name(), values.get(said.firstKey()).date()));
        }
        LocalDate day = tested.get();
        Optional<LocalDate> before = values.stream()
                .map(Value::date)
                .filter(it -> !it.isAfter(day))
                .reduce((one, later) -> later);
        Optional<Integer> out = before.flatMap(it -> said(said, it));
        if (out.isPresent()) {
            Value value = values.get(out.get());
            return Optional.of(OUT_OF_CONTROL.with(
                    day,
                    sheet.name(),
                    amount(value.value()),
                    value.date(),
                    String.join("; ", said.getOrDefault(out.get(), List.of())),
                    Figures.four(chart.get().single().low()),
                    amount(chart.get().single().high())));
        }
        Optional<LocalDate> after =
                values.stream().map(Value::date).filter(it -> it.isAfter(day)).findFirst();
        return after.flatMap(it -> said(said, it))
                .map(place -> CHANGED_AROUND.with(
                        day,
                        sheet.name(),
                        after.orElseThrow(),
                        String.join("; ", said.getOrDefault(place, List.of())),
                        before.map("was in control on %s"::formatted)
                                .orElse("had not been looked at before")));
    }

    /** Returns what is said of a verdict that rests on a test in doubt; nothing where none is. */
    public static Optional<String> doubt(List<Finding> findings) {
        return findings.stream()
                .map(Finding::kind)
                .filter(it -> it != UNDATED)
                .findFirst()
                .map(kind -> kind == OUT_OF_CONTROL
                        ? "The bench was out of control when this was tested."
                        : "Whether the bench was in control when this was tested is open.");
    }

    /** Returns the first place of a day at which a chart says that something changed. */
    private Optional<Integer> said(SortedMap<Integer, List<String>> said, LocalDate day) {
        return said.keySet().stream()
                .filter(place -> values.get(place).date().equals(day))
                .findFirst();
    }

    private String amount(double value) {
        return (Figures.four(value) + " " + sheet.unit().symbol()).strip();
    }
}
