"""A boiling bath as differential equations in water and temperature, by SciPy, restarted where something happens."""

import json
import sys
import time

import numpy as np
from scipy.integrate import solve_ivp
from scipy.interpolate import CubicSpline
from scipy.optimize import brentq


def curve(table):
    """A table as a function that gives value and slope; plain arithmetic is the quickest for one number at a time."""
    low, step, y = table["low"], table["step"], table["y"]
    rows = [tuple(map(float, row)) for row in CubicSpline(low + step * np.arange(len(y)), y).c.T]
    last = len(rows) - 1

    def at(x):
        i = min(max(int((x - low) / step), 0), last)
        h = x - low - i * step
        c3, c2, c1, c0 = rows[i]
        return ((c3 * h + c2) * h + c1) * h + c0, (3 * c3 * h + 2 * c2) * h + c1

    return at


def surface(table):
    """Enthalpy with its slopes by water and by temperature, a polynomial in temperature for each water."""
    water, T = np.array(table["water"]), np.array(table["T"])
    middle, half = (T[0] + T[-1]) / 2, (T[-1] - T[0]) / 2
    by_T = np.polynomial.polynomial.polyfit((T - middle) / half, np.array(table["H"]).T, 7).T
    pieces = CubicSpline(water, by_T).c.transpose(1, 0, 2)
    rows = [[tuple(map(float, power)) for power in piece.T] for piece in pieces]
    low, step, last = float(water[0]), float(water[1] - water[0]), len(rows) - 1
    middle, half = float(middle), float(half)

    def at(W, T):
        i = min(max(int((W - low) / step), 0), last)
        h = W - low - i * step
        t = (T - middle) / half
        value = by_t = by_w = 0.0
        for c3, c2, c1, c0 in reversed(rows[i]):
            by_t = by_t * t + value
            value = value * t + ((c3 * h + c2) * h + c1) * h + c0
            by_w = by_w * t + (3 * c3 * h + 2 * c2) * h + c1
        return value, by_w, by_t / half

    return at


def read(path):
    with open(path) as file:
        return json.load(file)


