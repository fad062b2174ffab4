"""The 54 nonlinear regressions of NIST's Statistical Reference Datasets by SciPy, at the settings that solve them all."""

import json
import sys
import time
from pathlib import Path

import numpy as np
from scipy.optimize import least_squares

exp, cos, sin, arctan, pi = np.exp, np.cos, np.sin, np.arctan, np.pi


def misra(b, x):
    return b[0] * (1 - exp(-b[1] * x))


def chwirut(b, x):
    return exp(-b[0] * x) / (b[1] + b[2] * x)


def gauss(b, x):
    b1, b2, b3, b4, b5, b6, b7, b8 = b
    return b1 * exp(-b2 * x) + b3 * exp(-((x - b4) ** 2) / b5**2) + b6 * exp(-((x - b7) ** 2) / b8**2)


def cubics(b, x):
    b1, b2, b3, b4, b5, b6, b7 = b
    return (b1 + b2 * x + b3 * x**2 + b4 * x**3) / (1 + b5 * x + b6 * x**2 + b7 * x**3)


def lanczos(b, x):
    return b[0] * exp(-b[1] * x) + b[2] * exp(-b[3] * x) + b[4] * exp(-b[5] * x)


def enso(b, x):
    b1, b2, b3, b4, b5, b6, b7, b8, b9 = b
    turn = 2 * pi * x
    year = b2 * cos(turn / 12) + b3 * sin(turn / 12)
    return b1 + year + b5 * cos(turn / b4) + b6 * sin(turn / b4) + b8 * cos(turn / b7) + b9 * sin(turn / b7)


models = {
    "Bennett5": lambda b, x: b[0] * (b[1] + x) ** (-1 / b[2]),
    "BoxBOD": misra,
    "Chwirut1": chwirut,
    "Chwirut2": chwirut,
    "DanWood": lambda b, x: b[0] * x ** b[1],
    "ENSO": enso,
    "Eckerle4": lambda b, x: (b[0] / b[1]) * exp(-0.5 * ((x - b[2]) / b[1]) ** 2),
    "Gauss1": gauss,
    "Gauss2": gauss,
    "Gauss3": gauss,
    "Hahn1": cubics,
    "Kirby2": lambda b, x: (b[0] + b[1] * x + b[2] * x**2) / (1 + b[3] * x + b[4] * x**2),
    "Lanczos1": lanczos,
    "Lanczos2": lanczos,
    "Lanczos3": lanczos,
    "MGH09": lambda b, x: b[0] * (x**2 + x * b[1]) / (x**2 + x * b[2] + b[3]),
    "MGH10": lambda b, x: b[0] * exp(b[1] / (x + b[2])),
    "MGH17": lambda b, x: b[0] + b[1] * exp(-x * b[3]) + b[2] * exp(-x * b[4]),
    "Misra1a": misra,
    "Misra1b": lambda b, x: b[0] * (1 - (1 + b[1] * x / 2) ** -2),
    "Misra1c": lambda b, x: b[0] * (1 - (1 + 2 * b[1] * x) ** -0.5),
    "Misra1d": lambda b, x: b[0] * b[1] * x / (1 + b[1] * x),
    "Nelson": lambda b, x: b[0] - b[1] * x[0] * exp(-b[2] * x[1]),
    "Rat42": lambda b, x: b[0] / (1 + exp(b[1] - b[2] * x)),
    "Rat43": lambda b, x: b[0] / (1 + exp(b[1] - b[2] * x)) ** (1 / b[3]),
    "Roszman1": lambda b, x: b[0] - b[1] * x - arctan(b[2] / (x - b[3])) / pi,
    "Thurber": cubics,
}


def fits():
    """One pair a fit: residuals and start; and what is certified."""
    sets = json.loads((Path(__file__).parent.parent / "published" / "nistNonlinear.json").read_text())["sets"]
    for one in sets:
        y = np.array(one["y"])
        y = np.log(y) if one["name"] == "Nelson" else y
        x = np.array(one["x"])
        x = x if len(x) > 1 else x[0]
        model = models[one["name"]]
        for start in ("start1", "start2"):
            residuals = lambda b, model=model, x=x, y=y: model(b, x) - y
            yield one["name"], residuals, np.array(one[start]), np.array(one["certified"])


def solve(residuals, start):
    return least_squares(
        residuals,
        start,
        method="trf",
        jac="3-point",
        diff_step=6e-6,
        x_scale="jac",
        ftol=1e-15,
        xtol=1e-15,
        gtol=1e-15,
        max_nfev=5000,
    )


if __name__ == "__main__":
    np.seterr(all="ignore")
    work = list(fits())
    if "each" in sys.argv:
        for name, residuals, start, certified in work:
            best = float("inf")
            for _ in range(5):
                begun = time.perf_counter()
                found = solve(residuals, start)
                best = min(best, time.perf_counter() - begun)
            off = np.max(np.abs(found.x / certified - 1))
            print(f"{name:9s} {-np.log10(max(off, 1e-15)):5.1f} digits {1e3 * best:8.2f} ms {found.nfev} {found.njev}")
    for _, residuals, start, _ in work:
        solve(residuals, start)
    begun = time.perf_counter()
    for _, residuals, start, _ in work:
        solve(residuals, start)
    print(1e3 * (time.perf_counter() - begun))
