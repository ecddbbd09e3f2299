package org.twinbar.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.twinbar.exchange.InputException;
import org.twinbar.finding.Figures;
import org.twinbar.method.Input;
import org.twinbar.method.Limits;
import org.twinbar.method.Words;
import org.twinbar.quantity.QuantityException;
import org.twinbar.quantity.Unit;
import org.twinbar.study.table.Presets;
import org.twinbar.study.table.SpecimenRow;
import org.twinbar.study.table.TypedNumber;

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
    private final TypedTest.Field field;
    private final String code;

    /** @param code of the specimen whose own value in the field is no other's */
    TypedCheck(TypedTest test, TypedTest.Field field, String code) {
        this.test = test;
        this.field = field;
        this.code = code;
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
        String said = withUnit(text, value, input.unit());
        if (!input.plausible().allow(value)) {
            return Optional.of("%s is %s, where it usually is %s."
                    .formatted(input.label(), said, input.plausible().describe(input.unit())));
        }
        return others(input)
                .filter(others -> !others.usual().allow(value))
                .map(others -> "%s is %s; the other readings of it are %s to %s."
                        .formatted(
                                input.label(),
                                said,
                                Figures.three(others.lowest()),
                                withUnit(others.highest(), input.unit())));
    }

    /**
     * What the other readings of an input are, in its unit.
     *
     * @param usual what a person isn't asked about
     */
    private record Others(double lowest, double highest, Limits usual) {}

    private Optional<Others> others(Input input) {
        double[] values = values(input);
        if (values.length < FEWEST_OTHERS) {
            return Optional.empty();
        }
        Arrays.sort(values);
        double lowest = values[0];
        double highest = values[values.length - 1];
        double room =
                Math.max(highest - lowest, SHARE_OF_MEDIAN * Math.abs(values[values.length / 2]));
        return Optional.of(
                new Others(lowest, highest, Limits.between(lowest - room, highest + room)));
    }

    /**
     * Returns what a number in the field may be without being asked about, where it is typed in the
     * unit of the method.
     */
    Optional<Limits> usual() {
        if (!(field.named() instanceof Input input) || !field.unit().equals(input.unit())) {
            return Optional.empty();
        }
        Limits plausible = input.plausible();
        Limits usual = others(input).map(Others::usual).orElse(Limits.ANY);
        return Optional.of(Limits.between(
                Math.max(plausible.lowest(), usual.lowest()),
                Math.min(plausible.highestInclusive(), usual.highestInclusive())));
    }

    private double[] values(Input input) {
        List<Double> values = new ArrayList<>();
        for (TypedTest.Specimen other : test.specimens()) {
            for (TypedTest.Field reading : test.fields()) {
                boolean itself = other.code().equals(code) && reading.equals(field);
                String text = other.cell(reading).text();
                if (reading.named().equals(input) && !itself && !SpecimenRow.isNothing(text)) {
                    values.add(new TypedCheck(test, reading, code).number(input, text));
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
