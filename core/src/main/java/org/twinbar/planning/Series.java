package org.twinbar.planning;

import org.twinbar.specimen.PrintOrientation;

/**
 * Specimens of a plan that are alike but for their group: one shape, one way up, one test.
 *
 * @param name on one line, its own within the plan, such as {@code flat bars}
 * @param method name of the test
 * @param shape what is printed, such as the name of a standard shape
 * @param orientation how it stands on the bed
 * @param perGroup specimens in each group
 * @param pilots tested before all others, to learn the scatter and the instruments; never compared
 */
public record Series(
        String name,
        String method,
        String shape,
        PrintOrientation orientation,
        int perGroup,
        int pilots) {

    static final int MOST_PILOTS = 20;

    /** @throws PlanException unless 1 ≤ perGroup ≤ 2000 and 0 ≤ pilots ≤ 20 */
    public Series {
        for (String text : new String[] {name, method, shape}) {
            if (text.isBlank() || text.indexOf('\n') >= 0 || text.indexOf('\t') >= 0) {
                throw new PlanException(
                        "Specimens of a plan need a name, a test and a shape, each on one line.");
            }
        }
        if (perGroup < 1 || perGroup > Design.MOST_SPECIMENS) {
            throw new PlanException(
                    "A plan has from 1 specimen per group to %s in all, not %s per group."
                            .formatted(Design.MOST_SPECIMENS, perGroup));
        }
        if (pilots < 0 || pilots > MOST_PILOTS) {
            throw new PlanException("%s may have from 0 to %s pilots, not %s."
                    .formatted(name, MOST_PILOTS, pilots));
        }
    }

    public Series withPerGroup(int number) {
        return new Series(name, method, shape, orientation, number, pilots);
    }

    public Series withPilots(int number) {
        return new Series(name, method, shape, orientation, perGroup, number);
    }
}
