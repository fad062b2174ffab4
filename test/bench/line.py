"""The least that tells a boil-off from a log of a boiling bath: start water, a constant rate and an offset, by SciPy."""

import sys
import time

import numpy as np
from bath import read
from scipy.optimize import least_squares

noise = 0.33


def problem(given):
    at, T = np.array(given["readings"]).T
    poured_at, kg = np.array(given["pours"]).reshape(-1, 2).T
    # A reading on a pour's own row was taken before it.
    poured = np.concatenate([[0.0], np.cumsum(kg)])[np.searchsorted(poured_at, at, side="left")]
    x, y = np.array(given["boils"]["x"]), np.array(given["boils"]["y"])
    offset, doubt = given["offset"]
    ln_salt, since = np.log(given["salt"]), at - at[0]
    first = given["salt"] / np.exp(np.interp(T[0] - offset, y, x))

    def residuals(p):
        water = np.maximum(0.1, p[0] + poured - 1e-3 * p[1] * since)
        left = (np.interp(ln_salt - np.log(water), x, y) + p[2] - T) / noise
        return np.append(left, (p[2] - offset) / doubt)

    return residuals, np.array([first, 1e3 * np.sum(kg) / since[-1], offset])


def solve(given):
    residuals, start = problem(given)
    found = least_squares(residuals, start, method="lm")
    covariance = np.linalg.inv(found.jac.T @ found.jac)
    return found.x, np.sqrt(np.diag(covariance))


if __name__ == "__main__":
    given = read(sys.argv[1])
    x, u = solve(given)
    print(f"SciPy's boil-off {1e-3 * x[1]:.6f} kg/s, standard uncertainty {1e-3 * u[1]:.6f}")
    times = 100
    begun = time.perf_counter()
    for _ in range(times):
        solve(given)
    print(1e3 * (time.perf_counter() - begun) / times)
