export { holdReplayed } from "./holdReplayed.ts";
export { holdReplayedFinding } from "./holdReplayedFinding.ts";
export { type Colour, type ColourName, colourNames, dark, light, type Palette, palettes, print } from "./palette.ts";
export type * from "./types.ts";
