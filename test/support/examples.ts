/** One example out of a doc comment: the code, cut at each line that ends in "// what it gives". */
export type Example = { name: string; file: string; line: number; steps: Step[] };
type Step = { code: string; gives?: string };

/** Cuts the example of a comment into steps; an expectation ends a step. */
function stepsOf(lines: readonly string[]): Step[] {
  const steps: Step[] = [];
  let code: string[] = [];
  for (const line of lines) {
    const [, before, gives] = /^(.*?)\s*\/\/\s*((?:[^"'`]|"[^"]*"|'[^']*'|`[^`]*`)*)$/.exec(line) ?? [];
    if (line.trim() === "") continue;
    if (before === undefined || gives === undefined) code.push(line);
    else if (before.trim() === "" && code.every((one) => one.trim() === "")) code = [];
    else {
      steps.push({ code: [...code, before].join("\n"), gives: gives.trim() });
      code = [];
    }
  }
  if (code.some((line) => line.trim() !== "")) steps.push({ code: code.join("\n") });
  return steps;
}

/** Every example in the doc comments of a source, with the name of what it explains. */
export function examplesOf(file: string, source: string): Example[] {
  return [
    ...source.matchAll(/\/\*\*([\s\S]*?)\*\/\s*export\s+(?:async\s+)?(?:function\*?|const|class)\s+(\w+)/g),
  ].flatMap((found) => {
    const [, comment = "", name = ""] = found;
    const lines = comment.split("\n").map((one) => one.replace(/^\s*\* ?/, ""));
    const start = lines.findIndex((one) => one.trim().startsWith("@example"));
    if (start < 0) return [];
    const after = lines.slice(start + 1).findIndex((one) => /^\s*@\w/.test(one));
    const body = lines.slice(start, after < 0 ? undefined : start + 1 + after);
    const code = body
      .map((one) =>
        one
          .replace(/^\s*@example\s?/, "")
          .replace(/^```\w*\s*$/, "")
          .replace(/\bnew (\w+)<[^<>]*>/g, "new $1"),
      )
      .filter((one) => !/^\s*import\s/.test(one));
    const line = source.slice(0, found.index).split("\n").length + start;
    return [{ name, file, line, steps: stepsOf(code) }];
  });
}

const parses = (code: string): boolean => {
  try {
    new Function(`return async () => {${code}\n}`);
    return true;
  } catch {
    return false;
  }
};

/** Code that runs the steps and records what each expectation stands beside. */
export function programOf(steps: readonly Step[]): string {
  return steps
    .map(({ code, gives }, index) => {
      if (gives === undefined) return code;
      const lines = code.trimEnd().replace(/;$/, "").split("\n");
      for (let at = lines.length - 1; at >= 0; at -= 1) {
        const before = lines.slice(0, at).join("\n");
        const value = lines.slice(at).join("\n");
        if (parses(before) && parses(`(${value}\n)`))
          return `${before};\nawait theExample(${index}, async () => (${value}\n));`;
      }
      const named = [...code.matchAll(/^\s*(?:const|let)\s+(\w+)\s*=/gm)].at(-1)?.[1];
      return named ? `${code};\nawait theExample(${index}, () => ${named});` : code;
    })
    .join("\n");
}

/** A number as the comment writes it: rounded to the digits it shows. */
class Near {
  readonly value: number;
  readonly half: number;
  constructor(text: string) {
    const bare = text.replace(/\.\.\.|…/, "");
    this.value = Number(bare);
    const [digits = "", power = "0"] = bare.toLowerCase().split("e");
    const shown = 10 ** (Number(power) - (digits.split(".")[1]?.length ?? 0));
    // "0.2361..." is cut off, not rounded.
    this.half = Math.max((bare === text ? 0.5001 : 1) * shown, 1e-12 * Math.abs(this.value));
  }
}

const numbers =
  /"(?:[^"\\]|\\.)*"|'(?:[^'\\]|\\.)*'|`[^`]*`|[\w$]*[A-Za-z_$][\w$]*|\d+(?:\.\d+)?(?:e[+-]?\d+)?(?:\.\.\.|…)?|−(?=\d)/gi;

/** What the comment leaves out with "…". */
const anything = Symbol("anything");

/** A comment shows a blank where the text has one that does not break. */
const plainBlanks = (text: string): string => text.replace(/\p{Zs}/gu, " ");

function difference(result: unknown, wanted: unknown, place: string): string | undefined {
  const given: unknown = result instanceof Float64Array ? [...result] : result;
  if (wanted === anything) return given === undefined ? `${place} is missing` : undefined;
  if (typeof wanted === "string" && typeof given === "string" && plainBlanks(given) === plainBlanks(wanted))
    return undefined;
  if (typeof wanted === "string" && typeof given === "string" && wanted.endsWith("…") && !given.endsWith("…"))
    return given.startsWith(wanted.slice(0, -1)) ? undefined : `${place} is ${JSON.stringify(given)}`;
  if (wanted instanceof Near) {
    const near = typeof given === "number" && Math.abs(given - wanted.value) <= wanted.half;
    return near ? undefined : `${place} is ${String(given)}, not ${wanted.value}`;
  }
  if (typeof wanted !== "object" || wanted === null)
    return Object.is(given, wanted) ? undefined : `${place} is ${JSON.stringify(given)}, not ${JSON.stringify(wanted)}`;
  if (typeof given !== "object" || given === null) return `${place} is ${String(given)}`;
  const cut = Array.isArray(wanted) && wanted.at(-1) === anything ? wanted.pop() : undefined;
  if (
    Array.isArray(wanted) &&
    (!Array.isArray(given) || given.length < wanted.length || (!cut && given.length > wanted.length))
  )
    return `${place} is ${JSON.stringify(given)}`;
  for (const [key, one] of Object.entries(wanted)) {
    const wrong = difference(Reflect.get(given, key), one, `${place}.${key}`);
    if (wrong) return wrong;
  }
  return undefined;
}

/** How a result differs from what the comment says it is, or undefined when it does not. */
export function differs(given: unknown, gives: string): string | undefined {
  const text = gives
    .replace(/^(?:→|=>|≈|~|=|about|gives|is)\s*/i, "")
    .replace(/(?:\.\.\.|…)(?=\s*\])/g, "anything")
    .replace(/(?<!\d),?\s*(?:\.\.\.|…)(?=\s*})|,\s*(?:\.\.\.|…)(?=\s*})/g, "")
    .replace(/:(?=\s*[,}])/g, ": anything");
  const marked = text.replace(numbers, (token) =>
    /^\d/.test(token) ? `near("${token}")` : token === "−" ? "-" : token,
  );
  const read = (code: string): unknown => {
    const near = (digits: string) => new Near(digits);
    const value: unknown = new Function(
      "near",
      "anything",
      `"use strict"; return (${code.replace(/-\s*near\("/g, 'near("-')});`,
    )(near, anything);
    return value;
  };
  try {
    const list = (Array.isArray(given) || ArrayBuffer.isView(given)) && !text.startsWith("[");
    return difference(given, read(list ? `[${marked}]` : marked), "it");
  } catch {
    const [, number] =
      /^(-?\d+(?:\.\d+)?(?:e[+-]?\d+)?(?:\.\.\.|…)?)(?=[\s,;:(]|$)/i.exec(
        text.replace(/(?<=\d),(?=\d{3})/g, "").replace(/^−/, "-"),
      ) ?? [];
    if (number !== undefined) return difference(given, new Near(number), "it");
    const [, literal] =
      /^("(?:[^"\\]|\\.)*"|true|false|undefined|null|\[[^\]]*\]|\{[^{}]*\})(?=[\s,;:(])/.exec(text) ?? [];
    if (literal !== undefined) return differs(given, literal);
    return `"${gives}" cannot be compared; write a value, "throws" and the message, or no comment`;
  }
}
