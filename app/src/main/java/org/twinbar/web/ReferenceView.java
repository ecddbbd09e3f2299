package org.twinbar.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.twinbar.report.Drifting;
import org.twinbar.report.Figures;
import org.twinbar.report.Written;
import org.twinbar.study.bench.Drift;
import org.twinbar.study.bench.KeptReference;

/** A reference as its page shows it. */
public final class ReferenceView {

    private final KeptReference reference;
    private final Optional<Drift> drift;

    private ReferenceView(KeptReference reference) {
        this.reference = reference;
        this.drift = reference.drift();
    }

    static ReferenceView of(KeptReference reference) {
        return new ReferenceView(reference);
    }

    public KeptReference reference() {
        return reference;
    }

    public String id() {
        return reference.id().toString();
    }

    public String name() {
        return reference.sheet().name();
    }

    public String about() {
        return "%s by the %s test, read on %s"
                .formatted(
                        reference.sheet().property().replaceAll("_[^_]*$", "").replace('_', ' '),
                        reference.sheet().method(),
                        reference.instrument());
    }

    public String sentence() {
        return Drifting.sentence(reference);
    }

    public boolean drifts() {
        return drift.filter(it -> !it.isInControl()).isPresent();
    }

    /** Returns the chart; nothing while there are too few values. */
    public String chart() {
        return drift.map(it -> Figures.control(Drifting.picture(it))).orElse("");
    }

    public String caption() {
        return drift.map(it -> ("Hollow: the first %s, which set the limits; solid: later ones;"
                                + " dotted: limits; line: weighted mean; crossed: a rule says that"
                                + " something changed.")
                        .formatted(it.baseline()))
                .orElse("");
    }

    /**
     * A value, written.
     *
     * @param said what the chart says there; empty for nothing
     */
    public record Row(String id, String date, String value, String said) {}

    /** Returns the values, the newest first. */
    public List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        for (int place = 0; place < reference.values().size(); place++) {
            KeptReference.Value value = reference.values().get(place);
            int here = place;
            rows.add(
                    0,
                    new Row(
                            value.id().toString(),
                            value.date().toString(),
                            written(value.value()),
                            String.join(
                                    "; ",
                                    drift.map(it -> it.said().getOrDefault(here, List.of()))
                                            .orElse(List.of()))));
        }
        return rows;
    }

    public List<String> withdrawn() {
        return reference.withdrawn().stream()
                .map(it -> "%s, %s: withdrawn, %s"
                        .formatted(it.value().date(), written(it.value().value()), it.why()))
                .toList();
    }

    public String unit() {
        return reference.sheet().unit().symbol();
    }

    private String written(double value) {
        String number = Written.number(value, 4);
        return unit().isEmpty() ? number : number + "\u2009" + unit();
    }
}
