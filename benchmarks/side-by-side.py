"""The same tasks as SideBySide.java by SciPy's and NumPy's vectorised functions, on the same values."""
import time

import numpy
import scipy
from scipy.stats import bootstrap, permutation_test

TREATED = numpy.array([50.3, 49.1, 51.8, 50.9, 48.7, 52.2, 49.9, 50.6, 51.1, 50.0])
CONTROL = numpy.array([48.9, 49.6, 47.5, 50.2, 48.1, 49.0, 50.7, 48.4, 49.3, 47.9])


def difference(a, b, axis=-1):
    return a.mean(axis) - b.mean(axis)


def ratio(a, b, axis=-1):
    return a.mean(axis) / b.mean(axis)


def permutation():
    return permutation_test((TREATED, CONTROL), difference, vectorized=True, n_resamples=numpy.inf).pvalue


def bca():
    return bootstrap((TREATED, CONTROL), ratio, n_resamples=100_000, vectorized=True, method="BCa",
                     rng=numpy.random.default_rng(1)).confidence_interval.low


def impact():
    rng = numpy.random.default_rng(1)
    n = 1_000_000
    moment = 4.1188 + 0.012 * rng.standard_normal(n)
    release = numpy.radians(140) + numpy.radians(0.2) * rng.standard_normal(n)
    rise = numpy.radians(110) + numpy.radians(0.3) * rng.standard_normal(n)
    friction = 0.040 + 0.008 * rng.standard_normal(n)
    width = 8 + 0.05 * rng.standard_normal(n)
    thickness = 4 + 0.02 * rng.standard_normal(n)
    energy = moment * (numpy.cos(rise) - numpy.cos(release)) - friction
    strength = 1000 * energy / (width * thickness)
    strength.mean(), strength.std(ddof=1)
    # The shortest interval needs both tails in order: select them, then sort what was selected.
    held = int(0.95 * n + 0.5)
    parted = numpy.partition(strength, (n - held, held - 1))
    low, high = numpy.sort(parted[:n - held]), numpy.sort(parted[held:])
    (high - low).argmin()
    return low[(n - held) // 2]


for name, task, times in (("permutation", permutation, 3), ("bca", bca, 11), ("impact", impact, 7)):
    result = task()
    taken = []
    for _ in range(times):
        start = time.process_time()
        task()
        taken.append(1000 * (time.process_time() - start))
    print(f"SciPy {scipy.__version__} {name:12} {sorted(taken)[times // 2]:9.2f} ms   {result:.6f}")
