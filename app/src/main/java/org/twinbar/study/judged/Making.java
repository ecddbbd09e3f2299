package org.twinbar.study.judged;

import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.twinbar.finding.Finding;
import org.twinbar.planning.Pilot;
import org.twinbar.treatment.Coated;
import org.twinbar.treatment.Procedure;
import org.twinbar.treatment.Waiting;

/**
 * How the specimens of a study came to be: the plan as it was sealed, what departed from it, and
 * the register.
 *
 * @param plan as it now stands
 * @param seal where it was sealed
 * @param keyOpened when, by whom and why; empty while groups are kept from whoever reads
 * @param specimens in the order of testing, kind by kind
 * @param pilotSpecimens printed and tested before all others; never compared
 * @param pilots what was read on them
 * @param recipes how groups are treated, by name
 * @param waiting how long specimens cure and are conditioned before the test, as it was sealed
 * @param steps of those recipes as they were done, the first first
 * @param mixes that were weighed, by number
 * @param coated films, where specimens were weighed before and after
 * @param departures from what was sealed, the oldest first
 * @param findings on the plan, the films and the mixes
 */
public record Making(
        Optional<Plan> plan,
        Optional<Seal> seal,
        Optional<Change> keyOpened,
        List<Registered> specimens,
        List<Registered> pilotSpecimens,
        List<Pilots> pilots,
        Map<String, Procedure> recipes,
        Waiting waiting,
        List<StepDone> steps,
        List<MixMade> mixes,
        Optional<Coated> coated,
        List<Change> departures,
        List<Finding> findings) {

    /** Of a study that was never planned here. */
    public static final Making NONE = new Making(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            List.of(),
            List.of(),
            List.of(),
            Map.of(),
            Waiting.USUAL,
            List.of(),
            List.of(),
            Optional.empty(),
            List.of(),
            List.of());

    /**
     * A plan that was settled before the data.
     *
     * @param plan as it was then
     * @param text that the digest is of
     * @param sha256 of the text in UTF-8
     */
    public record Seal(Plan plan, String text, String sha256, ZonedDateTime when, String who) {}

    /**
     * What was read on pilot specimens of a kind.
     *
     * @param series its name
     * @param what was read, such as {@code strength in MPa}
     */
    public record Pilots(
            String series, String what, List<Double> values, ZonedDateTime when, String who) {
        public Pilots {
            values = List.copyOf(values);
        }

        /** Returns the scatter that they tell. */
        public Pilot told() {
            return Pilot.of(values.stream().mapToDouble(Double::doubleValue).toArray());
        }
    }

    public Making {
        pilots = List.copyOf(pilots);
        recipes = Ordered.copy(recipes);
        specimens = List.copyOf(specimens);
        steps = List.copyOf(steps);
        pilotSpecimens = List.copyOf(pilotSpecimens);
        mixes = List.copyOf(mixes);
        departures = List.copyOf(departures);
        findings = List.copyOf(findings);
    }

    /** Returns whether groups are kept from whoever reads the instruments. */
    public boolean keyClosed() {
        return plan.filter(Plan::blind).isPresent() && keyOpened.isEmpty();
    }

    public Optional<Registered> specimen(String code) {
        return specimens.stream().filter(each -> each.code().equals(code)).findFirst();
    }

    /** Returns all that is made, in the order in which it is tested: the pilots first. */
    public List<Registered> made() {
        return Stream.concat(pilotSpecimens.stream(), specimens.stream()).toList();
    }

    /** Returns a specimen or a pilot. */
    public Optional<Registered> madeAs(String code) {
        return made().stream().filter(each -> each.code().equals(code)).findFirst();
    }

    /** Returns the specimens of a test, in the order in which they are to be tested. */
    public List<Registered> of(String method) {
        return specimens.stream()
                .filter(each -> each.series().method().equals(method))
                .toList();
    }

    boolean isEmpty() {
        return plan.isEmpty() && mixes.isEmpty();
    }
}
