package org.twinbar.method.roughness;

import java.util.function.ToDoubleFunction;
import org.twinbar.method.Yield;

/**
 * What a profile gives (µm), each with the standard uncertainty that the scatter between its
 * sampling lengths tells of; 0 where there is one alone.
 *
 * @param sections how many sampling lengths it was taken from; 0 where it could not be
 * @param missing why not, empty where it could
 */
record Parameters(int sections, Height ra, Height rq, Height rz, Height rt, String missing) {

    /** A height and its standard uncertainty from the scatter between sampling lengths (µm). */
    record Height(double value, double u) {

        /** @param gain what this world multiplies heights by, @param error what it adds */
        Yield yield(double gain, double error, int sections) {
            double here = value * gain + error;
            return sections > 1 && u > 0 && Double.isFinite(here)
                    ? new Yield.Fitted(here, u, sections - 1.0)
                    : Yield.of(here);
        }
    }

    private static final Height NOTHING = new Height(0, 0);

    static Parameters missing(String reason) {
        return new Parameters(0, NOTHING, NOTHING, NOTHING, NOTHING, reason);
    }

    /**
     * Returns what a filtered profile gives over a number of sampling lengths.
     *
     * <p>Ra, Rq and Rt over all of them (ISO 21920-2), Rz as their mean of highest peak to deepest
     * valley.
     *
     * @param from where the first begins (mm)
     * @param length of one (mm)
     */
    static Parameters of(Profile roughness, double from, double length, int sections) {
        Profile all = roughness.between(from, from + sections * length);
        Profile[] each = new Profile[sections];
        for (int i = 0; i < sections; i++) {
            each[i] = roughness.between(from + i * length, from + (i + 1) * length);
        }
        double rz = mean(each, Profile::peakToValley);
        return new Parameters(
                sections,
                new Height(all.meanHeight(), ofMean(each, Profile::meanHeight)),
                new Height(all.rootMeanSquare(), ofMean(each, Profile::rootMeanSquare)),
                new Height(rz, ofMean(each, Profile::peakToValley)),
                new Height(all.peakToValley(), 0),
                "");
    }

    private static double mean(Profile[] each, ToDoubleFunction<Profile> height) {
        double sum = 0;
        for (Profile section : each) {
            sum += height.applyAsDouble(section);
        }
        return sum / each.length;
    }

    private static double ofMean(Profile[] each, ToDoubleFunction<Profile> height) {
        if (each.length < 2) {
            return 0;
        }
        double mean = mean(each, height);
        double sum = 0;
        for (Profile section : each) {
            double off = height.applyAsDouble(section) - mean;
            sum += off * off;
        }
        return Math.sqrt(sum / (each.length - 1) / each.length);
    }
}
