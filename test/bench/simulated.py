"""A fit around a simulation of the boiling bath, at every row of a log: heat, start water, offset and scale, by SciPy."""

import sys
import time

import numpy as np
from bath import curve, read, surface
from scipy.integrate import solve_ivp
from scipy.optimize import brentq, least_squares

noise = 0.33


class Simulation:
    def __init__(self, given):
        self.given = given
        self.at, self.T = np.array(given["readings"]).T
        self.pours = [tuple(pour) for pour in given["pours"]]
        x, y = given["boils"]["x"], given["boils"]["y"]
        self.ratios, self.temperatures = np.array(x), np.array(y)
        self.line = curve({"low": x[0], "step": x[1] - x[0], "y": y})
        self.enthalpy, self.steam = surface(given["enthalpy"]), curve(given["steam"])
        self.salt, self.brings = given["salt"], given["brings"]
        self.breaks = np.array([self.at[0], *(time for time, _ in self.pours), self.at[-1]])

    def boils(self, W):
        T, slope = self.line(np.log(self.salt / W))
        return T, -slope / W

    def boil_off(self, W, heat):
        T, slope = self.boils(W)
        _, by_water, by_T = self.enthalpy(W, T)
        return heat / (self.steam(T)[0] - by_water - by_T * slope)

    def flashed(self, W, E):
        """Water left at its boil where a bath holds more heat than that takes."""

        def miss(left):
            T = self.boils(left)[0]
            return self.enthalpy(left, T)[0] + (W - left) * self.steam(T)[0] - E

        return brentq(miss, 0.9 * W, W, xtol=1e-9)

    def course(self, heat, W):
        """Temperature on the published curve at every row."""
        found = np.empty(len(self.at))
        cuts = np.searchsorted(self.at, self.breaks, side="right")
        cuts[0] = 0
        T0, boils_from = self.boils(W)[0], self.at[0]
        for k, (start, end) in enumerate(zip(self.breaks, self.breaks[1:])):
            if end == start:
                break
            rows = self.at[cuts[k] : cuts[k + 1]]
            warm = rows < boils_from
            boiling = rows[~warm]
            T = self.boils(W)[0]
            here = np.empty(len(rows))
            here[warm] = T0 + (T - T0) * (rows[warm] - start) / max(1e-9, boils_from - start)
            if boils_from < end:
                # RK45 at its usual tolerance is the quickest of SciPy's methods here.
                went = solve_ivp(
                    lambda t, y: [-self.boil_off(max(0.5, float(y[0])), heat)], (boils_from, end), [W], dense_output=True
                )
                here[~warm] = self.line_of(went.sol(boiling)[0]) if len(boiling) else []
                W = max(0.5, float(went.y[0, -1]))
            else:
                T = T0 + (T - T0) * (end - start) / (boils_from - start)
            found[cuts[k] : cuts[k + 1]] = here
            if k < len(self.pours):
                kg = self.pours[k][1]
                T0 = self.boils(W)[0] if boils_from < end else T
                E = self.enthalpy(W, T0)[0] + kg * self.brings
                W += kg
                short = self.enthalpy(W, self.boils(W)[0])[0] - E
                boils_from = end
                # What cold water takes is warmed again by the same fire before the bath boils on.
                if short > 0:
                    boils_from = end + short / heat
                else:
                    W = self.flashed(W, E)
        return found

    def line_of(self, W):
        return np.interp(np.log(self.salt / np.maximum(0.5, W)), self.ratios, self.temperatures)

    def residuals(self, p):
        ln_heat, ln_water, offset, scale = p
        (middle, doubt), pivot = self.given["offset"], self.given["pivot"]
        T = self.course(np.exp(ln_heat), np.exp(ln_water))
        left = (pivot + scale * (T - pivot) + offset - self.T) / noise
        return np.append(left, [(offset - middle) / doubt, (scale - 1) / self.given["scale"]])

    def start(self):
        (offset, _) = self.given["offset"]
        W = self.salt / np.exp(np.interp(self.T[0] - offset, self.temperatures, self.ratios))
        rate = sum(kg for _, kg in self.pours) / (self.at[-1] - self.at[0])
        return np.array([np.log(rate * 2.6e6), np.log(W), offset, 1.0])

    def fit(self):
        return least_squares(self.residuals, self.start(), x_scale=[0.05, 0.05, 1, 0.05], diff_step=1e-5)


if __name__ == "__main__":
    given = read(sys.argv[1])
    begun = time.perf_counter()
    simulation = Simulation(given)
    found = simulation.fit()
    ms = 1e3 * (time.perf_counter() - begun)
    left = noise * found.fun[:-2]
    print(
        f"SciPy: heat {np.exp(found.x[0]):.0f} W, water {np.exp(found.x[1]):.2f} kg, "
        f"{np.sqrt(np.mean(left**2)):.2f} K left, {found.nfev + 4 * found.njev} simulations"
    )
    print(ms)
