package org.twinbar.report;

import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import org.twinbar.method.Ends;
import org.twinbar.method.Property;
import org.twinbar.method.Result;
import org.twinbar.method.Yield;
import org.twinbar.uncertainty.Budget;
import org.twinbar.uncertainty.Source;

/** What a result says of a property, as it stands in a cell, a tip or a sentence. */
final class Cells {

    private static final DateTimeFormatter MINUTE =
            DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm xxx", Locale.ROOT);

    private Cells() {}

    /** Returns the value with its uncertainty, or why there is none; without the unit. */
    static String of(Result result, Property property) {
        Yield yield = result.yields().get(property);
        if (yield == null) {
            return "not a property of this test";
        }
        Ends ends = Ends.of(result, property);
        if (yield instanceof Yield.AtLeast bound) {
            return "at least " + Written.bound(bound.bound(), ends.lowerU(), bound.bound());
        }
        if (yield instanceof Yield.Below bound) {
            return "below " + Written.bound(bound.bound(), ends.upperU(), bound.bound());
        }
        if (yield instanceof Yield.Between between) {
            return "%s to %s"
                    .formatted(
                            Written.bound(between.from(), ends.lowerU(), between.to()),
                            Written.bound(between.to(), ends.upperU(), between.to()));
        }
        if (yield instanceof Yield.Word word) {
            return word.word();
        }
        if (yield instanceof Yield.Missing missing) {
            return missing.reason();
        }
        return Written.value(number(result, property).orElseThrow(), u(result, property), "");
    }

    /** Returns the same with its unit behind. */
    static String withUnit(Result result, Property property) {
        Yield yield = result.yields().get(property);
        boolean bare =
                yield == null || yield instanceof Yield.Word || yield instanceof Yield.Missing;
        return of(result, property)
                + (bare ? "" : Written.behind(property.unit().symbol()));
    }

    static boolean missing(Result result, Property property) {
        Yield yield = result.yields().get(property);
        return yield == null || yield instanceof Yield.Missing;
    }

    /** Returns the number that a property has, without bounds and words. */
    static Optional<Double> number(Result result, Property property) {
        Yield yield = result.yields().get(property);
        if (yield instanceof Yield.Value value) {
            return Optional.of(value.value());
        }
        return yield instanceof Yield.Fitted fitted
                ? Optional.of(fitted.value())
                : Optional.empty();
    }

    /** Returns the standard uncertainty, zero where nothing is known to be wrong. */
    static double u(Result result, Property property) {
        Budget budget = result.budgets().get(property);
        return budget == null ? 0 : budget.u();
    }

    /**
     * Returns the standard uncertainty from one kind of source, a dash where there is no budget.
     */
    static String u(Result result, Property property, Source.Reach reach) {
        Budget budget = result.budgets().get(property);
        return budget == null ? "–" : Written.uncertainty(budget.u(reach));
    }

    static String header(Property property) {
        String unit = property.unit().symbol();
        return property.label() + (unit.isEmpty() ? "" : " in " + unit);
    }

    static String time(ZonedDateTime time) {
        return MINUTE.format(time);
    }

    /** Returns {@code 1 specimen}, {@code 5 specimens}. */
    static String count(long number, String thing) {
        return number + " " + thing + (number == 1 ? "" : "s");
    }
}
