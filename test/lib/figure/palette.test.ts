import { expect, test } from "vitest";
import { type ColourName, colourNames, type Palette, palettes } from "../../../lib/figure/palette.ts";

// WCAG 2.2, definitions of relative luminance and of contrast ratio (W3C Recommendation, 12 December 2024).
const luminance = (hex: string): number => {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) => {
    const channel = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return channel <= 0.04045 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
};
const contrast = (palette: Palette, one: ColourName, other: ColourName): number => {
  const [low = 0, high = 0] = [luminance(palette[one].hex), luminance(palette[other].hex)].sort((a, b) => a - b);
  return (high + 0.05) / (low + 0.05);
};

// Success criterion 1.4.3: 4.5 for text. 1.4.11: 3 for marks that carry meaning.
const texts: readonly ColourName[] = ["ink", "faint", "given", "fitted"];
const marks: readonly ColourName[] = ["fire", "caution", "danger", "focus"];

test.each(["light", "dark", "print"] as const)(
  "the %s palette keeps text at 4.5 and marks at 3 on every surface",
  (name) => {
    const palette = palettes[name];
    for (const surface of ["ground", "plate", "strip"] as const) {
      for (const text of texts)
        expect(contrast(palette, text, surface), `${text} on ${surface}`).toBeGreaterThanOrEqual(4.5);
      for (const mark of marks)
        expect(contrast(palette, mark, surface), `${mark} on ${surface}`).toBeGreaterThanOrEqual(3);
    }
    expect(contrast(palette, "water", "ground")).toBeGreaterThanOrEqual(3);
  },
);

// Ottosson, "A perceptual color space for image processing" (2020): OKLab to linear sRGB.
const hexOf = ([lightness, chroma, hue]: readonly [number, number, number]): number[] => {
  const a = chroma * Math.cos((hue * Math.PI) / 180);
  const b = chroma * Math.sin((hue * Math.PI) / 180);
  const l = (lightness + 0.3963377774 * a + 0.2158037573 * b) ** 3;
  const m = (lightness - 0.1055613458 * a - 0.0638541728 * b) ** 3;
  const s = (lightness - 0.0894841775 * a - 1.291485548 * b) ** 3;
  const linear = [
    4.0767416621 * l - 3.3077115913 * m + 0.2309699292 * s,
    -1.2684380046 * l + 2.6097574011 * m - 0.3413193965 * s,
    -0.0041960863 * l - 0.7034186147 * m + 1.707614701 * s,
  ];
  return linear.map((one) => {
    const inside = Math.min(1, Math.max(0, one));
    return 255 * (inside <= 0.0031308 ? 12.92 * inside : 1.055 * inside ** (1 / 2.4) - 0.055);
  });
};

test("each colour's hex is its OKLCH, to two steps of 255", () => {
  for (const palette of Object.values(palettes)) {
    for (const name of colourNames) {
      const { hex, oklch } = palette[name];
      hexOf(oklch).forEach((channel, index) => {
        const written = Number.parseInt(hex.slice(1 + 2 * index, 3 + 2 * index), 16);
        expect(Math.abs(channel - written), `${name} ${hex}`).toBeLessThanOrEqual(2.5);
      });
    }
  }
});
