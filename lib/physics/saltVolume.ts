import type { Salt } from "./types.ts";

/** c0 to c4 and the highest temperature, °C, that the source's data reach. */
const coefficients: Readonly<
  Record<Exclude<Salt, "sodiumHydroxide">, readonly [number, number, number, number, number, number]>
> = {
  sodiumNitrate: [22.3499264791804, 66.4478689005725, 0.989888301509443, 0.00947165097909636, 1971.5514625204, 200],
  sodiumNitrite: [-1.37953326632496, 986.377568711927, 1.39162575447536, 0.00219037364131067, 1191.73071571581, 20],
  potassiumNitrate: [1.49068709973892, 6.67292354651383, 1.47150749460911, 0.0155872679453073, 2539.22687484937, 200],
};

/**
 * Volume, m³, that one kg of a dissolved salt takes up, from the mass fraction of all salts and t, °C. Data end at
 * 100 °C and 49 wt% for sodium nitrate, 95 °C and 28 wt% for potassium nitrate, 20 °C and 20 wt% for sodium nitrite
 * (held at its value of 20 °C: carried further it would leave all sense); beyond that it is carried on.
 * Source: Laliberte, J. Chem. Eng. Data 54 (2009) 1725.
 */
export function saltVolume(salt: Exclude<Salt, "sodiumHydroxide">, solute: number, celsius: number): number {
  const [c0, c1, c2, c3, c4, hottest] = coefficients[salt];
  const t = Math.min(celsius, hottest);
  return (solute + c2 + c3 * t) / ((c0 * solute + c1) * Math.exp(1e-6 * (t + c4) ** 2));
}
