package org.twinbar.planning;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * Which specimen is in which print run, at which place of it, from which mix, and when it is
 * tested.
 *
 * <p>Everything is dealt by a seeded shuffle within blocks: specimens of a group over the runs as
 * evenly as can be, places within a run, mixes and oven loads within a run, and the order of
 * testing run by run, so that what drifts over the day meets all groups alike. Codes say nothing of
 * the group. Source: METHODS.md L.
 *
 * @param design what was dealt
 * @param seed of the shuffles
 * @param specimens series by series, in the order in which they are tested
 * @param pilots series by series; untreated, printed and tested before all others, never compared
 */
public record Allocation(Design design, long seed, List<Placed> specimens, List<Placed> pilots) {

    /** @throws PlanException where two specimens have one code, or one is of no group or series */
    public Allocation {
        specimens = List.copyOf(specimens);
        pilots = List.copyOf(pilots);
        List<Placed> all = Stream.concat(specimens.stream(), pilots.stream()).toList();
        if (all.stream().map(Placed::code).distinct().count() < all.size()) {
            throw new PlanException("Two specimens of the plan have the same code.");
        }
        for (Placed each : all) {
            design.group(each.group());
            design.series(each.series());
        }
    }

    /** Deals a design; the same seed deals the same. */
    public static Allocation of(Design design, long seed) {
        Dealing.Dealt dealt = new Dealing(design, seed).dealt();
        return new Allocation(design, seed, dealt.specimens(), dealt.pilots());
    }

    /** Returns the specimens as they are made: run by run, place by place. */
    public List<Placed> inPrintOrder() {
        return specimens.stream()
                .sorted(Comparator.comparingInt(Placed::run).thenComparingInt(Placed::position))
                .toList();
    }

    /** Returns the specimens of a series, in the order in which they are tested. */
    public List<Placed> of(Series series) {
        return specimens.stream()
                .filter(each -> each.series().equals(series.name()))
                .toList();
    }

    /** Returns the text that a seal is taken of. */
    public String canonicalText() {
        return Canonical.text(this);
    }

    /** Returns the SHA-256 of {@link #canonicalText} in UTF-8, as 64 hexadecimal figures. */
    public String seal() {
        return Canonical.sealOf(canonicalText());
    }
}
