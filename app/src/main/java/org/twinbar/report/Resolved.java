package org.twinbar.report;

import java.util.List;
import java.util.Locale;
import org.twinbar.instrument.Instrument;
import org.twinbar.method.Property;
import org.twinbar.planning.resolving.Resolution;
import org.twinbar.planning.resolving.Smallest;
import org.twinbar.study.bench.BenchAnswer;

/** What a bench can resolve, in the words of pages and of the command line. */
public final class Resolved {

    private static final double SHOWN_FROM = 0.005;

    private Resolved() {}

    /** Returns the answer in one sentence. */
    public static String sentence(BenchAnswer answer) {
        Resolution found = answer.resolution();
        String limit = found.limits().isEmpty()
                ? ""
                : " Of what the instruments leave open, %s comes from %s."
                        .formatted(
                                Written.percent(found.limits().get(0).share()),
                                found.limits().get(0).name());
        return "%s: %s, %s for %s. With %s specimens in each group a difference of %s is found four times in five; if specimens did not scatter, %s.%s"
                .formatted(
                        answer.description().title(),
                        found.property().label().toLowerCase(Locale.ROOT),
                        "typically " + typical(found),
                        answer.typical(),
                        found.perGroup(),
                        smallest(found.withScatter(), found),
                        smallest(found.fromInstruments(), found),
                        limit);
    }

    private static String typical(Resolution found) {
        return Written.value(found.value(), found.own(), found.property().unit().symbol());
    }

    /** Returns a smallest difference: per cent with the amount, or the amount alone. */
    public static String smallest(Smallest smallest, Resolution of) {
        if (smallest.amount().isEmpty()) {
            return "none: the scatter hides any";
        }
        String amount = amount(smallest.amount().getAsDouble(), of);
        return smallest.share().isEmpty() || smallest.amount().getAsDouble() == 0
                ? amount
                : "%s (%s)".formatted(Written.percent(smallest.share().getAsDouble()), amount);
    }

    /** Returns how results scatter from specimen to specimen. */
    public static String scatter(Resolution found) {
        boolean share = found.property().scale() == Property.Scale.RATIO && found.value() > 0;
        return share
                ? Written.percent(found.scatter() / found.value())
                : amount(found.scatter(), found);
    }

    /** Returns an amount in the property's unit; a difference of temperatures is in K. */
    public static String amount(double amount, Resolution of) {
        String unit = of.property().unit().symbol();
        return Written.uncertainty(amount) + Written.behind(unit.equals("°C") ? "K" : unit);
    }

    /** Returns the sources that matter: those of half a per cent and more. */
    public static List<Resolution.Part> limits(Resolution found) {
        return found.limits().stream().filter(it -> it.share() >= SHOWN_FROM).toList();
    }

    /** Returns what a change would bring with it that is not good, in brackets. */
    public static String doubts(Resolution.Lever lever) {
        return lever.doubts().isEmpty()
                ? ""
                : " (but: %s)".formatted(String.join(", ", lever.doubts()).replace('-', ' '));
    }

    /** Returns an instrument with its figures and where they come from. */
    public static String instrument(Instrument instrument) {
        String unit = instrument.unit().symbol();
        String figures = String.format(
                Locale.ROOT,
                "steps of %s, gain known to %s, zero to %s",
                Written.number(instrument.resolution(), 3) + Written.behind(unit),
                Written.percent(instrument.gainUncertainty()),
                Written.number(instrument.zeroUncertainty(), 2) + Written.behind(unit));
        return "%s: %s (%s)"
                .formatted(
                        instrument.name(),
                        figures,
                        instrument
                                .correction()
                                .map(it -> it.standsOn())
                                .orElse(instrument.origin().word()));
    }
}
