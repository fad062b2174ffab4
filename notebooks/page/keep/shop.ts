import {
  type Difference,
  differences,
  hasDemo,
  merge,
  newRecord,
  readRecord,
  recordLimits,
  type ShopRecord,
  sayRecordProblem,
  stampChanges,
  takeBack,
  thisMoment,
  withDemo,
  withoutDemo,
  writeRecord,
} from "../../../lib/record/index.ts";
import { earlierOnes, putAside } from "./earlier.ts";
import { asStored, compactText, recordIn, type Stored, Unreadable } from "./stored.ts";
import { type How, takeCopy } from "./takeCopy.ts";
import type { News, NotKept, Shop, ShopOptions, Taken } from "./types.ts";
import { UndoList } from "./UndoList.ts";
import { copyName, localDay, saveACopy, sayReplaced, whyNotKept } from "./words.ts";

const key = "shop";

/** Opens what is kept, or the demo, and keeps every change from then on. Never fails: see `problem`. */
export async function openShopIn(options: ShopOptions): Promise<Shop> {
  const { storage, demo, moment = thisMoment, patience = 4000 } = options;
  const empty = newRecord(moment());
  const fresh = demo === undefined ? empty : withDemo(empty, demo, empty.saved);
  const listeners = new Set<(news: News) => void>();
  const steps = new UndoList();
  let record = fresh;
  /** What this tab last saw in the storage: the common ground of this tab and the others. */
  let base = { stamp: "", record: fresh };
  let keptAt: string | undefined;
  let problem: NotKept | undefined;
  let unreadable: string | undefined;
  let dirty = false;
  let work: Promise<void> = Promise.resolve();

  const tell = (cause: News["cause"], says: readonly string[] = []): void => {
    for (const told of [...listeners]) told({ record, cause, says });
  };

  function failed(error: unknown): void {
    if (error instanceof Unreadable) unreadable = error.text;
    problem = { because: whyNotKept(error), remedy: saveACopy };
    tell("not kept");
  }

  /** The facts and other parts that were last written in this tab: of these the maker hears when another replaces them. */
  const ours = new Set<string>();
  const partOf = ({ list, id, what }: Difference): string => JSON.stringify([list, id, what]);

  /** Takes up what the storage has and this tab had not; which run is open stays this tab's own. */
  function adopt(theirs: ShopRecord, common: ShopRecord): string[] {
    const before = record;
    const merged = merge(record, theirs, common).record;
    const openRun = record.settings.openRun ?? merged.settings.openRun;
    const settings = openRun === undefined ? merged.settings : { ...merged.settings, openRun };
    record = { ...merged, id: theirs.id, settings };
    const replaced = differences(before, record).filter((one) => ours.has(partOf(one)));
    for (const one of replaced) ours.delete(partOf(one));
    return replaced.map(sayReplaced);
  }

  async function read(): Promise<void> {
    const stored = asStored(await storage.get(key));
    if (stored === undefined || stored.stamp === base.stamp) return;
    const theirs = recordIn(stored);
    if (theirs.upgradedFrom !== undefined) {
      await putAside(storage, stored.text, `before the upgrade from schema ${theirs.upgradedFrom}`, moment().now);
    }
    // Before any change here there is nothing to put together: what is kept stands as it is, without our demo.
    const untouched = record === fresh;
    const says = untouched ? [] : adopt(theirs.record, base.record);
    if (untouched) record = theirs.record;
    base = { stamp: stored.stamp, record: theirs.record };
    keptAt = stored.at;
    tell("another tab", says);
  }

  async function write(): Promise<void> {
    if (!dirty || unreadable !== undefined) return;
    dirty = false;
    const mine = record;
    const { now, newId } = moment();
    const stamp = newId();
    let written = mine;
    let previous: Stored | undefined;
    try {
      await storage.update(key, (old) => {
        previous = asStored(old);
        written = { ...mine, saved: now };
        if (previous !== undefined && previous.stamp !== base.stamp) {
          const theirs = recordIn(previous).record;
          written = { ...merge(mine, theirs, base.record).record, id: theirs.id, saved: now };
        }
        return { stamp, at: now, text: compactText(written) } satisfies Stored;
      });
    } catch (error) {
      dirty = true;
      failed(error);
      return;
    }
    const foreign = previous !== undefined && previous.stamp !== base.stamp;
    // Changes made here while the storage was writing are put together with what it now holds.
    const says = adopt(written, mine);
    base = { stamp, record: written };
    keptAt = now;
    problem = undefined;
    storage.tell();
    tell(foreign ? "another tab" : "kept", says);
    if (previous !== undefined && localDay(previous.at) !== localDay(now)) {
      // A way back to how the last day ended; missing it is no reason to alarm anybody.
      await putAside(storage, previous.text, `as it was before ${localDay(now)}`, previous.at || now).catch(() => {});
    }
  }

  /** One thing at a time with the storage. What fails is told, never thrown. */
  const queue = (job: () => Promise<void>): Promise<void> => {
    work = work.then(job).catch((error: unknown) => {
      // Not hearing another tab this once is no loss while all that was written here is kept.
      if (dirty || error instanceof Unreadable) failed(error);
    });
    return work;
  };

  function set(next: ShopRecord, cause: News["cause"], says: readonly string[] = []): void {
    for (const one of differences(record, next)) ours.add(partOf(one));
    record = next;
    dirty = true;
    void queue(write);
    tell(cause, says);
  }

  const change: Shop["change"] = (edit, name, again = name ?? "") => {
    const at = moment();
    const before = record;
    const after = stampChanges(before, edit(before, at), at.now);
    if (after === before) return before;
    if (name !== undefined) steps.did({ name, again, before, after });
    set(after, "change");
    return after;
  };

  async function take(text: string, how: How, name: string, why: string): Promise<Taken> {
    const reading = readRecord(text);
    if ("problem" in reading) return { problem: sayRecordProblem(reading.problem) };
    const { now } = moment();
    let aside: string[] = [];
    try {
      await putAside(storage, writeRecord(record), why, now);
    } catch {
      aside = ["What was here could not be put aside; undo brings it back while this page stays open."];
    }
    const before = record;
    const taken = takeCopy(before, reading.record, how, now);
    steps.did({ name, again: name, before, after: taken.record });
    const says = [...taken.says, ...aside];
    set(taken.record, "change", says);
    return { says };
  }

  let waitedTooLong = false;
  async function opening(): Promise<void> {
    try {
      await read();
      if (waitedTooLong && unreadable === undefined) {
        problem = undefined;
        tell("kept");
      }
    } catch (error) {
      failed(error);
    }
  }
  let waiting: ReturnType<typeof setTimeout> | undefined;
  const tooLong = new Promise<void>((resolve) => {
    waiting = setTimeout(() => {
      waitedTooLong = true;
      failed(new Error("it does not answer"));
      resolve();
    }, patience);
  });
  await Promise.race([queue(opening).then(() => clearTimeout(waiting)), tooLong]);
  const deaf = storage.listen(() => void queue(async () => read().then(write)));

  return {
    get record() {
      return record;
    },
    get keptAt() {
      return keptAt;
    },
    get problem() {
      return problem;
    },
    get undoName() {
      return steps.toUndo?.name;
    },
    get redoName() {
      return steps.toRedo?.again;
    },
    get hasDemo() {
      return hasDemo(record);
    },
    get unreadable() {
      return unreadable;
    },
    subscribe(told) {
      listeners.add(told);
      return () => listeners.delete(told);
    },
    change,
    undo() {
      const step = steps.toUndo;
      if (step === undefined) return;
      steps.undid(step);
      set(takeBack(record, step.before, step.after, moment().now), "undo");
    },
    redo() {
      const step = steps.toRedo;
      if (step === undefined) return;
      steps.redid(step);
      set(takeBack(record, step.after, step.before, moment().now), "redo");
    },
    removeDemo: () => void change((now, at) => withoutDemo(now, at.now), "the invented demo was shown"),
    bringBackDemo: () =>
      void change((now, at) => withDemo(now, demo ?? newRecord(at), at.now), "the invented demo was not shown"),
    settled: () => work,
    copy() {
      const { now } = moment();
      return { name: copyName(now), text: writeRecord({ ...record, saved: now }) };
    },
    async openCopy(file, how = "add") {
      if (file.size > 4 * recordLimits.characters) return { problem: "This file is too large to be a shop record." };
      const name = file instanceof File ? `the copy ${file.name} was not open` : "the copy was not open";
      return take(await file.text(), how, name, "before a copy was opened");
    },
    earlier: () => earlierOnes(storage),
    async bringBack(earlierKey) {
      const text = await storage.get(earlierKey).catch(() => undefined);
      if (typeof text !== "string") return { problem: "That earlier record is no longer kept in this browser." };
      return take(text, "replace", "the earlier record was not back", "before an earlier record was brought back");
    },
    async startAfresh() {
      const text = unreadable;
      if (text === undefined) return;
      await queue(async () => {
        await putAside(storage, text, "could not be read", moment().now);
        await storage.remove([key]);
        unreadable = undefined;
        problem = undefined;
        dirty = true;
        await write();
      });
    },
    close: deaf,
  };
}
