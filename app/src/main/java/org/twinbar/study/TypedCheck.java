package org.twinbar.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.twinbar.exchange.InputException;
import org.twinbar.finding.Figures;
import org.twinbar.method.Input;
import org.twinbar.method.Words;
import org.twinbar.quantity.QuantityException;
import org.twinbar.quantity.Unit;

/** Looks at what was typed into one field, beside what the other specimens have there. */
final class TypedCheck {

    /** Fewer others tell too little of what is usual. */
    private static final int FEWEST_OTHERS = 3;

    /**
     * A value may lie outside the others by their whole spread, or by this share of their median
     * where they hardly spread; common practice, no source. It is for slips of a decimal mark or a
     * unit, and wide enough for what a treatment does.
     */
    private static final double SHARE_OF_MEDIAN = 0.5;

    private final TypedTest test;
    private final TypedTest.Specimen specimen;
    private final TypedTest.Field field;

    TypedCheck(TypedTest test, TypedTest.Specimen specimen, TypedTest.Field field) {
        this.test = test;
        this.specimen = specimen;
        this.field = field;
    }

    /** @throws InputException where a method can't calculate with it */
    void require(String text) {
        if (SpecimenRow.isNothing(text)) {
            return;
        }
        if (field.named() instanceof Words words) {
            Presets.word(words.label(), text, words.allowed());
        } else if (field.named() instanceof Input input) {
            double value = number(input, text);
            if (!input.limits().allow(value)) {
                String limits = input.limits().describe(input.unit());
                throw new InputException("%s is %s, must be %s"
                        .formatted(
                                input.label(),
                                withUnit(text, value, input.unit()),
                                limits.isEmpty() ? "a number" : limits));
            }
        }
    }

    private double number(Input input, String text) {
        try {
            return field.unit().to(input.unit()).apply(TypedNumber.parse(text, field.unit()));
        } catch (QuantityException e) {
            throw new InputException("%s: %s".formatted(input.label(), e.getMessage()));
        }
    }

    /** Returns what makes a value doubtful that can be calculated with. */
    Optional<String> doubt(String text) {
        if (SpecimenRow.isNothing(text) || !(field.named() instanceof Input input)) {
            return Optional.empty();
        }
        double value = number(input, text);
        if (!input.plausible().allow(value)) {
            return Optional.of("%s is %s, where it usually is %s."
                    .formatted(
                            input.label(),
                            withUnit(text, value, input.unit()),
                            input.plausible().describe(input.unit())));
        }
        return range(input)
                .filter(range -> !(value >= range.low() && value <= range.high()))
                .map(range -> "%s is %s; the other readings of it are %s to %s."
                        .formatted(
                                input.label(),
                                withUnit(text, value, input.unit()),
                                Figures.three(range.lowest()),
                                withUnit(range.highest(), input.unit())));
    }

    /**
     * Where a value is no surprise.
     *
     * @param lowest of the other readings
     * @param highest of the other readings
     * @param low below it a person is asked
     * @param high above it a person is asked
     */
    record Range(double lowest, double highest, double low, double high) {}

    /** Returns the range that the other readings of an input give, in its unit. */
    Optional<Range> range(Input input) {
        double[] others = others(input);
        if (others.length < FEWEST_OTHERS) {
            return Optional.empty();
        }
        Arrays.sort(others);
        double lowest = others[0];
        double highest = others[others.length - 1];
        double median = others[others.length / 2];
        double room = Math.max(highest - lowest, SHARE_OF_MEDIAN * Math.abs(median));
        return Optional.of(new Range(lowest, highest, lowest - room, highest + room));
    }

    private double[] others(Input input) {
        List<Double> values = new ArrayList<>();
        for (TypedTest.Specimen other : test.specimens()) {
            for (TypedTest.Field reading : test.fields()) {
                boolean itself = other.code().equals(specimen.code()) && reading.equals(field);
                String text = other.cells().get(reading.header()).text();
                if (reading.named().equals(input) && !itself && !SpecimenRow.isNothing(text)) {
                    values.add(new TypedCheck(test, other, reading).number(input, text));
                }
            }
        }
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** What was typed, with the unit it was read in; in the method's unit where that is another. */
    private String withUnit(String text, double value, Unit unit) {
        boolean bare = !text.matches(".*\\p{L}.*|.*[°%].*");
        return bare && field.unit().equals(unit)
                ? (text + " " + unit.symbol()).strip()
                : withUnit(value, unit);
    }

    private static String withUnit(double value, Unit unit) {
        return (Figures.three(value) + " " + unit.symbol()).strip();
    }
}
