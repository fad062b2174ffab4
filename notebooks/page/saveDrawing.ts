import besley from "@fontsource-variable/besley/files/besley-latin-wght-normal.woff2?url";
import nationalPark from "@fontsource-variable/national-park/files/national-park-latin-wght-normal.woff2?url";
import { standAlone } from "../../lib/figure/index.ts";
import type { KeptRun } from "../../lib/record/index.ts";
import { pictureFonts, savePicture } from "./savePicture.ts";

/** What a picture is of: its name, what must not be lost when it travels alone, whether it is invented. */
export interface PictureOf {
  readonly name: string;
  readonly foot: readonly string[];
  readonly invented: boolean;
}

export interface Picture {
  readonly drawing: SVGSVGElement;
  readonly of: PictureOf;
  /** Name of the figure, for the file. */
  readonly figure: string;
  /** The answer, as the picture's title. */
  readonly title: string;
}

/** A run as what a picture is of: which one, how many readings, how many struck out. */
export function runPictured({ name, log, invented }: KeptRun): PictureOf {
  const readings = log.entries.filter(({ kind }) => kind === "reading");
  const struck = readings.filter((entry) => entry.struck).length;
  const pours = log.entries.filter(({ kind, struck: out }) => kind === "addition" && !out).length;
  const counts = [`${readings.length} readings`, `${pours} pours`, ...(struck > 0 ? [`${struck} struck out`] : [])];
  const foot = [`${name}: ${counts.join(", ")}.${invented ? " Invented data." : ""}`];
  return { name, foot, invented: invented === true };
}

/** Saves a drawing as a picture that stands alone. */
export async function saveDrawing({ drawing, of, figure, title }: Picture, ending: "png" | "svg"): Promise<void> {
  const fonts = await pictureFonts({ besley, nationalPark });
  const text = standAlone(drawing, { title, foot: of.foot, invented: of.invented, fonts, width: 1200 });
  await savePicture(text, of.name, figure, ending);
}
