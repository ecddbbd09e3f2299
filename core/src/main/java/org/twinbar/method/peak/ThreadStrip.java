package org.twinbar.method.peak;

import java.util.List;
import java.util.OptionalDouble;
import org.twinbar.instrument.Kind;
import org.twinbar.method.Answering;
import org.twinbar.method.Ask;
import org.twinbar.method.Caution;
import org.twinbar.method.Channel;
import org.twinbar.method.Description;
import org.twinbar.method.Input;
import org.twinbar.method.Mark;
import org.twinbar.method.Outcome;
import org.twinbar.method.Property;
import org.twinbar.method.Property.Basis;
import org.twinbar.method.Property.Scale;
import org.twinbar.method.Readings;
import org.twinbar.method.TestMethod;
import org.twinbar.method.Words;

/** The torque that strips a printed thread. */
public final class ThreadStrip implements TestMethod {

    static final Input TORQUE =
            Input.of("torque", "Largest torque", "N·m", Kind.TORQUE_SENSOR).plausibly(0.05, 100);
    static final Channel TRACE = Channel.of("torque_curve", "Torque", "N·m", Kind.TORQUE_SENSOR);
    static final Mark PEAK_MARK = new Mark("peak", "Largest torque");
    static final Peak PEAK = new Peak(TORQUE, TRACE, PEAK_MARK);
    static final Input ENGAGED =
            Input.of("engaged", "Length of thread engaged", "mm", Kind.CALIPER).plausibly(2, 60);

    static final String STRIPPED = "thread stripped";
    static final Words GAVE = new Words(
                    "gave", "What gave way", List.of(STRIPPED, "screw broke", "tool slipped"))
            .apart();

    static final Property STRIP_TORQUE = Property.of(
                    "strip_torque", "Torque that stripped the thread", "N·m", Scale.RATIO)
            .per(Basis.PART, "strip_torque");
    static final Property PER_LENGTH =
            Property.of("torque_per_length", "Torque per length of thread", "Nm/mm", Scale.RATIO);

    private static final Description DESCRIPTION = new Description(
            "thread-strip",
            2,
            "Stripping a printed thread",
            "Common practice, no standard: a screw is turned in until it stops against a washer,"
                    + " and on until the thread gives.",
            List.of(
                    Ask.required("Which torque did it take?", List.of(TORQUE), List.of(TRACE)),
                    Ask.optional("How much thread was engaged?", List.of(ENGAGED)),
                    Ask.optional("What gave way?", List.of(GAVE))),
            List.of(),
            List.of(PEAK_MARK),
            List.of(STRIP_TORQUE, PER_LENGTH),
            List.of(
                    new Caution("A stripped thread lets go at once: hold the part in a vice, and"
                            + " keep your other hand out of the way of the tool."),
                    new Caution("A torque that strips once says nothing of a thread that is"
                            + " screwed often or stays loaded.")));

    @Override
    public Description description() {
        return DESCRIPTION;
    }

    @Override
    public List<Answering> answering() {
        return ThreadStripClaims.ANSWERING;
    }

    @Override
    public Outcome calculate(Readings readings) {
        Outcome.Builder out = Outcome.of(DESCRIPTION);
        OptionalDouble torque = PEAK.of(readings, out);
        if (torque.isEmpty()) {
            return out.build();
        }
        double value = torque.getAsDouble();
        out.put(STRIP_TORQUE, PEAK.asGiven(readings, GAVE, STRIPPED, value));
        if (readings.has(ENGAGED)) {
            double perLength = value / readings.number(ENGAGED);
            out.put(PER_LENGTH, PEAK.asGiven(readings, GAVE, STRIPPED, perLength));
        } else {
            out.missing(PER_LENGTH, "the length of thread engaged was not measured");
        }
        if (readings.atRest()) {
            PEAK.find(readings, value, out);
        }
        return out.build();
    }
}
