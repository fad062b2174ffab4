import besley from "@fontsource-variable/besley/files/besley-latin-wght-normal.woff2?url";
import nationalPark from "@fontsource-variable/national-park/files/national-park-latin-wght-normal.woff2?url";
import { standAlone } from "../../lib/figure/index.ts";
import type { KeptRun } from "../../lib/record/index.ts";
import { pictureFonts, savePicture } from "./savePicture.ts";

export interface Picture {
  readonly drawing: SVGSVGElement;
  readonly run: KeptRun;
  /** Name of the figure, for the file. */
  readonly figure: string;
  /** The answer, as the picture's title. */
  readonly title: string;
}

/** What must not be lost when a picture travels alone: which run, how many readings, how many struck out. */
function footOf({ name, log, invented }: KeptRun): readonly string[] {
  const readings = log.entries.filter(({ kind }) => kind === "reading");
  const struck = readings.filter((entry) => entry.struck).length;
  const pours = log.entries.filter(({ kind, struck: out }) => kind === "addition" && !out).length;
  const counts = [`${readings.length} readings`, `${pours} pours`, ...(struck > 0 ? [`${struck} struck out`] : [])];
  return [`${name}: ${counts.join(", ")}.${invented ? " Invented data." : ""}`];
}

/** Saves a drawing as a picture that stands alone. */
export async function saveDrawing({ drawing, run, figure, title }: Picture, ending: "png" | "svg"): Promise<void> {
  const fonts = await pictureFonts({ besley, nationalPark });
  const text = standAlone(drawing, { title, foot: footOf(run), invented: run.invented === true, fonts, width: 1200 });
  await savePicture(text, run.name, figure, ending);
}
