package org.twinbar.decision;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/**
 * The orders of so many treated and control specimens that support a question. Which they are does
 * not hang on how likely they are, so each is judged once for all chances that are asked.
 */
final class ListedOrders {

    private final Predicate<boolean[]> supports;
    private final Map<Integer, List<boolean[]>> known = new HashMap<>();

    /** @param supports the real rule, told for each place whether a treated one comes there */
    ListedOrders(Predicate<boolean[]> supports) {
        this.supports = supports;
    }

    /**
     * Returns the chance that one of them comes.
     *
     * @param n specimens in each group
     * @param odds that the next is a treated one, where as many are left of both groups
     */
    double chance(int n, double odds) {
        double sum = 0;
        for (boolean[] order : known.computeIfAbsent(n, this::supporting)) {
            sum += chance(order, odds);
        }
        return sum;
    }

    private static double chance(boolean[] order, double odds) {
        int treated = order.length / 2;
        int control = treated;
        double chance = 1;
        for (boolean isTreated : order) {
            double next = odds * treated / (odds * treated + control);
            chance *= isTreated ? next : 1 - next;
            if (isTreated) {
                treated--;
            } else {
                control--;
            }
        }
        return chance;
    }

    private List<boolean[]> supporting(int n) {
        List<boolean[]> found = new ArrayList<>();
        fill(new boolean[2 * n], n, n, found);
        return found;
    }

    /** Fills the places that are open: as many as are left of both groups. */
    private void fill(boolean[] order, int treated, int control, List<boolean[]> found) {
        if (treated + control == 0) {
            if (supports.test(order)) {
                found.add(order.clone());
            }
            return;
        }
        int at = order.length - treated - control;
        if (treated > 0) {
            order[at] = true;
            fill(order, treated - 1, control, found);
        }
        if (control > 0) {
            order[at] = false;
            fill(order, treated, control - 1, found);
        }
    }
}
