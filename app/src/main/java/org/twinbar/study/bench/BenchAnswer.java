package org.twinbar.study.bench;

import java.util.List;
import org.twinbar.finding.Finding;
import org.twinbar.instrument.Instrument;
import org.twinbar.method.Description;
import org.twinbar.planning.resolving.Resolution;

/**
 * What a bench can tell apart.
 *
 * @param typical whose readings stand for those that will come
 * @param instruments what they are read on
 * @param findings what a person should know of the answer
 */
public record BenchAnswer(
        Description description,
        String typical,
        Resolution resolution,
        List<Instrument> instruments,
        List<Finding> findings) {

    public BenchAnswer {
        instruments = List.copyOf(instruments);
        findings = List.copyOf(findings);
    }
}
