import { expect, test } from "vitest";
import { brineDensity } from "../../lib/physics/brineDensity.ts";
import { brineHeatCapacity } from "../../lib/physics/brineHeatCapacity.ts";
import { evaporationHeat } from "../../lib/physics/evaporationHeat.ts";
import { saturationPressure } from "../../lib/physics/saturationPressure.ts";
import { saturationTemperature } from "../../lib/physics/saturationTemperature.ts";
import { standardPressure } from "../../lib/physics/standardPressure.ts";
import { steamEnthalpy } from "../../lib/physics/steamEnthalpy.ts";
import { waterDensity } from "../../lib/physics/waterDensity.ts";
import { waterEnthalpy } from "../../lib/physics/waterEnthalpy.ts";

const nineDigits = (value: number): number => Number(value.toPrecision(9));
const fahrenheit = (kelvin: number): number => kelvin * 1.8 - 459.67;
const kelvin = (celsius: number): number => celsius + 273.15;

// IAPWS R7-97(2012), table 35.
test.each([
  [300, 3536.58941],
  [500, 2638897.76],
  [600, 12344314.6],
])("saturationPressure(%f K) gives the verification value of IAPWS-IF97 to 9 digits", (T, p) => {
  expect(nineDigits(saturationPressure(T))).toBe(p);
});

// IAPWS R7-97(2012), table 36.
test.each([
  [1e5, 372.755919],
  [1e6, 453.035632],
  [1e7, 584.149488],
])("saturationTemperature(%f Pa) gives the verification value of IAPWS-IF97 to 9 digits", (p, T) => {
  expect(nineDigits(saturationTemperature(p))).toBe(T);
});

// IAPWS R7-97(2012), table 15. Its third point, 30 MPa, lies outside what is offered here.
test.each([
  [300, 3500, 2549911.45],
  [700, 3500, 3335683.75],
])("steamEnthalpy(%f K, %f Pa) gives the verification value of IAPWS-IF97 to 9 digits", (T, p, h) => {
  expect(nineDigits(steamEnthalpy(T, p))).toBe(h);
});

// IAPWS SR1-86(1992), table 1, to the digits printed there.
test.each([
  [273.16, 999.789, 0.611786, 2500500],
  [373.1243, 958.365, 419050, 2675700],
])("water and steam at %f K have the density and enthalpies of IAPWS SR1-86", (T, density, liquid, steam) => {
  expect(Math.abs(waterDensity(T) - density)).toBeLessThanOrEqual(0.0005);
  expect(Number(waterEnthalpy(T).toPrecision(liquid < 1 ? 6 : 5))).toBe(liquid);
  // The steam comes from IAPWS-IF97: two formulations, 0.1 kJ/kg apart at most.
  expect(Math.abs(steamEnthalpy(T, saturationPressure(T)) - steam)).toBeLessThan(500);
});

// Density of water at 1 atm, kg/m³: CRC Handbook of Chemistry and Physics (from memory). The model gives water under
// its own steam, up to 0.05 kg/m³ lighter.
test.each([
  [4, 999.97],
  [20, 998.21],
  [25, 997.05],
  [50, 988.04],
  [80, 971.79],
  [100, 958.35],
])("brineDensity({}, %f °C) is the handbook's density of water", (t, density) => {
  expect(Math.abs(brineDensity({}, kelvin(t)) - density)).toBeLessThan(0.06);
});

// Heat capacity of water at 1 atm, J/(kg K): CRC Handbook (from memory). Differences below 0.15 %.
test.each([
  [20, 4184.1],
  [40, 4179.6],
  [60, 4185.1],
  [80, 4196.9],
  [100, 4215.7],
])("brineHeatCapacity({}, %f °C) is the handbook's heat capacity of water", (t, heat) => {
  expect(Math.abs(brineHeatCapacity({}, kelvin(t)) / heat - 1)).toBeLessThan(0.0015);
});

// Latent heat of water, kJ/kg: steam tables (from memory).
test.each([
  [60, 2357.7],
  [80, 2308.0],
  [100, 2256.4],
  [120, 2202.1],
  [140, 2144.2],
  [160, 2082.0],
])("evaporationHeat({}, pressure of %f °C) is the steam tables' latent heat", (t, heat) => {
  expect(Math.abs(evaporationHeat({}, saturationPressure(kelvin(t))) / 1000 - heat)).toBeLessThan(0.2);
});

// Boiling point of water against the barometer, inHg and °F: hypsometer table of "Weather Warnings for Watchers"
// (Victorian, read). Its own scales differ from ours by a few hundredths.
test.each([
  [31, 213.78],
  [30, 212.13],
  [29, 210.43],
  [28, 208.67],
  [27, 206.87],
  [25, 203.09],
  [24, 201.11],
  [23, 199.05],
])("water boils under %f inHg where the hypsometer table has it", (inches, boils) => {
  expect(Math.abs(fahrenheit(saturationTemperature(inches * 3386.389)) - boils)).toBeLessThan(0.1);
});

// Boiling point of water against altitude, ft and °F: cooking charts of christianchefs.org and webpal.org (read),
// which differ from each other by up to 1.1 °F (the second takes an atmosphere of one temperature).
test.each([
  [0, 212.0, 212.0],
  [1000, 210.0, 210.2],
  [2000, 208.2, 208.5],
  [3000, 206.2, 206.7],
  [4000, 204.4, 204.9],
  [5000, 202.8, 203.2],
  [7000, 198.7, 199.8],
  [8000, 197.3, 198.1],
  [10000, 194.0, 194.7],
])("water boils at %f ft between the two cooking charts", (feet, low, high) => {
  const boils = fahrenheit(saturationTemperature(standardPressure(feet * 0.3048)));
  expect(boils).toBeGreaterThan(low - 0.4);
  expect(boils).toBeLessThan(high + 0.4);
});
