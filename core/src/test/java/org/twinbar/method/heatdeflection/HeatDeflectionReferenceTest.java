package org.twinbar.method.heatdeflection;

import org.junit.jupiter.api.Test;
import org.twinbar.Checks;
import org.twinbar.method.Exactly;
import org.twinbar.method.Result;

class HeatDeflectionReferenceTest {

    private static final Checks CHECKS = Checks.of(HeatDeflectionReferenceTest.class);
    private static final LoadedBar FLAT = new LoadedBar(64, 10, 4);

    @Test
    void forceForEachStandardStress() {
        CHECKS.row("force-a").expects(FLAT.force(1.80));
        CHECKS.row("force-b").expects(FLAT.force(0.45));
        CHECKS.row("force-c").expects(FLAT.force(8.00));
    }

    @Test
    void massToLayOn() {
        Result result = HotBars.result(HotBars.bar(Exactly.bench()));
        CHECKS.row("added-mass").expects(Exactly.value(result, HeatForm.ADDED_MASS));
    }

    @Test
    void standardDeflection() {
        for (int tenths = 38; tenths <= 42; tenths++) {
            LoadedBar bar = new LoadedBar(64, 10, tenths / 10.0);
            CHECKS.row("deflection-" + tenths).expects(bar.deflection(0.2));
        }
        CHECKS.row("iso-table").expects(FLAT.deflection(0.2));
        CHECKS.row("on-edge").expects(new LoadedBar(100, 4, 10).deflection(0.2));
    }

    @Test
    void otherStandardsBar() {
        LoadedBar bar = new LoadedBar(100, 3.2, 12.7);
        CHECKS.row("d648-force").expects(bar.force(1.82));
        CHECKS.row("d648-strain").expects(bar.strainPercent(0.25));
    }
}
