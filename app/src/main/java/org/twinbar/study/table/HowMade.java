package org.twinbar.study.table;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BinaryOperator;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.twinbar.decision.Block;
import org.twinbar.decision.Circumstances;
import org.twinbar.decision.QuestionException;
import org.twinbar.decision.Spot;
import org.twinbar.quantity.Labelled;
import org.twinbar.quantity.Numbers;
import org.twinbar.quantity.QuantityException;
import org.twinbar.quantity.Unit;
import org.twinbar.study.judged.Asked;
import org.twinbar.study.judged.Asked.Term;

/**
 * The columns that tell what each specimen was made and tested with.
 *
 * <p>Test order and place on the plate are also found by the usual names of their columns; there
 * what can't be read counts as untold, while a column that somebody named is refused.
 *
 * @param block the column of print runs, mixes, oven loads or pairs
 * @param unit the column of what was treated independently
 * @param order the column of test order or time
 * @param places one column of names, or two of distances
 * @param named whether a person named order or places, by column
 */
public record HowMade(
        Optional<String> block,
        Optional<String> unit,
        Optional<String> order,
        List<String> places,
        List<String> named) {

    private static final List<String> USUAL_ORDER = List.of("order", "test_order", "tested_at");
    private static final List<List<String>> USUAL_PLACES =
            List.of(List.of("plate_x", "plate_y"), List.of("position"));
    private static final Unit MILLIMETRE = Unit.of("mm");
    private static final Pattern DATE_AND_TIME = Pattern.compile("(\\d{4}-\\d\\d-\\d\\d)[ T](.+)");

    public HowMade {
        places = List.copyOf(places);
        named = List.copyOf(named);
    }

    /**
     * @param columns that there are
     * @param finder gives the column that a person meant, by what they wrote and what it is for
     */
    public static HowMade of(Asked asked, List<String> columns, BinaryOperator<String> finder) {
        Function<Term, Optional<String>> said =
                term -> asked.said(term).map(wanted -> finder.apply(wanted, term.key()));
        Optional<String> order = said.apply(Term.ORDER);
        List<String> places = asked.said(Term.POSITION).stream()
                .flatMap(wanted -> Arrays.stream(wanted.split(",")))
                .map(wanted -> finder.apply(wanted.strip(), Term.POSITION.key()))
                .toList();
        if (places.size() > 2) {
            throw new QuestionException("A place on the plate is one column of names, or two of"
                    + " distances, not %s columns.".formatted(places.size()));
        }
        List<String> named = Stream.concat(order.stream(), places.stream()).toList();
        return new HowMade(
                said.apply(Term.BLOCK),
                said.apply(Term.UNIT),
                order.or(() -> usual(USUAL_ORDER, columns)),
                places.isEmpty() ? usualPlaces(columns) : places,
                named);
    }

    private static Optional<String> usual(List<String> names, List<String> columns) {
        return names.stream().flatMap(name -> has(columns, name).stream()).findFirst();
    }

    private static List<String> usualPlaces(List<String> columns) {
        for (List<String> names : USUAL_PLACES) {
            List<String> found =
                    names.stream().flatMap(name -> has(columns, name).stream()).toList();
            if (found.size() == names.size()) {
                return found;
            }
        }
        return List.of();
    }

    private static Optional<String> has(List<String> columns, String name) {
        return columns.stream()
                .filter(column -> Presets.key(column).equals(Presets.key(name))
                        || Presets.key(Labelled.parse(column).name()).equals(Presets.key(name)))
                .findFirst();
    }

    /** Returns what the cells of one specimen tell. */
    public Circumstances of(UnaryOperator<String> cell) {
        return new Circumstances(
                block.flatMap(kind -> block(kind, cell.apply(kind))),
                unit.map(cell).filter(name -> !name.isBlank()),
                order.map(column -> order(column, cell.apply(column)))
                        .orElse(OptionalDouble.empty()),
                spot(cell));
    }

    /** A specimen that belongs to no block has an empty cell there. */
    private static Optional<Block> block(String kind, String name) {
        return name.isBlank()
                ? Optional.empty()
                : Optional.of(new Block(kind.replace('_', ' ').strip(), name));
    }

    private OptionalDouble order(String column, String text) {
        if (SpecimenRow.isNothing(text)) {
            return OptionalDouble.empty();
        }
        OptionalDouble number = number(text);
        OptionalDouble order = number.isPresent() ? number : time(text);
        if (order.isEmpty() && named.contains(column)) {
            throw new QuestionException(
                    "%s '%s' is neither a number nor a time such as 14:05 or 2026-05-01 14:05."
                            .formatted(column, text));
        }
        return order;
    }

    private static OptionalDouble number(String text) {
        try {
            return OptionalDouble.of(Numbers.parse(text));
        } catch (QuantityException e) {
            return OptionalDouble.empty();
        }
    }

    /** Returns a time in seconds; only the order of such numbers is ever used. */
    private static OptionalDouble time(String text) {
        String iso = DATE_AND_TIME.matcher(text).replaceFirst("$1T$2");
        return Stream.<Function<String, Long>>of(
                        it -> OffsetDateTime.parse(it).toEpochSecond(),
                        it -> LocalDateTime.parse(it).toEpochSecond(ZoneOffset.UTC),
                        it -> LocalDate.parse(it).toEpochDay(),
                        it -> (long) LocalTime.parse(it).toSecondOfDay())
                .flatMap(reading -> read(reading, iso).stream())
                .mapToDouble(Long::doubleValue)
                .findFirst();
    }

    private static Optional<Long> read(Function<String, Long> reading, String text) {
        try {
            return Optional.of(reading.apply(text));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    private Optional<Spot> spot(UnaryOperator<String> cell) {
        if (places.isEmpty() || places.stream().map(cell).anyMatch(SpecimenRow::isNothing)) {
            return Optional.empty();
        }
        if (places.size() == 1) {
            return Optional.of(new Spot.Named(cell.apply(places.get(0))));
        }
        OptionalDouble x = distance(places.get(0), cell);
        OptionalDouble y = distance(places.get(1), cell);
        return x.isPresent() && y.isPresent()
                ? Optional.of(new Spot.Measured(x.getAsDouble(), y.getAsDouble()))
                : Optional.empty();
    }

    /** A column without a unit holds millimetres. */
    private OptionalDouble distance(String column, UnaryOperator<String> cell) {
        OptionalDouble number = number(cell.apply(column));
        if (number.isEmpty() && named.contains(column)) {
            throw new QuestionException(
                    "%s '%s' is no distance on the plate.".formatted(column, cell.apply(column)));
        }
        Unit unit = Labelled.parse(column).unit().orElse(MILLIMETRE);
        if (number.isEmpty() || !unit.measuresSameAs(MILLIMETRE)) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(unit.to(MILLIMETRE).apply(number.getAsDouble()));
    }
}
