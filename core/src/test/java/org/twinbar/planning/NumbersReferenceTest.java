package org.twinbar.planning;

import org.junit.jupiter.api.Test;
import org.twinbar.Checks;
import org.twinbar.planning.Aim.NoChange.Scale;

class NumbersReferenceTest {

    private final Checks checks = Checks.of(getClass());

    @Test
    void agreesOnPilots() {
        Pilot pilot = Pilot.of(30.1, 31.4, 29.2, 32.0, 30.6);
        checks.row("pilot-scatter").expects(pilot.scatter());
        checks.row("pilot-cautious").expects(pilot.cautious());
    }

    @Test
    void agreesOnALevel() {
        checks.row("clears-6").expects(new Aim.Clears(10, 2, 0.9).power(6));
        checks.row("clears-10").expects(new Aim.Clears(6, 2, 0.9).power(10));
    }

    @Test
    void agreesOnNoChange() {
        Aim difference = new Aim.NoChange(1.5, 1, Scale.DIFFERENCE);
        Aim ratio = new Aim.NoChange(0.1, 0.06, Scale.RATIO);
        checks.row("alike-difference-10").expects(difference.power(10));
        checks.row("alike-ratio-12").expects(ratio.power(12));
        checks.row("alike-ratio-enough")
                .expects(Numbers.of(ratio, 0.8, new Numbers.Groups(2, 1), Effort.NONE)
                        .enough()
                        .orElseThrow());
    }
}
