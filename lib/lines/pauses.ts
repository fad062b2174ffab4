/** Work in slices, so that the page stays quick: pauses when one is due. */
export interface Pauses {
  /** Whether the slice is over. */
  due(): boolean;
  /** Gives the thread back, for whatever waits. */
  pause(): Promise<void>;
  /** How long was worked, s, pauses left out. */
  worked(): number;
}

/** A slice, ms: half of what a screen takes for a picture at 60 Hz. */
const SLICE = 8;

/**
 * Cuts long work into slices. It waits for no animation frame: a hidden tab has none.
 * @returns What says when to pause.
 * @example pauses().due() // false
 */
export function pauses(): Pauses {
  let since = performance.now();
  let before = 0;
  const slice = () => performance.now() - since;
  return {
    due: () => slice() > SLICE,
    async pause() {
      before += slice();
      await new Promise<void>((go) => setTimeout(go, 0));
      since = performance.now();
    },
    worked: () => (before + slice()) / 1000,
  };
}
