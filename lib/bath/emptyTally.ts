import type { BathTally } from "./simulationTypes.ts";

/** Nothing in and nothing out yet. */
export function emptyTally(): BathTally {
  return {
    fire: 0,
    walls: 0,
    top: 0,
    steam: 0,
    steamEnthalpy: 0,
    water: 0,
    waterEnthalpy: 0,
    partsEnthalpy: 0,
    parts: 0,
    saltEnthalpy: 0,
    dragOut: 0,
    dragOutWater: 0,
    dragOutEnthalpy: 0,
  };
}
