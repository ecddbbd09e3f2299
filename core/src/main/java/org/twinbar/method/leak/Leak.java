package org.twinbar.method.leak;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.twinbar.method.Answering;
import org.twinbar.method.Description;
import org.twinbar.method.Detection;
import org.twinbar.method.Outcome;
import org.twinbar.method.Readings;
import org.twinbar.method.TestMethod;
import org.twinbar.method.Yield;

/** A vessel under a head of liquid: dry, wet, and what it loses. */
public final class Leak implements TestMethod {

    @Override
    public Description description() {
        return LeakForm.DESCRIPTION;
    }

    @Override
    public List<Answering> answering() {
        return LeakClaims.ANSWERING;
    }

    @Override
    public Outcome calculate(Readings readings) {
        Outcome.Builder out = Outcome.of(LeakForm.DESCRIPTION);
        Optional<Looks> looks = Looks.of(readings);
        // Only what was read can be impossible: in another world an error may swap two close looks.
        Optional<String> impossible =
                readings.atRest() ? looks.flatMap(Looks::impossible) : Optional.empty();
        if (impossible.isPresent()) {
            return out.restMissing(impossible.get()).build();
        }
        if (looks.isPresent()) {
            Looks seen = looks.get();
            out.put(LeakForm.TIME_TO_LEAK, seen.timeToLeak());
            out.put(LeakForm.LEAK_FREE, leakFree(readings, seen));
        } else {
            out.missing(LeakForm.TIME_TO_LEAK, "when it was dry or wet was not noted");
            out.missing(LeakForm.LEAK_FREE, "when it was dry or wet was not noted");
        }
        Yield rate = leakRate(readings);
        out.put(LeakForm.LEAK_RATE, rate);
        if (readings.atRest()) {
            LeakFindings.of(readings, looks, rate, out);
        }
        return out.build();
    }

    /** Without a claim there is only the end of its own test to be dry until. */
    private static Yield leakFree(Readings readings, Looks looks) {
        if (readings.has(LeakForm.CLAIM_TIME)) {
            return looks.dryFor(readings.number(LeakForm.CLAIM_TIME));
        }
        return new Yield.Word(looks.leaked() ? LeakForm.NO : LeakForm.YES);
    }

    /**
     * Returns the leak rate.
     *
     * <pre>q = (m_before − m_after)/Δt − q_control,  L_D = 3·√(u²(m_before) + u²(m_after))/Δt</pre>
     *
     * <p>Where the scatter of the controls is known, L_D = 3·s_control if that is larger. Below L_D
     * nothing but an upper end is said. Source: METHODS E.
     */
    private static Yield leakRate(Readings readings) {
        if (!readings.has(LeakForm.MASS_BEFORE) || !readings.has(LeakForm.MASS_AFTER)) {
            return new Yield.Missing("it was not weighed before and after");
        }
        OptionalDouble interval = interval(readings);
        if (interval.isEmpty()) {
            return new Yield.Missing("the time between the two weighings was not noted");
        }
        if (!(interval.getAsDouble() > 0)) {
            return new Yield.Missing("no time passed between the two weighings");
        }
        double rate = rate(readings, interval.getAsDouble());
        Detection detection = detection(readings, interval.getAsDouble());
        double seen = readings.once("rate", Double.class, () -> rate);
        return detection.detects(seen)
                ? Yield.of(rate)
                : new Yield.Below(
                        detection.below(seen),
                        "the loss is below what weighing can tell in "
                                + Looks.hours(interval.getAsDouble()));
    }

    /** Returns q (g/h), whatever its size. */
    private static double rate(Readings readings, double hours) {
        double lost = readings.number(LeakForm.MASS_BEFORE) - readings.number(LeakForm.MASS_AFTER);
        double control =
                readings.has(LeakForm.CONTROL_LOSS) ? readings.number(LeakForm.CONTROL_LOSS) : 0;
        return lost / hours - control;
    }

    /** Returns q (g/h) where vessel and times are known, even where it is below the limit. */
    static double rateSeen(Readings readings) {
        return rate(readings, interval(readings).orElseThrow());
    }

    /** Returns the time between the weighings (h): as noted, or to the end of a dry test. */
    private static OptionalDouble interval(Readings readings) {
        if (readings.has(LeakForm.WEIGHED_AFTER)) {
            return OptionalDouble.of(readings.number(LeakForm.WEIGHED_AFTER));
        }
        Optional<Looks> looks = Looks.of(readings);
        boolean ended = looks.isPresent() && !looks.get().leaked();
        return ended ? OptionalDouble.of(looks.get().lastDry()) : OptionalDouble.empty();
    }

    /** Returns what weighing, or the scatter of the controls, lets be told; of readings at rest. */
    static Detection detection(Readings readings) {
        return detection(readings, interval(readings).orElseThrow());
    }

    private static Detection detection(Readings readings, double hours) {
        return readings.once("detection", Detection.class, () -> {
            double before = readings.readingUncertainty(LeakForm.MASS_BEFORE);
            double after = readings.readingUncertainty(LeakForm.MASS_AFTER);
            double weighing = Math.sqrt(before * before + after * after) / hours;
            double controls = readings.has(LeakForm.CONTROL_SCATTER)
                    ? readings.number(LeakForm.CONTROL_SCATTER)
                    : 0;
            return new Detection(Math.max(weighing, controls));
        });
    }
}
