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

const nextTurn = (): Promise<void> => new Promise((go) => setTimeout(go, 0));

/**
 * Cuts long work into slices. It waits for no animation frame: a hidden tab has none.
 * @param rest What gives the thread back; a timer that is due at once if left out. Where it throws, the work ends.
 * @returns What says when to pause.
 * @example pauses().due() // false
 */
export function pauses(rest: () => Promise<void> = nextTurn): Pauses {
  let since = performance.now();
  let before = 0;
  const slice = () => performance.now() - since;
  return {
    due: () => slice() > SLICE,
    async pause() {
      before += slice();
      await rest();
      since = performance.now();
    },
    worked: () => (before + slice()) / 1000,
  };
}
