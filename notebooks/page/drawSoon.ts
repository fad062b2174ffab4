/** ms after which a page that has no frames (a hidden tab) is drawn all the same. */
const longest = 100;

/**
 * Calls `draw` once for all that asks for it before the next frame. Lines that come to something one after the other,
 * hundreds in a turn, are drawn together.
 */
export function drawSoon(draw: () => void): () => void {
  let due = false;
  let frame = 0;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const now = (): void => {
    if (!due) return;
    due = false;
    cancelAnimationFrame(frame);
    clearTimeout(timer);
    draw();
  };
  return () => {
    if (due) return;
    due = true;
    frame = requestAnimationFrame(now);
    timer = setTimeout(now, longest);
  };
}
