package org.twinbar.method.own;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.twinbar.method.Channel;
import org.twinbar.method.Mark;
import org.twinbar.method.Readings;
import org.twinbar.method.Trace;
import org.twinbar.quantity.Unit;

/** The numbers of one specimen in one world, in SI units, as formulas name them. */
final class Evaluation {

    private final Readings readings;
    private final Map<String, Channel> channels;
    private final Map<String, Double> known = new HashMap<>();

    Evaluation(Readings readings, Map<String, Channel> channels) {
        this.readings = readings;
        this.channels = channels;
    }

    void put(String name, double inSi) {
        known.put(name, inSi);
    }

    /** Returns a number that was put in; NaN where none was. */
    double of(String name) {
        return known.getOrDefault(name, Double.NaN);
    }

    /** Returns a term's value; NaN or infinite where the readings lead out of its domain. */
    double of(Term term) {
        if (term instanceof Term.Figure figure) {
            return figure.value();
        }
        if (term instanceof Term.Variable variable) {
            return of(variable.name());
        }
        if (term instanceof Term.Negative negative) {
            return -of(negative.of());
        }
        if (term instanceof Term.Operation operation) {
            return operation.operator().apply(of(operation.left()), of(operation.right()));
        }
        if (term instanceof Term.Call call) {
            return call.function()
                    .apply(call.of().stream().mapToDouble(this::of).toArray());
        }
        return ofCurve((Term.OfCurve) term);
    }

    private double ofCurve(Term.OfCurve ofCurve) {
        List<String> names = ofCurve.channels();
        Channel channel = channel(names.get(0));
        Trace trace = readings.trace(channel);
        if (trace.size() == 0) {
            return Double.NaN;
        }
        return switch (ofCurve.function()) {
            case PEAK -> at(channel, peakRow(channel), "peak");
            case FIRST -> at(channel, 0, "first row");
            case LAST -> at(channel, trace.size() - 1, "last row");
            case MEAN -> inSi(channel.unit(), mean(trace));
            case AT_PEAK -> {
                Channel of = channel(names.get(1));
                yield at(channel, peakRow(of), "peak of " + of.name());
            }
            case AREA -> area(channel, channel(names.get(1)));
        };
    }

    private double at(Channel channel, int row, String place) {
        double value = readings.trace(channel).get(row) + readings.resolutionAt(channel, place);
        return inSi(channel.unit(), value);
    }

    /** A mark stands still while errors move, and goes where a person puts it. */
    private int peakRow(Channel channel) {
        Mark mark = peakOf(channel);
        return readings.mark(mark, () -> OptionalInt.of(readings.trace(channel).rowOfLargest()))
                .orElseThrow();
    }

    static Mark peakOf(Channel channel) {
        return new Mark(channel.name() + "_peak", "Peak of '" + channel.label() + "'");
    }

    private static double mean(Trace trace) {
        double sum = 0;
        int rows = 0;
        for (int row = 0; row < trace.size(); row++) {
            double value = trace.get(row);
            if (Double.isFinite(value)) {
                sum += value;
                rows++;
            }
        }
        return sum / rows;
    }

    /** Rows in which either channel has no number are passed over. */
    private double area(Channel height, Channel way) {
        Trace y = readings.trace(height);
        Trace x = readings.trace(way);
        Unit.Conversion up = toSi(height.unit());
        Unit.Conversion along = toSi(way.unit());
        double sum = 0;
        int last = -1;
        for (int row = 0; row < y.size(); row++) {
            if (Double.isFinite(y.get(row)) && Double.isFinite(x.get(row))) {
                if (last >= 0) {
                    double step = along.apply(x.get(row)) - along.apply(x.get(last));
                    sum += step * (up.apply(y.get(row)) + up.apply(y.get(last))) / 2;
                }
                last = row;
            }
        }
        return last < 0 ? Double.NaN : sum;
    }

    private Channel channel(String name) {
        Channel channel = channels.get(name);
        if (channel == null) {
            throw new IllegalStateException(name + " was parsed but not declared");
        }
        return channel;
    }

    static double inSi(Unit unit, double value) {
        return toSi(unit).apply(value);
    }

    static double fromSi(Unit unit, double value) {
        return si(unit).to(unit).apply(value);
    }

    private static Unit.Conversion toSi(Unit unit) {
        return unit.to(si(unit));
    }

    private static Unit si(Unit unit) {
        return new Unit("", "", unit.dimension(), BigDecimal.ONE, BigDecimal.ZERO);
    }
}
