package org.twinbar.study.judged;

import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.twinbar.treatment.Batch;

/**
 * A mix that was weighed.
 *
 * @param number of the plan's mixes that it is, counted from 1
 * @param meant what was to be weighed
 * @param weighed what the scale showed of each component (g), in the recipe's order
 * @param celsius temperature of room and resin, where it was read
 * @param lifeMinutes how long it can be worked at that temperature, where a data sheet says so
 * @param what else was noted, such as lot numbers; may be empty
 */
public record MixMade(
        int number,
        Batch meant,
        List<Double> weighed,
        OptionalDouble celsius,
        OptionalDouble lifeMinutes,
        String what,
        ZonedDateTime when,
        String who) {

    public MixMade {
        weighed = List.copyOf(weighed);
    }

    /** Returns until when it can be worked, where that is known. */
    public Optional<ZonedDateTime> workableUntil() {
        return lifeMinutes.isPresent()
                ? Optional.of(when.plusSeconds(Math.round(60 * lifeMinutes.getAsDouble())))
                : Optional.empty();
    }

    /** Returns what is in the cup. */
    public Batch cup() {
        return new Batch(meant.recipe(), weighed);
    }
}