class Bath:
    def __init__(self, given):
        self.given = given
        self.steel, self.salt = given["steel"], given["salt"]
        self.boiling_line = curve(given["boils"])
        self.enthalpy = surface(given["enthalpy"])
        names = ["plain", "coolSteam", "hotSteam", "steelHeat", "lnVapour", "losses", "evaporates"]
        self.plain, self.cool_steam, self.hot_steam, self.steel_heat, self.vapour, self.losses, self.evaporates = (
            curve(given[name]) for name in names
        )
        self.hot_from = given["hotSteam"]["low"]
        # The two branches are one number where they meet.
        self.shift = self.hot_steam(self.hot_from)[0] - self.cool_steam(self.hot_from)[0]

    def boils(self, W):
        T, slope = self.boiling_line(np.log(self.salt / W))
        return T, -slope / W

    def steam(self, T):
        return self.hot_steam(T)[0] if T >= self.hot_from else self.cool_steam(T)[0] + self.shift

    def energy(self, W, T):
        return self.enthalpy(W, T)[0] + self.steel * self.steel_heat(T)[0]

    def quiet(self, T, boils, steam, by_water):
        """kg/s that evaporate."""
        pressure = self.given["pressure"]
        if T < boils:
            heat = (steam - by_water) / (steam - self.plain(T)[0])
            pressure *= np.exp(heat * (self.vapour(T)[0] - self.vapour(boils)[0]))
        return self.evaporates(T)[0] * max(0.0, pressure - self.given["airVapour"])

    def warming(self, t, y, fire):
        W, T = float(y[0]), float(y[1])
        _, by_water, by_T = self.enthalpy(W, T)
        steam = self.steam(T)
        leaves = self.quiet(T, self.boils(W)[0], steam, by_water)
        heat = fire - self.losses(T)[0] - leaves * (steam - by_water)
        return -leaves, heat / (by_T + self.steel * self.steel_heat(T)[1])

    def surplus(self, W, fire):
        """Heat for the boil beyond what evaporates from the surface, W, and what a kilogram of steam takes, J."""
        T, slope = self.boils(W)
        _, by_water, by_T = self.enthalpy(W, T)
        steam = self.steam(T)
        takes = steam - by_water - (by_T + self.steel * self.steel_heat(T)[1]) * slope
        return fire - self.losses(T)[0], takes, self.quiet(T, T, steam, by_water)

    def boiling(self, t, y, fire):
        heat, takes, _ = self.surplus(float(y[0]), fire)
        return [-heat / takes]

    def reaches_boil(self, t, y, fire):
        return float(y[1]) - self.boils(float(y[0]))[0]

    reaches_boil.direction = 1

    def stops_boiling(self, t, y, fire):
        heat, takes, leaves = self.surplus(float(y[0]), fire)
        return heat - leaves * takes

    stops_boiling.direction = -1

    def pour(self, W, T, water, brings):
        """Water and temperature after a slug that mixes in at once: what is then above the boil flashes."""
        E, W = self.energy(W, T) + water * brings, W + water
        boils = self.boils(W)[0]
        if self.energy(W, boils) >= E:
            return W, brentq(lambda T: self.energy(W, T) - E, 280, boils, xtol=1e-10)

        def miss(left):
            T = self.boils(left)[0]
            return self.energy(left, T) + (W - left) * self.steam((boils + T) / 2) - E

        left = brentq(miss, 0.9 * W, W, xtol=1e-12)
        return left, self.boils(left)[0]

    def run(self, rtol):
        """Temperature at every recorded time."""
        given = self.given
        wanted = np.arange(0, given["end"] + 1, given["every"], dtype=float)
        found = np.empty(len(wanted))
        slugs = {slug["time"]: slug for slug in given["slugs"]}
        fires = dict(given["fire"])
        breaks = sorted({0, given["end"], *slugs, *fires})
        W, T = given["start"]["water"], given["start"]["T"]
        fire, boiled_first = 0.0, None
        for start, end in zip(breaks, breaks[1:]):
            fire = fires.get(start, fire)
            if start in slugs:
                W, T = self.pour(W, T, slugs[start]["water"], slugs[start]["brings"])
            t = start
            while t < end:
                points = wanted[(wanted >= t) & (wanted <= end)]
                # At its boil it boils if there is heat left for it; an event is only looked for from there on.
                boils = T >= self.boils(W)[0] - 1e-9 and self.stops_boiling(t, [W], fire) > 0
                work, event = (self.boiling, self.stops_boiling) if boils else (self.warming, self.reaches_boil)
                begun = solve_ivp(
                    lambda t, y: work(t, y, fire),
                    (t, end),
                    [W] if boils else [W, T],
                    method="DOP853",
                    rtol=rtol,
                    atol=rtol,
                    t_eval=points,
                    events=self.event(event, fire),
                )
                if not begun.success:
                    raise RuntimeError(begun.message)
                reached = len(begun.t_events[0]) > 0
                n = len(begun.t)
                first = int(np.searchsorted(wanted, points[0])) if len(points) else 0
                temperatures = [self.boils(float(w))[0] for w in begun.y[0]] if boils else begun.y[1]
                found[first : first + n] = temperatures
                if reached:
                    t, y = float(begun.t_events[0][0]), begun.y_events[0][0]
                    boiled_first = boiled_first or t
                else:
                    t, y = end, begun.y[:, -1]
                W = float(y[0])
                T = self.boils(W)[0] if boils or reached else float(y[1])
        return wanted, found, boiled_first

    @staticmethod
    def event(event, fire):
        def bound(t, y):
            return event(t, y, fire)

        bound.terminal, bound.direction = True, event.direction
        return bound


if __name__ == "__main__":
    bath = Bath(read(sys.argv[1]))
    times, T, first = bath.run(1e-9)
    course = dict(map(tuple, bath.given["course"]))
    apart = [1.8 * abs(one - course[at]) for at, one in zip(times, T)]
    worst = int(np.argmax(apart))
    finer = 1.8 * np.max(np.abs(bath.run(1e-11)[1] - T))
    begun = time.perf_counter()
    bath.run(1e-6)
    loose = 1e3 * (time.perf_counter() - begun)
    print(f"worst difference {apart[worst]:.5f} °F at {times[worst]:.0f} s of {len(times)} times; first boil {first:.0f} s")
    print(f"SciPy itself changes by {finer:.1e} °F at a tolerance of 1e-11, and takes {loose:.0f} ms at 1e-6")
    begun = time.perf_counter()
    bath.run(1e-9)
    print(1e3 * (time.perf_counter() - begun))
