package org.twinbar.statistics;

import java.util.List;

/**
 * The specimens of two groups that share what sets their pace, such as a print run: they are
 * compared with each other and with none elsewhere.
 *
 * @param treated may be empty; a stratum of one group tells nothing of the other
 * @param control likewise
 */
public record Stratum(List<Lifetime> treated, List<Lifetime> control) {

    public Stratum {
        treated = List.copyOf(treated);
        control = List.copyOf(control);
    }

    static List<Stratum> one(List<Lifetime> treated, List<Lifetime> control) {
        return List.of(new Stratum(treated, control));
    }

    boolean isAnyBetweenLooks() {
        return treated.stream().anyMatch(Lifetime::isBetweenLooks)
                || control.stream().anyMatch(Lifetime::isBetweenLooks);
    }

    static int count(List<Stratum> strata) {
        int treated = strata.stream().mapToInt(each -> each.treated.size()).sum();
        int control = strata.stream().mapToInt(each -> each.control.size()).sum();
        Arguments.requireAtLeast(treated, 1, "number of treated specimens");
        Arguments.requireAtLeast(control, 1, "number of control specimens");
        return treated + control;
    }
}
