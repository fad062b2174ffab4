/** Names of the colours that a figure may use; each is a CSS custom property of that name. */
export const colourNames = [
  "ground",
  "plate",
  "strip",
  "ink",
  "faint",
  "rule",
  "given",
  "fitted",
  "spread",
  "water",
  "fire",
  "caution",
  "danger",
  "focus",
] as const;

export type ColourName = (typeof colourNames)[number];

/** One colour: OKLCH lightness, chroma and hue, and the sRGB fall-back. */
export interface Colour {
  readonly oklch: readonly [lightness: number, chroma: number, hue: number];
  readonly hex: string;
}

export type Palette = Readonly<Record<ColourName, Colour>>;

const colour = (lightness: number, chroma: number, hue: number, hex: string): Colour => ({
  oklch: [lightness, chroma, hue],
  hex,
});

/** Bare steel and ink. */
export const light: Palette = {
  ground: colour(0.94, 0.006, 210, "#e7eced"),
  plate: colour(0.88, 0.01, 225, "#d1d9dc"),
  strip: colour(0.995, 0.002, 210, "#fcfefe"),
  ink: colour(0.215, 0.018, 255, "#141a22"),
  faint: colour(0.445, 0.018, 245, "#4c555d"),
  rule: colour(0.735, 0.014, 235, "#a1abb1"),
  given: colour(0.465, 0.088, 72, "#775017"),
  fitted: colour(0.43, 0.15, 262, "#1d49a0"),
  spread: colour(0.77, 0.07, 262, "#9cb5e2"),
  water: colour(0.595, 0.098, 195, "#149191"),
  fire: colour(0.585, 0.165, 42, "#c85118"),
  caution: colour(0.56, 0.13, 58, "#ab5e0c"),
  danger: colour(0.47, 0.18, 26, "#a9141c"),
  focus: colour(0.5, 0.21, 328, "#9d1d9e"),
};

/** Black oxide and soapstone. */
export const dark: Palette = {
  ground: colour(0.205, 0.008, 230, "#14181a"),
  plate: colour(0.15, 0.006, 230, "#090c0d"),
  strip: colour(0.32, 0.013, 225, "#2c3438"),
  ink: colour(0.935, 0.012, 100, "#ebeae1"),
  faint: colour(0.735, 0.014, 110, "#a9aaa0"),
  rule: colour(0.42, 0.012, 220, "#464f52"),
  given: colour(0.82, 0.105, 88, "#e0c071"),
  fitted: colour(0.72, 0.135, 260, "#71a4f9"),
  spread: colour(0.42, 0.09, 260, "#2f4c7e"),
  water: colour(0.755, 0.115, 186, "#42c7ba"),
  fire: colour(0.72, 0.165, 48, "#f57f3a"),
  caution: colour(0.83, 0.125, 78, "#f4bd62"),
  danger: colour(0.72, 0.16, 24, "#f97772"),
  focus: colour(0.76, 0.17, 328, "#ea86e7"),
};

/** On paper: black on white, the plate a 12 % grey. */
export const print: Palette = {
  ...light,
  ground: colour(1, 0, 0, "#ffffff"),
  plate: colour(0.907, 0, 0, "#e0e0e0"),
  strip: colour(1, 0, 0, "#ffffff"),
  ink: colour(0, 0, 0, "#000000"),
  faint: colour(0.32, 0, 0, "#333333"),
};

/** Every colour by the palette's name. */
export const palettes: Readonly<Record<"light" | "dark" | "print", Palette>> = { light, dark, print };
