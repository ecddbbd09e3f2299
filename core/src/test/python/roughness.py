"""Makes core/src/test/resources/org/twinbar/method/roughness/profile.csv and prints what its rows give.

Run: python3 core/src/test/python/roughness.py FOLDER
Needs NumPy and SciPy. The profile is invented: layer lines of 0.2 mm, a wave of 5 mm, a tilt, and noise.
The Gaussian mean line is that of ISO 16610-21 with its weights cut at one cut-off; near the ends the
weights that lie on the profile are made to add up to 1, here by dividing two convolutions.
"""

import pathlib
import sys

import numpy
import scipy
from scipy.signal import fftconvolve

STEP = 0.01
ALPHA = numpy.sqrt(numpy.log(2) / numpy.pi)


def mean_line(heights, cutoff):
    reach = int(cutoff / STEP + 1e-9)
    x = numpy.arange(-reach, reach + 1) * STEP
    weights = numpy.exp(-numpy.pi * (x / (ALPHA * cutoff)) ** 2)
    sums = fftconvolve(heights, weights, mode="same")
    return sums / fftconvolve(numpy.ones_like(heights), weights, mode="same")


def mean(z):
    return numpy.trapezoid(z) / (len(z) - 1)


def parameters(x, z, cutoff, sections, degree, short):
    z = z - numpy.polyval(numpy.polyfit(x, z, degree), x) if degree else z
    z = mean_line(z, short) if short else z
    z = z - mean_line(z, cutoff)
    start = x[0] + (x[-1] - x[0] - sections * cutoff) / 2

    def part(a, b):
        return z[(x > a - 1e-8) & (x < b + 1e-8)]

    whole = part(start, start + sections * cutoff)
    each = [part(start + i * cutoff, start + (i + 1) * cutoff) for i in range(sections)]
    ra = [mean(numpy.abs(e)) for e in each]
    rz = [e.max() - e.min() for e in each]
    return {
        "ra": mean(numpy.abs(whole)),
        "rq": numpy.sqrt(mean(whole**2)),
        "rz": numpy.mean(rz),
        "rt": whole.max() - whole.min(),
        "ra-u": numpy.std(ra, ddof=1) / numpy.sqrt(sections),
        "rz-u": numpy.std(rz, ddof=1) / numpy.sqrt(sections),
    }


def main(folder):
    random = numpy.random.default_rng(21920)
    x = numpy.arange(1501) * STEP
    ridges = 12 * numpy.abs(numpy.sin(numpy.pi * x / 0.2)) * (1 + 0.2 * random.standard_normal(1501))
    z = ridges + 6 * numpy.sin(2 * numpy.pi * x / 5) + 3 * x + 0.15 * (x - 7) ** 2
    z = numpy.round(z + 0.4 * random.standard_normal(1501), 3)
    versions = f"NumPy {numpy.__version__}, SciPy {scipy.__version__}"
    with open(pathlib.Path(folder) / "profile.csv", "w") as file:
        file.write("# An invented profile: layer lines of 0.2 mm, a wave of 5 mm, a bow, a tilt and noise.\n")
        file.write(f"# Made by core/src/test/python/roughness.py with {versions}; licence: that of Twinbar.\n")
        file.write("position_mm,height_um\n")
        for place, height in zip(x, z):
            file.write(f"{place:.2f},{height:.3f}\n")
    for name, arguments in {
        "line": (2.5, 5, 1, 0),
        "parabola": (2.5, 5, 2, 0),
        "short": (2.5, 5, 1, 0.08),
        "fine": (0.8, 5, 1, 0),
    }.items():
        for key, value in parameters(x, z, *arguments).items():
            print(f"{name}-{key},{float(value)!r}")
    print(versions)


if __name__ == "__main__":
    main(sys.argv[1])
