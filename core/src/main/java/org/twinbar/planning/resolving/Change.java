package org.twinbar.planning.resolving;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.twinbar.instrument.Bench;
import org.twinbar.instrument.Instrument;
import org.twinbar.method.Channel;
import org.twinbar.method.Input;
import org.twinbar.method.Named;
import org.twinbar.method.Property;
import org.twinbar.method.Readings;
import org.twinbar.quantity.Unit;

/**
 * One thing about a test that could be otherwise.
 *
 * @param words what, instead of what
 * @param bench the instruments then
 * @param readings of the same specimen then; empty where the test couldn't be done so
 */
record Change(String words, Bench bench, Optional<Readings> readings) {

    private static final Unit SECOND = Unit.of("s");
    private static final double[] SIZES = {0.5, 2};
    private static final int FIGURES = 4;

    /** Returns every change that the description and the bench offer. */
    static List<Change> all(Typical typical, Property property, Bench bench) {
        List<Change> all = new ArrayList<>();
        for (Instrument instrument : instruments(typical, bench)) {
            finer(typical, bench, instrument).ifPresent(all::add);
            calibrated(typical, bench, instrument).ifPresent(all::add);
        }
        Response response = Response.of(typical, property, () -> typical.on(bench));
        for (Named named : typical.method().description().asked()) {
            if (named instanceof Input input
                    && typical.sameForAll().contains(named)
                    && typical.readings().has(named)) {
                for (double size : SIZES) {
                    all.add(sized(typical, bench, response, input, size));
                }
            } else if (named instanceof Channel channel
                    && channel.unit().measuresSameAs(SECOND)
                    && typical.readings().has(channel)) {
                all.add(new Change(
                        "the same at half the speed",
                        bench,
                        response.in(() -> typical.on(bench).scale(channel, 2))));
            }
        }
        return all;
    }

    private static List<Instrument> instruments(Typical typical, Bench bench) {
        Map<String, Instrument> byName = new LinkedHashMap<>();
        for (Named named : typical.method().description().asked()) {
            if (typical.readings().has(named)) {
                Optional<Instrument> on = named instanceof Input input
                        ? Optional.of(bench.of(input.name(), input.instrument(), input.unit()))
                        : named instanceof Channel channel
                                ? Optional.of(bench.of(
                                        channel.name(), channel.instrument(), channel.unit()))
                                : Optional.empty();
                on.ifPresent(it -> byName.putIfAbsent(it.name(), it));
            }
        }
        return List.copyOf(byName.values());
    }

    private static Optional<Change> finer(Typical typical, Bench bench, Instrument instrument) {
        return instrument.resolution() == 0
                ? Optional.empty()
                : Optional.of(of(
                        typical,
                        bench,
                        instrument,
                        "%s: steps of %s instead of %s"
                                .formatted(
                                        instrument.name(),
                                        amount(instrument.resolution() / 2, instrument.unit()),
                                        amount(instrument.resolution(), instrument.unit())),
                        it -> it.withStepTimes(0.5)));
    }

    private static Optional<Change> calibrated(
            Typical typical, Bench bench, Instrument instrument) {
        boolean known = instrument.gainUncertainty() == 0 && instrument.zeroUncertainty() == 0;
        return known
                ? Optional.empty()
                : Optional.of(of(
                        typical,
                        bench,
                        instrument,
                        "%s: calibrated twice as well".formatted(instrument.name()),
                        it -> it.withCalibrationTimes(0.5)));
    }

    private static Change of(
            Typical typical,
            Bench bench,
            Instrument instrument,
            String words,
            UnaryOperator<Instrument> change) {
        Bench changed =
                bench.withEach(it -> it.name().equals(instrument.name()) ? change.apply(it) : it);
        return new Change(words, changed, Optional.of(typical.on(changed).build()));
    }

    private static Change sized(
            Typical typical, Bench bench, Response response, Input input, double size) {
        double now = typical.readings().each(input)[0];
        String words = "%s: %s instead of %s"
                .formatted(
                        input.label(), amount(size * now, input.unit()), amount(now, input.unit()));
        return new Change(words, bench, response.in(() -> typical.on(bench).scale(input, size)));
    }

    private static String amount(double value, Unit unit) {
        String number = BigDecimal.valueOf(value)
                .round(new MathContext(FIGURES, RoundingMode.HALF_EVEN))
                .stripTrailingZeros()
                .toPlainString();
        return (number + " " + unit.symbol()).strip();
    }
}
