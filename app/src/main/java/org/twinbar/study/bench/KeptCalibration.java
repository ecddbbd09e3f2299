package org.twinbar.study.bench;

import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.twinbar.finding.Figures;
import org.twinbar.instrument.Calibration;
import org.twinbar.quantity.Unit;
import org.twinbar.study.file.CalibrationSheet;
import org.twinbar.study.judged.KeptFile;

/**
 * A calibration that is kept: its table, and the line that is fitted to it each time anew.
 *
 * @param table as it came
 * @param calibration in the instrument's unit
 * @param who entered it
 */
public record KeptCalibration(
        UUID id, CalibrationSheet sheet, KeptFile table, Calibration calibration, String who) {

    /** Returns which calibration this is, as a result names it. */
    String words(Unit unit) {
        return String.format(
                Locale.ROOT,
                "calibration of %s against %s (%s points, %s to %s\u2009%s)",
                sheet.date(),
                calibration.reference().name(),
                calibration.points().size(),
                Figures.three(calibration.lowest()),
                Figures.three(calibration.highest()),
                unit.symbol());
    }

    /**
     * One that doesn't count: it stays readable.
     *
     * @param why it was withdrawn
     * @param who withdrew it
     */
    public record Withdrawn(KeptCalibration calibration, String why, String who) {}

    public static List<KeptCalibration> oldestFirst(List<KeptCalibration> calibrations) {
        return calibrations.stream()
                .sorted(java.util.Comparator.comparing(it -> it.sheet().date()))
                .toList();
    }
}
