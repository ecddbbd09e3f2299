package org.twinbar.study;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.twinbar.exchange.Column;
import org.twinbar.exchange.InputException;
import org.twinbar.exchange.Place;
import org.twinbar.exchange.Row;
import org.twinbar.exchange.Spelling;
import org.twinbar.exchange.Table;
import org.twinbar.method.Methods;
import org.twinbar.quantity.Quantity;
import org.twinbar.quantity.QuantityException;
import org.twinbar.study.bench.KeptInstrument;
import org.twinbar.study.bench.KeptReference;
import org.twinbar.study.bench.ReferenceSheet;
import org.twinbar.study.file.CalibrationSheet;

/**
 * The references of a workspace: each belongs to an instrument and a method, and goes wherever the
 * instrument goes. Limits are calculated anew each time, from its first values.
 */
public final class References {

    private final Instruments instruments;
    private final Methods methods;

    References(Instruments instruments, Methods methods) {
        this.instruments = instruments;
        this.methods = methods;
    }

    /** Returns today's date, as the workspace's clock has it. */
    public LocalDate today() {
        return instruments.today();
    }

    /** Returns all of them, by instrument, in the order in which they were begun. */
    public List<KeptReference> all() {
        return instruments.all().stream()
                .flatMap(it -> it.references().stream())
                .toList();
    }

    /** Returns the names of the instruments that a reference may be read on. */
    public List<String> instruments() {
        return instruments.names();
    }

    /** Returns the names of the methods that a reference may be tested by. */
    public List<String> methods() {
        return methods.all().stream().map(it -> it.description().name()).toList();
    }

    /** @throws InputException where no reference has this name */
    public KeptReference get(String name) {
        List<String> names = all().stream().map(it -> it.sheet().name()).toList();
        return all().stream()
                .filter(it -> it.sheet().isCalled(name))
                .findFirst()
                .orElseThrow(() -> new InputException("there is no reference '%s'%s"
                        .formatted(
                                name,
                                names.isEmpty()
                                        ? "; begin one first"
                                        : Spelling.hint(name, names))));
    }

    public Optional<KeptReference> find(UUID id) {
        return all().stream().filter(it -> it.id().equals(id)).findFirst();
    }

    /**
     * Begins a reference.
     *
     * @param instrument on which it is read, by its name
     * @throws InputException where there is no such instrument, method or property, or the name is
     *     taken
     */
    public KeptReference begin(Act act, String instrument, ReferenceSheet sheet) {
        KeptInstrument on = instruments.get(instrument);
        ReferenceSheet checked = sheet.checked(methods);
        boolean taken = all().stream()
                .anyMatch(it -> it.sheet().isCalled(checked.name()) && !act.wrote(it.id()));
        if (taken) {
            throw new InputException("there is a reference '%s' already".formatted(checked.name()));
        }
        write(act, on.id(), Aspect.REFERENCE, List.of(checked.json()), "", Optional.empty());
        return get(checked.name());
    }

    /**
     * Keeps what one specimen of a reference gave.
     *
     * @param text the value; a bare number is in the unit of the property
     * @throws InputException where it is none
     */
    public KeptReference note(Act act, KeptReference reference, LocalDate date, String text) {
        double value;
        try {
            value = Quantity.parse(text, reference.sheet().unit());
        } catch (QuantityException e) {
            throw new InputException(
                    "'%s': %s".formatted(reference.sheet().name(), e.getMessage()));
        }
        return keep(act, reference, List.of(value(reference, date, value)));
    }

    /**
     * Keeps the values of a table.
     *
     * @param date header of the column of days
     * @param value header of the column of values
     * @throws InputException where there is no such column, or a cell can't be read; nothing was
     *     written then
     */
    public KeptReference note(
            Act act, KeptReference reference, Table table, String date, String value) {
        Column days = column(table, date);
        Column values = column(table, value);
        List<ObjectNode> read = new ArrayList<>();
        for (Row row : table.rows()) {
            String cell = row.cell(values.index()).strip();
            if (!cell.isEmpty()) {
                Place place = Place.of(table.name()).line(row.line());
                read.add(value(
                        reference,
                        day(place.column(days.header()), row.cell(days.index())),
                        number(place.column(values.header()), table, values, cell, reference)));
            }
        }
        if (read.isEmpty()) {
            throw Place.of(table.name()).column(values.header()).refuse("holds no value");
        }
        return keep(act, reference, read);
    }

    private static Column column(Table table, String header) {
        return table.column(header)
                .orElseThrow(() ->
                        Place.of(table.name()).refuse("there is no column '%s'".formatted(header)));
    }

    private static LocalDate day(Place place, String cell) {
        try {
            return CalibrationSheet.date(cell);
        } catch (InputException e) {
            throw place.refuse(e.getMessage());
        }
    }

    private static double number(
            Place place, Table table, Column column, String cell, KeptReference reference) {
        try {
            double number = table.dialect().number(cell);
            return column.unit().isPresent()
                    ? new Quantity(number, column.unit().get())
                            .in(reference.sheet().unit())
                    : number;
        } catch (QuantityException e) {
            throw place.value(cell).refuseValue("is no value: " + e.getMessage());
        }
    }

    /**
     * Lets a value count no longer; it stays readable, with the reason.
     *
     * @throws InputException where there is no such value, or no reason
     */
    public KeptReference withdraw(Act act, KeptReference reference, UUID value, String why) {
        boolean gone =
                reference.withdrawn().stream().anyMatch(it -> it.value().id().equals(value));
        boolean there = reference.values().stream().anyMatch(it -> it.id().equals(value));
        if (!there && !gone) {
            throw new InputException(
                    "'%s' has no such value".formatted(reference.sheet().name()));
        }
        if (why.isBlank()) {
            throw new InputException("say why the value is withdrawn");
        }
        if (there) {
            write(
                    act,
                    on(reference),
                    Aspect.REFERENCE_VALUE,
                    List.of(object().put("reference", reference.id().toString())
                            .put("withdrawn", true)),
                    why,
                    Optional.of(value));
        }
        return get(reference.sheet().name());
    }

    private KeptReference keep(Act act, KeptReference reference, List<ObjectNode> values) {
        write(act, on(reference), Aspect.REFERENCE_VALUE, values, "", Optional.empty());
        return get(reference.sheet().name());
    }

    private UUID on(KeptReference reference) {
        return instruments.get(reference.instrument()).id();
    }

    private void write(
            Act act,
            UUID instrument,
            Aspect aspect,
            List<ObjectNode> values,
            String why,
            Optional<UUID> supersedes) {
        instruments.write(
                act,
                instrument,
                aspect,
                values,
                Optional.of(why).filter(it -> !it.isBlank()),
                supersedes);
    }

    private static ObjectNode value(KeptReference reference, LocalDate date, double value) {
        return object().put("reference", reference.id().toString())
                .put("date", date.toString())
                .put("value", value);
    }

    private static ObjectNode object() {
        return JsonNodeFactory.instance.objectNode();
    }
}
