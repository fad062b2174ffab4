let read: number | undefined;
let watched = false;

/** The width is asked for at each drawing, and asking lays the whole page out: it is read once until it changes. */
function watch(): void {
  watched = true;
  const forget = () => {
    read = undefined;
  };
  // Before those who draw again because of it.
  window.addEventListener("resize", forget, { capture: true });
  // A scroll bar that comes or goes changes it too.
  new ResizeObserver(forget).observe(document.documentElement);
}

/** Width of the page in px, held to what a figure can be drawn at: a window may be a sliver while it is opened or resized. */
export function pageWidth(): number {
  if (!watched) watch();
  read ??= document.documentElement.clientWidth;
  return Math.min(4000, Math.max(280, read));
}

/** px at either side of the page, as its style has them. */
const marginAt = (page: number): number => (page <= 640 ? 16 : page <= 1000 ? 48 : 96);

/** Width of what stays within the sheet's margins, px. */
export const sheetWidth = (): number => pageWidth() - 2 * marginAt(pageWidth());
