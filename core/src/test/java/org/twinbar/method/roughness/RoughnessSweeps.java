package org.twinbar.method.roughness;

import java.util.List;
import java.util.Random;
import org.twinbar.instrument.Bench;
import org.twinbar.method.Exactly;
import org.twinbar.method.Sweep;
import org.twinbar.method.Sweeps;

/**
 * Faces with heights at random whose Ra over all places is known, each traced once by a gauge that
 * is off in gain.
 *
 * <p>Normal noise, smoothed by a Gaussian kernel: its Ra is σ·√(2/π), where σ follows from what the
 * kernel and the filter make of a single spike.
 */
public final class RoughnessSweeps implements Sweeps {

    private static final double STEP = 0.01;
    private static final int ROWS = 1501;
    private static final double SMOOTHED_OVER = 0.1;
    private static final double CUTOFF = 2.5;
    private static final Bench BENCH = Exactly.bench().withGain("profilometer", 0.02);
    private static final double TRUTH = 20 * spikesRoot() * Math.sqrt(2 / Math.PI);

    @Override
    public List<Sweep> sweeps() {
        return List.of(new Sweep(
                RoughnessForm.RA,
                "one trace of a face whose heights are random; the gauge's gain by 2 %",
                RoughnessSweeps::face));
    }

    private static double spikesRoot() {
        double[] spike = new double[ROWS];
        spike[ROWS / 2] = 1;
        Profile smooth = new Profile(0, STEP, spike).longerThan(SMOOTHED_OVER);
        double[] left = smooth.shorterThan(CUTOFF).heights();
        double sum = 0;
        for (double height : left) {
            sum += height * height;
        }
        return Math.sqrt(sum);
    }

    private static Sweep.Drawn face(Random random) {
        double[] noise = new double[ROWS];
        for (int row = 0; row < ROWS; row++) {
            noise[row] = 20 * random.nextGaussian();
        }
        double[] face = new Profile(0, STEP, noise).longerThan(SMOOTHED_OVER).heights();
        double gain = 1 + 0.02 * random.nextGaussian();
        return Sweep.Drawn.of(
                new Roughness(),
                Profiles.of(
                        Profiles.part(BENCH),
                        STEP,
                        (ROWS - 1) * STEP,
                        x -> face[(int) Math.round(x / STEP)] / gain),
                TRUTH);
    }
}
