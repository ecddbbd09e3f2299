package org.twinbar.study;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import org.twinbar.exchange.InputException;
import org.twinbar.quantity.Quantity;
import org.twinbar.quantity.QuantityException;
import org.twinbar.quantity.Unit;
import org.twinbar.treatment.TreatmentException;

/**
 * A form as it was filled in, read field by field; what can't be read is told with its field.
 *
 * @param fields what stands in each; a bare number has the unit that stands beside its field
 */
public record Filled(Map<String, String> fields) {

    public Filled {
        fields = Map.copyOf(fields);
    }

    /** Returns what stands in a field, nothing where it is empty. */
    public Optional<String> said(String field) {
        return Optional.ofNullable(fields.get(field))
                .map(String::strip)
                .filter(text -> !text.isEmpty());
    }

    /**
     * Returns what stands in a field.
     *
     * @param what is to be written there, for the sentence that says that it is missing
     * @throws FieldException where it is empty
     */
    public String needed(String field, String what) {
        return said(field)
                .orElseThrow(() -> new FieldException(field, "write down %s".formatted(what)));
    }

    /** @throws FieldException where something stands there that is no quantity of this dimension */
    public OptionalDouble number(String field, Unit unit) {
        Optional<String> said = said(field);
        return said.isPresent()
                ? OptionalDouble.of(at(field, () -> Quantity.parse(said.get(), unit)))
                : OptionalDouble.empty();
    }

    /** @throws FieldException where it is empty, or no quantity of this dimension */
    public double number(String field, Unit unit, String what) {
        needed(field, what);
        return number(field, unit).orElseThrow();
    }

    /**
     * Returns a share: its field has per cent beside it, so that a bare 5 is 0.05.
     *
     * @throws FieldException where something stands there that is none
     */
    public OptionalDouble share(String field) {
        OptionalDouble percent = number(field, Unit.PERCENT);
        return percent.isPresent()
                ? OptionalDouble.of(percent.getAsDouble() / 100)
                : OptionalDouble.empty();
    }

    /** @throws FieldException where something stands there that is no whole number, or too large */
    public Optional<Integer> whole(String field, int least, int most) {
        return said(field).map(text -> {
            if (!text.matches("[0-9]{1,9}")
                    || Integer.parseInt(text) < least
                    || Integer.parseInt(text) > most) {
                throw new FieldException(
                        field,
                        "'%s' must be a whole number from %s to %s".formatted(text, least, most));
            }
            return Integer.parseInt(text);
        });
    }

    /**
     * Makes something of what stands in a field.
     *
     * @throws FieldException with the reason where that is refused
     */
    public <T> T at(String field, Supplier<T> making) {
        try {
            return making.get();
        } catch (QuantityException | TreatmentException | InputException e) {
            throw new FieldException(field, String.valueOf(e.getMessage()));
        }
    }
}
