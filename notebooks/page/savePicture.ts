/** The two faces of the page, as data URLs for a picture that stands alone. */
export interface PictureFonts {
  readonly besley?: string;
  readonly nationalPark?: string;
}

/**
 * Font files as data URLs: what the build folded in already stays as it is, a file beside the page is fetched. A font
 * that cannot be had is left out, and the picture falls back on its reader's.
 */
export async function pictureFonts(urls: PictureFonts): Promise<PictureFonts> {
  const had = await Promise.all(
    Object.entries(urls).map(async ([name, url]) => {
      try {
        return [name, await dataUrl(String(url))] as const;
      } catch {
        return undefined;
      }
    }),
  );
  return Object.fromEntries(had.filter((one) => one !== undefined));
}

async function dataUrl(url: string): Promise<string> {
  if (url.startsWith("data:")) return url;
  const answer = await fetch(url);
  if (!answer.ok) throw new Error(`missing font: ${url}; ${answer.status}`);
  const bytes = new Uint8Array(await answer.arrayBuffer());
  let text = "";
  for (const byte of bytes) text += String.fromCharCode(byte);
  return `data:font/woff2;base64,${btoa(text)}`;
}

/** "Small tank, 9 November" and "The hold, replayed" as "small-tank-9-november-the-hold-replayed.png". */
export function pictureName(run: string, figure: string, ending: "png" | "svg"): string {
  const plain = (text: string): string =>
    text
      .normalize("NFKD")
      .replace(/\p{M}/gu, "")
      .toLowerCase()
      .replace(/[^\p{L}\p{N}]+/gu, "-")
      .replace(/^-+|-+$/g, "");
  const parts = [plain(run), plain(figure)].filter((part) => part !== "");
  return `${[...parts.join("-")].slice(0, 100).join("") || "figure"}.${ending}`;
}

/** The text of a stand-alone SVG as an SVG file. */
export const svgBlob = (text: string): Blob => new Blob([text], { type: "image/svg+xml;charset=utf-8" });

/**
 * The text of a stand-alone SVG as a PNG, `scale` px for each of its own. Works under the page's policy and from a
 * file: address, for nothing is fetched and nothing waits for an animation frame.
 */
export async function pngBlob(text: string, scale = 2): Promise<Blob> {
  const url = URL.createObjectURL(svgBlob(text));
  try {
    const image = new Image();
    image.src = url;
    await image.decode();
    const canvas = document.createElement("canvas");
    canvas.width = Math.round(image.naturalWidth * scale);
    canvas.height = Math.round(image.naturalHeight * scale);
    const surface = canvas.getContext("2d");
    if (!surface) throw new Error("This browser gave no room to draw the picture. Save it as SVG in its place.");
    surface.drawImage(image, 0, 0, canvas.width, canvas.height);
    return await new Promise((resolve, reject) => {
      canvas.toBlob((blob) => {
        if (blob) resolve(blob);
        else reject(new Error("This browser could not make a PNG. Save it as SVG in its place."));
      }, "image/png");
    });
  } finally {
    URL.revokeObjectURL(url);
  }
}

/** Hands a file to the browser to be kept under a name. */
export function download(blob: Blob, name: string): void {
  const url = URL.createObjectURL(blob);
  const link = document.createElement("a");
  link.href = url;
  link.download = name;
  link.hidden = true;
  document.body.append(link);
  link.click();
  link.remove();
  // The browser reads the file after the click is over; a minute is ample.
  setTimeout(() => URL.revokeObjectURL(url), 60_000);
}

/** Saves a stand-alone SVG text (`standAlone` of lib/figure) as a picture of the kind asked for. */
export async function savePicture(text: string, run: string, figure: string, ending: "png" | "svg"): Promise<string> {
  const name = pictureName(run, figure, ending);
  download(ending === "svg" ? svgBlob(text) : await pngBlob(text), name);
  return name;
}
