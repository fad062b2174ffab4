import { expect, test } from "vitest";
import { coldWall, netHeat } from "../../../../lib/fit/scale/netHeat.ts";

const inch = 0.0254;
/** W in 1 BTU/h and W/m² in 1 BTU/(h ft²) (NIST SP 811); J/kg in 1 BTU/lb, exact. */
const btuPerHour = 0.29307107;
const btuPerHourFoot = 3.154591;
const btuPerPound = 2326;
const pound = 0.45359237;

// Our own arithmetic by hand (wall 600 and top 392 BTU/(h ft²), 60,000 BTU/h gross, 1,160.7 BTU for a pound of steam from
// water of 60 °F): a figure of regression, no evidence. No wall is warmed by smoke here.
test.each([
  [38, 8, 3.5, 0.35, 16.2],
  [40, 6, 5, 0.3, 13.3],
  [48, 6, 5, 0.3, 12.9],
])("%d x %d in, %d in deep, at a share of %d boils off %d lb/h", (length, width, depth, share, pounds) => {
  const tank = { length: length * inch, width: width * inch, depth: depth * inch };
  const burners = { count: 1, jetDiameter: 0.0017, pressure: 34_000 };
  const net = netHeat(
    share * 60_000 * btuPerHour,
    { area: coldWall({ tank, burners }, 0), flux: 600 * btuPerHourFoot },
    { area: tank.length * tank.width, flux: 392 * btuPerHourFoot },
  );
  const boilOff = (net / (1160.7 * btuPerPound) / pound) * 3600;
  expect(boilOff).toBeGreaterThan(pounds - 0.05);
  expect(boilOff).toBeLessThan(pounds + 0.05);
});

test("a wall within reach of a flame loses nothing: the ends are left, and what is between the flames", () => {
  const tank = { length: 1, width: 0.2, depth: 0.1 };
  const burners = { count: 2, jetDiameter: 0.0017, pressure: 34_000 };
  expect(coldWall({ tank, burners }, 0.3)).toBeCloseTo((2 * 0.4 + 0.4) * 0.1, 12);
  expect(coldWall({ tank, burners }, 0.8)).toBeCloseTo(0.4 * 0.1, 12);
});
