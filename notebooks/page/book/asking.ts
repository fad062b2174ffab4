import { wordsOf } from "./form.ts";

/** Which form is open on a page, and what it said last; one at a time. Nothing of it is worth keeping. */
export interface Asking {
  readonly form: string | undefined;
  /** Why what was written could not be taken. */
  readonly wrong: string | undefined;
  /** Opens a form, or puts it away. */
  readonly ask: (form: string | undefined) => void;
  /** Runs an edit and puts the form away; where it throws, the form stays and says why. */
  readonly attempt: (edit: () => void) => void;
  /** The same where no form is open: what is wrong is said at the head of the page. */
  readonly attemptHere: (edit: () => void) => void;
  /** What was said at the head of the page. */
  readonly said: readonly string[];
  readonly says: (words: string) => void;
  /** What was picked in a form and changes its other blanks. */
  readonly picked: (name: string) => string | undefined;
  readonly pick: (name: string, value: string) => void;
  /** Another notebook is open: nothing of this holds. */
  readonly forget: () => void;
}

/** A page's forms, with none open. */
export function newAsking(redraw: () => void): Asking {
  let form: string | undefined;
  let wrong: string | undefined;
  let said: readonly string[] = [];
  const picks = new Map<string, string>();

  function ask(next: string | undefined): void {
    [form, wrong] = [next, undefined];
    picks.clear();
    redraw();
    if (next === undefined) return;
    setTimeout(() => {
      const first = document.querySelector<HTMLElement>("form.asked :is(input, select, textarea)");
      first?.closest("form")?.scrollIntoView({ block: "nearest" });
      first?.focus({ preventScroll: true });
    });
  }

  return {
    get form() {
      return form;
    },
    get wrong() {
      return wrong;
    },
    get said() {
      return said;
    },
    ask,
    attempt(edit) {
      try {
        edit();
        [form, wrong] = [undefined, undefined];
        picks.clear();
      } catch (error) {
        wrong = wordsOf(error);
      }
      redraw();
    },
    attemptHere(edit) {
      said = [];
      try {
        edit();
      } catch (error) {
        said = [wordsOf(error)];
      }
      redraw();
    },
    says(words) {
      said = words === "" ? [] : [words];
      redraw();
    },
    picked: (name) => picks.get(name),
    pick(name, value) {
      picks.set(name, value);
      redraw();
    },
    forget() {
      [form, wrong, said] = [undefined, undefined, []];
      picks.clear();
    },
  };
}
