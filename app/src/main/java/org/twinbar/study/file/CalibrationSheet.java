package org.twinbar.study.file;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.DateTimeException;
import java.time.LocalDate;
import org.twinbar.exchange.InputException;
import org.twinbar.instrument.Reference;
import org.twinbar.quantity.Quantity;
import org.twinbar.quantity.Unit;

/**
 * What a person says of a calibration beside its table.
 *
 * @param date when it was done
 * @param reference what the instrument was held against; empty where nobody said
 * @param uncertainty standard uncertainty of the reference, a share ({@code 0.1%}) or in the
 *     instrument's unit; empty where it is taken as none
 */
public record CalibrationSheet(LocalDate date, String reference, String uncertainty) {

    public CalibrationSheet {
        reference = reference.strip();
        uncertainty = uncertainty.strip();
    }

    /** @throws InputException where the text is no date such as 2026-05-04 */
    public static LocalDate date(String text) {
        try {
            return LocalDate.parse(text.strip());
        } catch (DateTimeException e) {
            throw new InputException(
                    "'%s' is not a date such as 2026-05-04".formatted(text.strip()));
        }
    }

    /**
     * Returns the reference, with its uncertainty in the instrument's unit.
     *
     * @throws InputException where the uncertainty is no size
     */
    public Reference reference(Unit unit) {
        String name = reference.isEmpty() ? "a reference that was not named" : reference;
        if (uncertainty.isEmpty()) {
            return Reference.exact(name);
        }
        try {
            boolean share = uncertainty.endsWith("%");
            Quantity quantity = Quantity.parse(uncertainty);
            boolean bare = quantity.unit().equals(Unit.ONE);
            return new Reference(
                    name,
                    share ? 0 : bare ? quantity.value() : quantity.differenceIn(unit),
                    share ? Quantity.parseShare(uncertainty) : 0);
        } catch (IllegalArgumentException e) {
            throw new InputException("uncertainty of the reference: " + e.getMessage());
        }
    }

    public static CalibrationSheet read(JsonNode value) {
        return new CalibrationSheet(
                LocalDate.parse(value.path("date").asText()),
                value.path("reference").asText(),
                value.path("uncertainty").asText());
    }

    public ObjectNode json() {
        return JsonNodeFactory.instance
                .objectNode()
                .put("date", date.toString())
                .put("reference", reference)
                .put("uncertainty", uncertainty);
    }
}
