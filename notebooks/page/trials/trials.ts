import type { Line, Lines, Result, Trial } from "../../../lib/lines/index.ts";
import { valueIn } from "../shownIn.ts";
import { knownTrial, triedTrial } from "./known.ts";

/** ms without a key, a touch or an edit after which the hand is said to pause. */
const pause = 1000;
/** ms between looks while lines are at work. */
const look = 200;

/** ms after which a page that never says it is idle (one without frames may not) is taken to be so, for so long. */
const longest = 250;
const burst = 50;

/** The page's time; a test has its own. */
export interface Moments {
  readonly now: () => number;
  readonly after: (ms: number, call: () => void) => void;
  /** Calls once the page has nothing better to do, and tells until when that may last. */
  readonly idle: (call: (until: number) => void) => void;
}

const ofThePage: Moments = {
  now: () => performance.now(),
  after: (ms, call) => void setTimeout(call, ms),
  idle(call) {
    // Not every browser tells when it is idle.
    if (typeof requestIdleCallback !== "function") setTimeout(() => call(performance.now()), 20);
    else
      requestIdleCallback((idle) => call(performance.now() + (idle.didTimeout ? burst : idle.timeRemaining())), {
        timeout: longest,
      });
  },
};

/** A place on the page that shows an amount. */
export interface Seen {
  readonly open: Lines;
  readonly line: string;
  /** The base if left out. */
  readonly inCase?: string | undefined;
}

/** Tries what is shown once the hand pauses, so that a ± that will not do is told beside its number. */
export interface Trials {
  /** The trial to be shown in place of an amount, if one says that its ± will not do; takes note that it is seen. */
  readonly of: (seen: Seen, line: Line, result: Result) => Trial | undefined;
  /** Draws: what is seen is what this asked for. */
  readonly drawn: (draw: () => void) => void;
  /** A key, a touch: the work is held up until the hand pauses. */
  readonly hand: () => void;
}

interface Place extends Seen {
  readonly inCase: string;
  readonly result: Result;
}

/** Whether a trial may have something to say: a ± is shown, and the line is no given. */
const mayBend = (line: Line): boolean => line.kind !== "given" && line.plain !== true;

/**
 * @param typing Whether something typed is not taken yet.
 * @param told Called when a number is to be shown otherwise.
 */
export function trials(typing: () => boolean, told: () => void, moments: Moments = ofThePage): Trials {
  let seen: Place[] = [];
  let opens: ReadonlySet<Lines> = new Set();
  let last = moments.now();
  let atWork = false;
  let idleUntil = Number.NEGATIVE_INFINITY;

  const isNow = ({ open, line, inCase, result }: Place): boolean => {
    try {
      return valueIn(open.result(line, inCase)) === valueIn(result);
    } catch {
      return false;
    }
  };
  const isWorking = (): boolean =>
    [...opens].some((open) => open.atWork().length > 0) || seen.some(({ result }) => result.state === "working");
  const isQuiet = (): boolean => moments.now() - last >= pause && !typing() && !isWorking();
  const isUntried = (place: Place): boolean =>
    valueIn(place.result) !== undefined && isNow(place) && !knownTrial(place.open, place.line, place.inCase);

  /** Comes back once the hand has paused and the page is idle. */
  async function quiet(): Promise<void> {
    do {
      while (!isQuiet()) {
        const left = last + pause - moments.now();
        await new Promise<void>((go) => moments.after(left > 0 ? left : look, go));
      }
      // While the page stays idle a turn of the thread will do, for a key or a touch to come in between.
      if (moments.now() < idleUntil) await new Promise<void>((go) => moments.after(0, go));
      else idleUntil = await new Promise<number>((go) => moments.idle(go));
    } while (!isQuiet());
  }

  async function work(): Promise<void> {
    atWork = true;
    try {
      await quiet();
      for (let place = seen.find(isUntried); place; place = seen.find(isUntried)) {
        await tryOut(place);
        await quiet();
      }
    } finally {
      atWork = false;
    }
  }

  async function tryOut(place: Place): Promise<void> {
    const { open, line, inCase } = place;
    const still = () =>
      isNow(place) && seen.some((one) => one.open === open && one.line === line && one.inCase === inCase);
    const rest = async () => {
      await quiet();
      if (!still()) throw gone;
    };
    try {
      if (await triedTrial(open, line, inCase, rest)) told();
    } catch (why) {
      if (why !== gone) throw why;
    }
  }

  return {
    of({ open, line: name, inCase }, line, result) {
      if (!mayBend(line)) return undefined;
      const one = inCase ?? open.cases().find(({ base }) => base)?.name ?? "";
      seen.push({ open, line: name, inCase: one, result });
      return valueIn(result) && knownTrial(open, name, one)?.trial;
    },
    drawn(draw) {
      seen = [];
      draw();
      opens = new Set(seen.map(({ open }) => open));
      if (!atWork && seen.some(isUntried)) void work();
    },
    hand() {
      last = moments.now();
    },
  };
}

/** Why a trial ended: its amount is no longer there. */
const gone = new Error("no longer shown");
