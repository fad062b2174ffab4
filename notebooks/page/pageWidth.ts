/** Width of the page in px, held to what a figure can be drawn at: a window may be a sliver while it is opened or resized. */
export function pageWidth(): number {
  return Math.min(4000, Math.max(280, document.documentElement.clientWidth));
}
