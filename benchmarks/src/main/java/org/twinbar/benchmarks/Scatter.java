package org.twinbar.benchmarks;

import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;

/** How specimens of one group scatter about a mean of 1. */
enum Scatter {
    NORMAL("normal, 8 %", Promise.NORMAL) {
        @Override
        double draw(UniformRandomProvider random, double normal) {
            return 1 + 0.08 * normal;
        }
    },
    NORMAL_WIDE("normal, 15 %", Promise.NORMAL) {
        @Override
        double draw(UniformRandomProvider random, double normal) {
            return 1 + 0.15 * normal;
        }
    },
    LOG_NORMAL("log-normal, 15 %", Promise.ALIKE) {
        @Override
        double draw(UniformRandomProvider random, double normal) {
            return Math.exp(0.15 * normal - 0.15 * 0.15 / 2);
        }
    },
    WEIBULL("Weibull, shape 8", Promise.ALIKE) {
        /** Γ(1 + 1/8). */
        private static final double MEAN = 0.9417426998497015;

        @Override
        double draw(UniformRandomProvider random, double normal) {
            return Math.pow(-Math.log1p(-random.nextDouble()), 1 / 8.0) / MEAN;
        }
    },
    SKEWED("skewed (exponential above a threshold), 10 %", Promise.NONE) {
        @Override
        double draw(UniformRandomProvider random, double normal) {
            return 0.9 - 0.1 * Math.log1p(-random.nextDouble());
        }
    },
    HEAVY("heavy tails (t, 3 degrees of freedom), 8 %", Promise.NONE) {
        @Override
        double draw(UniformRandomProvider random, double normal) {
            ZigguratSampler.NormalizedGaussian other =
                    ZigguratSampler.NormalizedGaussian.of(random);
            double squares = 0;
            for (int i = 0; i < 3; i++) {
                double x = other.sample();
                squares += x * x;
            }
            // Variance of t with 3 degrees of freedom is 3.
            // No bar carries less than nothing; so few are cut that the mean stays what it is.
            return Math.max(0, 1 + 0.08 / Math.sqrt(3) * normal / Math.sqrt(squares / 3));
        }
    },
    UNEQUAL_SPREAD("normal, treated 12 %, control 4 %", Promise.NONE) {
        @Override
        double draw(UniformRandomProvider random, double normal) {
            return 1 + 0.04 * normal;
        }

        @Override
        double drawTreated(UniformRandomProvider random, double normal) {
            return 1 + 0.12 * normal;
        }
    },
    COARSE("normal, 2 %, read to steps of 5 %", Promise.NONE) {
        @Override
        double draw(UniformRandomProvider random, double normal) {
            return 1 + 0.02 * normal;
        }

        @Override
        double step() {
            return 0.05;
        }
    },
    ONE_IN_TEN_BAD("normal, 8 %, a tenth of the treated 30 % weaker", Promise.NONE) {
        @Override
        double draw(UniformRandomProvider random, double normal) {
            return 1 + 0.08 * normal;
        }

        @Override
        double drawTreated(UniformRandomProvider random, double normal) {
            double whole = draw(random, normal);
            // Divided by the mean, so that the true ratio of means stays what the cell says.
            return (random.nextDouble() < 0.1 ? 0.7 * whole : whole) / 0.97;
        }
    };

    /** What Twinbar promises of the share of false "supported". */
    enum Promise {
        /** At most 2.5 %. */
        NORMAL(0.025),
        /** At most 5 %, for equal numbers of the same shape. */
        ALIKE(0.05),
        /** Shown without a promise. */
        NONE(1);

        final double most;

        Promise(double most) {
            this.most = most;
        }
    }

    private final String words;
    private final Promise promise;

    Scatter(String words, Promise promise) {
        this.words = words;
        this.promise = promise;
    }

    String words() {
        return words;
    }

    Promise promise() {
        return promise;
    }

    /** Draws a specimen of the control; a normal deviate is given, of which it may make use. */
    abstract double draw(UniformRandomProvider random, double normal);

    double drawTreated(UniformRandomProvider random, double normal) {
        return draw(random, normal);
    }

    /** Smallest step that is read; zero for values as they are. */
    double step() {
        return 0;
    }
}
