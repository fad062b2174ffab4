export interface PageEvents {
  readonly redraw: () => void;
  /** The hand did something, whatever it was. */
  readonly hand: () => void;
  readonly readFile: (file: File) => Promise<void>;
  readonly takeText: (text: string) => void;
  readonly undo: () => void;
  readonly redo: () => void;
}

/** What the whole page listens to: files and tables dropped and pasted, undo by keys, printing. */
export function pageEvents({ redraw, hand, readFile, takeText, undo, redo }: PageEvents): void {
  window.addEventListener("resize", redraw);
  for (const kind of ["keydown", "pointerdown", "pointerup", "input", "wheel", "touchmove"])
    window.addEventListener(kind, hand, { capture: true, passive: true });
  document.addEventListener("dragover", (event) => event.preventDefault());
  document.addEventListener("drop", (event) => {
    event.preventDefault();
    const file = event.dataTransfer?.files[0];
    const text = event.dataTransfer?.getData("text/plain");
    if (file) void readFile(file);
    else if (text) takeText(text);
  });
  document.addEventListener("paste", (event) => {
    const target = event.target;
    if (target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement) {
      if (!event.clipboardData?.getData("text/plain").includes("\n")) return;
    }
    const text = event.clipboardData?.getData("text/plain");
    if (!text?.trim()) return;
    event.preventDefault();
    takeText(text);
  });
  document.addEventListener("keydown", (event) => {
    const inBlank = event.target instanceof HTMLInputElement || event.target instanceof HTMLTextAreaElement;
    if (inBlank || !(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== "z") return;
    event.preventDefault();
    if (event.shiftKey) redo();
    else undo();
  });
  // On paper everything is unfolded; afterwards the folds are as they were.
  const shut = new Set<HTMLDetailsElement>();
  window.addEventListener("beforeprint", () => {
    for (const fold of document.querySelectorAll<HTMLDetailsElement>("details:not([open])")) {
      shut.add(fold);
      fold.open = true;
    }
  });
  window.addEventListener("afterprint", () => {
    for (const fold of shut) fold.open = false;
    shut.clear();
  });
}
