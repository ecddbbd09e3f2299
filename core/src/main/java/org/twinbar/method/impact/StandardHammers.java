package org.twinbar.method.impact;

import java.util.Arrays;
import java.util.OptionalDouble;

/**
 * The hammers of ISO 13802 for one way of holding the specimen.
 *
 * <p>Energies in J, speeds in m/s. Source: METHODS C.1 (speeds from an excerpt of the standards,
 * the list of hammers from memory): a guide for choosing, not a limit to be held to.
 */
enum StandardHammers {
    CHARPY(0.5, 1, 2, 4, 5, 7.5, 15, 25, 50),
    IZOD(1, 2.75, 5.5, 11, 22);

    /** Share of its energy that a hammer may give: ISO 180:2019. */
    static final double LEAST_SHARE = 0.10;

    static final double LARGEST_SHARE = 0.80;

    /** Permitted departure from the speed (from memory). */
    static final double SPEED_TOLERANCE = 0.10;

    private static final double CHARPY_SMALL_UP_TO_J = 5;

    private final double[] energies;

    StandardHammers(double... energies) {
        this.energies = energies;
    }

    static StandardHammers of(String heldAs) {
        return heldAs.equals(ImpactForm.IZOD) ? IZOD : CHARPY;
    }

    /** Returns the largest hammer that an energy is within 10 to 80 % of; empty where none is. */
    OptionalDouble largestFor(double energyJ) {
        return Arrays.stream(energies)
                .filter(hammer -> energyJ >= LEAST_SHARE * hammer)
                .filter(hammer -> energyJ <= LARGEST_SHARE * hammer)
                .max();
    }

    /** Returns the speed at which a hammer of this energy strikes. */
    double speed(double availableJ) {
        if (this == IZOD) {
            return 3.5;
        }
        return availableJ <= CHARPY_SMALL_UP_TO_J * (1 + SPEED_TOLERANCE) ? 2.9 : 3.8;
    }

    /** Returns the share of its energy that a hammer may lose to friction (from memory). */
    double permittedLoss(double availableJ) {
        if (availableJ < 0.75) {
            return 0.04;
        }
        if (availableJ < 1.5) {
            return 0.02;
        }
        return availableJ < 3 ? 0.01 : 0.005;
    }
}
