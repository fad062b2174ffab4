import { html, nothing, type TemplateResult } from "lit-html";
import type { Notebook } from "../../../lib/lines/index.ts";
import type { KeptNotebook } from "../../../lib/record/index.ts";
import { routeOf } from "../route.ts";
import type { Asking } from "./asking.ts";
import { choose, form } from "./form.ts";

export interface QuestionListProps {
  /** Name of the place, for the address. */
  readonly place: string;
  readonly own: readonly KeptNotebook[];
  readonly openId: string | undefined;
  /** Notebooks that come with the tool. */
  readonly ours: readonly Notebook[];
  readonly asking: Asking;
  /** Starts another: from nothing, or from a copy. */
  readonly start: (asks: string, copyOf: Notebook | undefined) => void;
  readonly throwAway: ((kept: KeptNotebook) => void) | undefined;
}

const called = ({ name, asks }: Notebook): string => (name ? `${name}: ${asks}` : asks);

function startForm({ own, ours, asking, start }: QuestionListProps): TemplateResult {
  const copies = [...ours, ...own.map(({ notebook }) => notebook)];
  return form({
    id: "another",
    title: "Ask another question",
    blanks: html`<label class="wide"><span>question</span><input class="blank" name="asks" autocomplete="off" /></label>
      ${choose("from", "starts from", [{ value: "", says: "nothing" }, ...copies.map((book, i) => ({ value: String(i), says: `a copy of ${called(book)}` }))])}`,
    does: "ask it",
    wrong: asking.wrong,
    take: (written) =>
      asking.attempt(() => {
        const copyOf = written("from") === "" ? undefined : copies[Number(written("from"))];
        const asks = written("asks") || (copyOf?.asks ?? "");
        if (asks === "") throw new Error("the question is empty; write a few words");
        start(asks, copyOf);
      }),
    close: () => asking.ask(undefined),
  });
}

/** The maker's own questions at the head of the page, and how to ask another. */
export function questionList(props: QuestionListProps): TemplateResult {
  const { place, own, openId, asking, throwAway } = props;
  const open = own.find(({ id }) => id === openId);
  return html`<nav class="own-questions" aria-label="My questions"><ul>
      ${(own.length > 1 ? own : []).map(
        ({ id, name, invented }) =>
          html`<li><a href=${`${routeOf(place)}/${encodeURIComponent(id)}`} aria-current=${id === openId ? "page" : nothing}>${name}</a>${invented ? html` <span class="boxed">Invented data</span>` : nothing}</li>`,
      )}
      <li><button class="word" type="button" @click=${() => asking.ask("another")}>ask another question</button></li>
      ${open && throwAway ? html`<li><button class="word faint" type="button" @click=${() => throwAway(open)}>throw this one away</button></li>` : nothing}
    </ul></nav>
    ${asking.form === "another" ? startForm(props) : nothing}`;
}
