/** ms after which a page that has no frames (a hidden tab) is drawn all the same. */
const longest = 100;

/**
 * Calls `draw` at the end of the turn that first asks for it, and then once a frame at most: what a key changed is there
 * when the next key comes, and a held key that changes lines in many turns does not draw each of them.
 */
export function drawPaced(draw: () => void): () => void {
  let due = false;
  let resting = false;
  const now = (): void => {
    due = false;
    resting = true;
    onceSoon(() => {
      resting = false;
      if (due) now();
    });
    draw();
  };
  return () => {
    if (due) return;
    due = true;
    if (!resting) queueMicrotask(now);
  };
}

/** Calls back at the next frame, or after a while where there are none. */
function onceSoon(then: () => void): void {
  const once = (): void => {
    cancelAnimationFrame(frame);
    clearTimeout(timer);
    then();
  };
  const frame = requestAnimationFrame(once);
  const timer = setTimeout(once, longest);
}
