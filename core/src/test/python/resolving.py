# Oracle values for org.twinbar.planning.resolving: prints the rows of checks.csv whose source is SciPy.
# Run: python3 core/src/test/python/resolving.py
# Made with SciPy 1.10.1 and NumPy 1.24.2.
import numpy as np
from scipy import optimize, stats


def noncentrality(n, power=0.8):
    df = 2 * n - 2
    t = stats.t.ppf(0.975, df)
    return optimize.brentq(lambda d: stats.nct.sf(t, df, d) - power, 0.1, 20, xtol=1e-13)


def ratio(n, cv):
    """(theta - 1)^2 = q (theta^2 + 1), METHODS I.4, COMMANDS size."""
    q = (noncentrality(n) / np.sqrt(n) * cv) ** 2
    return optimize.brentq(lambda t: (t - 1) ** 2 - q * (t * t + 1), 1, 50, xtol=1e-13) - 1


def row(name, quantity, inputs, expected, source):
    tolerance = "1e-4rel" if name.startswith("A6") else "1e-6rel"
    print(f"{name},{quantity},{inputs},{expected:.10g},{tolerance},{source}")


n, energy = 5, 9.80665 * 18.8e-3
u = 9.80665 * np.sqrt(2 / 12) * 1e-3
source = "METHODS C.5 and J.1 with SciPy 1.10.1 nct"
row("C5-share", "smallest share from instruments alone", "5 per group and 18.8 mm", ratio(n, np.sqrt(n) * u / energy), source)
row("C5-amount", "the same (J)", "5 per group and 18.8 mm", energy * ratio(n, np.sqrt(n) * u / energy), source)
row("C5-half-hammer", "smallest share with half the hammer", "5 per group and 37.6 mm", ratio(n, np.sqrt(n) * u / 2 / energy), source)
row("C5-scatter", "smallest share with 6 % scatter", "5 per group", ratio(n, 0.06), source)
stress = 1250 / 10.02 / 4.05
b, h = 0.0202 / 10.02 * stress, 0.0253 / 4.05 * stress
source = "METHODS A-6 with SciPy 1.10.1 nct"
row("A6-own", "own uncertainty (MPa)", "A-6 without the force", np.hypot(b, h), source)
row("A6-thickness", "share of the thickness", "A-6 without the force", h**2 / (b**2 + h**2), source)
row("A6-gain", "what cancels (MPa)", "gain 0.25 %", 0.0025 * stress, source)
row("A6-share", "smallest share from instruments alone", "5 per group", ratio(n, np.sqrt(n) * np.hypot(b, h) / stress), source)
