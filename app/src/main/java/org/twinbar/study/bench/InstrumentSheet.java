package org.twinbar.study.bench;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.twinbar.exchange.InputException;
import org.twinbar.finding.Finding;
import org.twinbar.instrument.Allowed;
import org.twinbar.instrument.Calibration;
import org.twinbar.instrument.Kind;
import org.twinbar.quantity.Quantity;
import org.twinbar.quantity.QuantityException;
import org.twinbar.quantity.Unit;

/**
 * An instrument as a person describes it.
 *
 * @param name what it is called, such as {@code Load cell A}
 * @param kind a kind that Twinbar knows, or a word of one's own
 * @param unit of its readings; empty for the one that its kind usually shows
 * @param resolution smallest step of its display; empty for the usual one of its kind
 * @param valid how long a calibration of it holds, in days; empty where nobody said
 * @param limit how far a reading may lie from the line of its calibration, as a share of the
 *     calibrated range or in its unit; empty where nobody said
 * @param note whatever else is to be known of it
 */
public record InstrumentSheet(
        String name,
        String kind,
        String unit,
        String resolution,
        String valid,
        String limit,
        String note) {

    private static final int LONGEST_NAME = 60;
    private static final int MOST_DAYS = 36_525;

    public InstrumentSheet {
        name = name.strip();
        kind = Kind.called(kind).map(Kind::word).orElse(kind.strip());
    }

    /**
     * Returns the sheet, if what it says can be understood.
     *
     * @throws InputException where the name or the kind is missing, a unit is not known or measures
     *     something else than the kind, or a size is none
     */
    public InstrumentSheet checked() {
        if (name.isEmpty() || name.length() > LONGEST_NAME || name.contains("=")) {
            throw new InputException(
                    "the name of an instrument is '%s', must have 1 to %s characters and no '='"
                            .formatted(name, LONGEST_NAME));
        }
        if (Kind.called(name).isPresent()) {
            throw new InputException(
                    "'%s' is a kind of instrument; give this one a name of its own, such as '%s A'"
                            .formatted(name, name));
        }
        if (kind.isEmpty() || kind.equalsIgnoreCase(Kind.NONE.word())) {
            throw new InputException(
                    "'%s' needs a kind, such as load cell, caliper or scale".formatted(name));
        }
        Unit own = inUnit();
        knownKind().ifPresent(known -> requireSame(own, Unit.of(known.unit())));
        step();
        validDays();
        limitOver(1);
        return this;
    }

    private void requireSame(Unit own, Unit ofKind) {
        try {
            own.to(ofKind);
        } catch (QuantityException e) {
            throw new InputException(
                    "unit of '%s', a %s: %s".formatted(name, kind, e.getMessage()));
        }
    }

    Optional<Kind> knownKind() {
        return Kind.called(kind);
    }

    public Unit inUnit() {
        if (unit.isBlank()) {
            return knownKind()
                    .map(known -> Unit.of(known.unit()))
                    .orElseThrow(() -> new InputException(
                            "'%s' is a kind of your own: say in which unit '%s' reads"
                                    .formatted(kind, name)));
        }
        try {
            return Unit.of(unit.strip());
        } catch (QuantityException e) {
            throw new InputException("unit of '%s': %s".formatted(name, e.getMessage()));
        }
    }

    /** Returns the step of its display, in its unit. */
    public double step() {
        if (resolution.isBlank()) {
            return knownKind().map(known -> known.usual(inUnit()).resolution()).orElse(0.0);
        }
        double step = size("resolution", resolution);
        if (!(step >= 0)) {
            throw new InputException("resolution of '%s' is %s, must be zero or more"
                    .formatted(name, resolution.strip()));
        }
        return step;
    }

    OptionalInt validDays() {
        if (valid.isBlank()) {
            return OptionalInt.empty();
        }
        double days = quantity("how long a calibration holds", valid, Unit.of("d"));
        if (!(days >= 1 && days <= MOST_DAYS)) {
            throw new InputException(
                    "a calibration of '%s' is said to hold %s, must be 1 to %s days"
                            .formatted(name, valid.strip(), MOST_DAYS));
        }
        return OptionalInt.of((int) days);
    }

    /** Returns how far a reading of this calibration may lie from its line. */
    public Optional<Allowed> allowed(Calibration calibration) {
        return limitOver(calibration.highest() - calibration.lowest());
    }

    /** Returns what a person should know of a calibration of it. */
    public List<Finding> findings(Calibration calibration) {
        List<Finding> findings = new ArrayList<>(calibration.findings());
        allowed(calibration).flatMap(calibration::against).ifPresent(findings::add);
        return findings;
    }

    private Optional<Allowed> limitOver(double range) {
        if (limit.isBlank()) {
            return Optional.empty();
        }
        boolean ofRange = limit.strip().endsWith("%");
        double most = ofRange ? share() * range : size("limit", limit);
        if (!(most > 0)) {
            throw new InputException(
                    "limit of '%s' is %s, must be above zero".formatted(name, limit.strip()));
        }
        String words = limit.strip() + (ofRange ? " of the range" : "");
        return Optional.of(new Allowed(most, words));
    }

    private double share() {
        try {
            return Quantity.parseShare(limit);
        } catch (QuantityException e) {
            throw new InputException("limit of '%s': %s".formatted(name, e.getMessage()));
        }
    }

    private double size(String what, String text) {
        try {
            Quantity quantity = Quantity.parse(text);
            return quantity.unit().equals(Unit.ONE)
                    ? quantity.value()
                    : quantity.differenceIn(inUnit());
        } catch (QuantityException e) {
            throw new InputException("%s of '%s': %s".formatted(what, name, e.getMessage()));
        }
    }

    private double quantity(String what, String text, Unit in) {
        try {
            return Quantity.parse(text, in);
        } catch (QuantityException e) {
            throw new InputException("%s of '%s': %s".formatted(what, name, e.getMessage()));
        }
    }

    public static InstrumentSheet read(JsonNode value) {
        return new InstrumentSheet(
                value.path("name").asText(),
                value.path("kind").asText(),
                value.path("unit").asText(),
                value.path("resolution").asText(),
                value.path("valid").asText(),
                value.path("limit").asText(),
                value.path("note").asText());
    }

    public ObjectNode json() {
        return JsonNodeFactory.instance
                .objectNode()
                .put("name", name)
                .put("kind", kind)
                .put("unit", unit)
                .put("resolution", resolution)
                .put("valid", valid)
                .put("limit", limit)
                .put("note", note);
    }
}
