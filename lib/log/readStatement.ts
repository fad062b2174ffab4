import { eventOf } from "./eventOf.ts";
import { type Finding, notUnderstood } from "./finding.ts";
import { numberSource, numberWords } from "./numberWords.ts";
import { plainText } from "./plainText.ts";

export interface StatementContext {
  /** "line": numbers without a unit may be readings and pours. "note": a remark beside a table, words first. */
  readonly of: "line" | "note";
  /** Whether the row has a reading or a pour already, from other cells. */
  readonly hasReading: boolean;
  readonly hasPour: boolean;
  readonly decimalComma: boolean;
}

const longest = 600;
const leadWords = String.raw`(?:(?:bath|temp(?:erature)?|reading|reads?|now|at|is|t|up to|down to|back to|back at|holding|steady|still|about|around|approx\.?|ca\.?|~|=|:)[\s:=]+)*`;
const degrees = String.raw`\s?(?:°\s?[fck]?\b|°|deg(?:rees)?\.?\s?[fck]?\b|[fck]\b)`;
const leading = new RegExp(
  String.raw`^(${leadWords})([~-]?\s?\d{1,4}(?:[.,]\d+)?)(${degrees})?(?=$|[\s,;!?)]|ish\b|[^\w.,/:%>-])`,
  "i",
);
const within =
  /(?:^|[\s(])(\d{2,4}(?:[.,]\d+)?(?:\s?°\s?[fckFCK]\b|\s?°|\s?deg(?:rees)?\.?\s?[fckFCK]?\b|\s?[fFCK]\b))/;
const trailing = /(?:^|\s)(?:at |@ |= ?)?(\d{2,3}(?:[.,]\d+)?)$/;
/** Words before a number that make it an amount rather than a temperature. */
const amountBefore =
  /^(?:water|h2o|add(?:ed)?|pour(?:ed)?|jug|pail|bucket|cylinder|propane|depth|level|(?:burner|fire|valve)(?: to)?)\s*[:=+]?\s*$/i;
const measureNext =
  /^\s*(?:fl\b|floz|oz\b|ounces?|cups?|c\b|pints?|pts?\b|quarts?|qts?\b|gals?\b|gallons?|ml\b|cl\b|l\b|lit(?:er|re)|lbs?\b|pounds?|#|kgs?\b|g\b|grams?|%|\/|inch|cm\b|mm\b|"|'|ft\b|turns?|psi|min)/i;
const countNext = /^\s*(?:blades?|parts?|pieces?|knives|knife|more\b|x\b)/i;
const bareWeight = new RegExp(`^${numberSource}\\s?(?:lbs?|pounds?|kgs?|kilos?|g|grams?)\\.?$`, "i");
const small = new RegExp(`^${numberSource}$`);

/**
 * What a typed line (without its time) or a note says: readings, pours and events, and the rest as remarks in the
 * order in which they stand. Nothing of the text is lost.
 *
 * @param text any text; beyond 600 characters it is taken as a remark
 * @param context what kind of text it is and what the row holds already
 * @returns findings in the order written
 * @example
 * readStatement("291 parts in", { of: "line", hasReading: false, hasPour: false, decimalComma: false }).length // 2
 */
export function readStatement(text: string, context: StatementContext): Finding[] {
  const plain = plainText(text);
  if (plain === "") return [];
  if (plain.length > longest) return [{ kind: "remark", text: plain }];
  const state = { ...context };
  const findings: Finding[] = [];
  for (const piece of pieces(plain)) {
    for (const finding of readPiece(piece, state)) {
      if (finding.kind === "reading") state.hasReading = true;
      if (finding.kind === "addition") state.hasPour = true;
      const last = findings.at(-1);
      const joins = finding.kind === "remark" && !finding.trouble && last?.kind === "remark" && !last.trouble;
      if (joins && last.text !== undefined)
        findings[findings.length - 1] = { ...last, text: `${last.text}, ${finding.text}` };
      else findings.push(finding);
    }
  }
  if (bareWeight.test(plain) && context.of === "line" && !context.hasPour) return [{ kind: "addition", amount: plain }];
  const only = findings.length === 1 ? findings[0] : undefined;
  return only?.kind === "remark" && !only.trouble ? [{ ...only, text: plain }] : findings;
}

function pieces(plain: string): string[] {
  return plain
    .split(
      /[;|]|,(?!\d)|,(?=\d{3}\s*(?:°|f\b))|(?<!\b(?:fl|approx|ca))\.\s+(?=\D)|\s+(?:-+|—|\/|&|\/\/)\s+|\s+(?:and|then)\s+(?!a?\s*(?:half|quarter|\d))|(?<=[\d\p{L}°%)])\s*(?=\+\s?[\d½¼¾])/u,
    )
    .map((piece) => piece.trim().replace(/^([\d.,]*\d)\.$/, "$1"))
    .filter((piece) => /[\p{L}\p{N}?!½¼¾]/u.test(piece));
}

function readPiece(piece: string, context: StatementContext): Finding[] {
  if (context.of === "line") {
    const reading = leadingReading(piece, context);
    if (reading !== undefined) {
      if (reading.rest === "") return [reading.finding];
      if (bareWeight.test(reading.rest) && !context.hasPour)
        return [reading.finding, { kind: "addition", amount: reading.rest }];
      return [reading.finding, ...readPiece(reading.rest, { ...context, hasReading: true })];
    }
    if (!context.hasReading) {
      const inside = within.exec(piece) ?? trailing.exec(piece);
      const amount = inside?.[1];
      const named = /[°a-z]/i.test(amount ?? "") || !amountBefore.test(piece.slice(0, inside?.index));
      if (inside && amount !== undefined && inside[0].length < piece.length && named && isTemperature(amount)) {
        const rest = `${piece.slice(0, inside.index)} ${piece.slice(inside.index + inside[0].length)}`
          .replace(/\s+/g, " ")
          .trim();
        const others = readPiece(rest.replace(/\s(?:at|@|=|,)$/i, ""), { ...context, hasReading: true });
        return [...others.filter((finding) => finding.text !== "at"), { kind: "reading", amount }];
      }
    }
    if (small.test(piece)) return [looseNumber(piece, context)];
    if (!/[\p{L}?!+]/u.test(piece) && !/^-/.test(piece)) {
      return [notUnderstood(piece, "one temperature, or an amount with its unit", "Write one number: 291, or 24 oz.")];
    }
  }
  if (bareWeight.test(piece)) {
    const remedy = `Write what it is: "${piece} water", "salt ${piece}" or "parts in ${piece}".`;
    return [notUnderstood(piece, "what was weighed", remedy)];
  }
  return [
    eventOf(numberWords(piece), piece, context.hasPour && context.of === "note") ?? { kind: "remark", text: piece },
  ];
}

function leadingReading(piece: string, context: StatementContext): { finding: Finding; rest: string } | undefined {
  const match = leading.exec(piece);
  if (match === null) return undefined;
  const [whole, lead = "", number = "", degree = ""] = match;
  const vague = /^\s?(?:ish\b|or so\b|\?+)/i.exec(piece.slice(whole.length))?.[0] ?? "";
  const rest = piece.slice(whole.length + vague.length).trim();
  const size = Number(number.replace(/[~\s-]/g, "").replace(",", "."));
  const after = piece.slice(whole.length);
  if (degree === "" && (context.hasReading || measureNext.test(after) || (size < 100 && countNext.test(after))))
    return undefined;
  if (degree !== "" && /^\s?c$/i.test(degree) && size < 40) return undefined;
  if (degree === "" && size < 32) return undefined;
  const amount = `${number.replace(/^-\s?/, "")}${degree}`.trim();
  const said = lead
    .replace(/\b(?:bath|temp(?:erature)?|reading|reads?|now|at|is|t|about|around|approx|ca)\b|[~=:.]/gi, "")
    .trim();
  const finding: Finding = {
    kind: "reading",
    amount: vague !== "" || /\b(?:about|around|approx|ca)\b|~/i.test(lead) ? `~${amount}` : amount,
  };
  return {
    finding: said === "" ? finding : { ...finding, text: lead.trim() },
    rest: rest.replace(/^[,;:.!)-]\s*/, ""),
  };
}

/** A number alone behind the reading: the water, if it can be. */
function looseNumber(piece: string, context: StatementContext): Finding {
  if (context.hasReading && !context.hasPour) return { kind: "addition", amount: piece };
  return notUnderstood(piece, "a number with its unit", `Write the unit behind it: "${piece} oz" or "${piece} °F".`);
}

function isTemperature(amount: string): boolean {
  const size = Number.parseFloat(amount.replace(",", "."));
  return /[°a-z]/i.test(amount) ? size >= 40 : size >= 100 && size <= 400;
}
