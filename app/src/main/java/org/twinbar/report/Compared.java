package org.twinbar.report;

import java.util.List;
import org.twinbar.decision.Comparison;
import org.twinbar.method.Property;
import org.twinbar.study.judged.JudgedSpecimen;

/**
 * A comparison with the specimens that it was made of.
 *
 * @param question in a few words
 * @param specimens those of its groups, left out or not
 * @param curves whether their curves are shown with it
 */
record Compared(
        String question,
        Property property,
        List<JudgedSpecimen> specimens,
        Comparison comparison,
        Curves curves) {

    /** Two questions about the same specimens need their curves once. */
    enum Curves {
        SHOWN_HERE,
        SHOWN_BEFORE
    }

    Compared {
        specimens = List.copyOf(specimens);
    }
}
