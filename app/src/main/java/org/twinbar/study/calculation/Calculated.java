package org.twinbar.study.calculation;

import java.util.List;
import org.twinbar.finding.Finding;
import org.twinbar.study.judged.JudgedSpecimen;
import org.twinbar.study.judged.MethodUsed;

/**
 * What a test gave.
 *
 * @param used method, settings and instruments
 * @param specimens in the order of the table
 * @param findings what concerns all of them
 */
public record Calculated(MethodUsed used, List<JudgedSpecimen> specimens, List<Finding> findings) {
    public Calculated {
        specimens = List.copyOf(specimens);
        findings = List.copyOf(findings);
    }
}
