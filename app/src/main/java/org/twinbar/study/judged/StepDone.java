package org.twinbar.study.judged;

import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.UUID;
import org.twinbar.treatment.Followed;

/**
 * A step of a treatment as it was done.
 *
 * @param id of the entry that began it
 * @param group whose recipe it is a step of
 * @param step of the recipe, counted from 0
 * @param what its words when it was begun
 * @param specimens codes of those that it is done to
 * @param ended empty while it goes on
 * @param celsius temperature that was read, where one was
 * @param noted what else happened; may be empty
 */
public record StepDone(
        UUID id,
        String group,
        int step,
        String what,
        List<String> specimens,
        ZonedDateTime began,
        Optional<ZonedDateTime> ended,
        OptionalDouble celsius,
        String noted,
        String who) {

    private static final double SECONDS_PER_MINUTE = 60;

    public StepDone {
        specimens = List.copyOf(specimens);
    }

    /** Returns how long it took (min), where it has ended. */
    public OptionalDouble minutes() {
        return ended.isPresent()
                ? OptionalDouble.of(
                        Duration.between(began, ended.get()).toSeconds() / SECONDS_PER_MINUTE)
                : OptionalDouble.empty();
    }

    public StepDone ended(ZonedDateTime when, OptionalDouble read, String text) {
        return new StepDone(
                id, group, step, what, specimens, began, Optional.of(when), read, text, who);
    }

    public Followed.Went went() {
        return new Followed.Went(step, specimens, minutes(), celsius);
    }
}
