import type { Finding } from "./finding.ts";
import { notUnderstood } from "./finding.ts";
import { numberSource as n } from "./numberWords.ts";

const weight = String.raw`(?:lbs?|pounds?|#|kgs?|kilos?|g|grams?|oz|ounces?)\b\.?`;
const liquid = String.raw`(?:fl\.? ?oz|floz|fluid ounces?|oz|ounces?|cups?|c|pints?|pts?|quarts?|qts?|gal(?:lon)?s?|ml|millilit(?:er|re)s?|cl|l|lit(?:er|re)s?)\b\.?`;
const length = String.raw`(?:in\b\.?|inch(?:es)?\b|"|cm\b|mm\b)`;

const drip = /\b(?:drip\w*|feed(?:er|ing)?|water|tap)\b/i;
const flow = new RegExp(String.raw`(${n}\s?${liquid})\s?(?:\/|per|an?)\s?(min(?:ute)?|m|h(?:ou)?r?)\b`, "i");
const burner = /\b(?:burners?|fire|flames?|valve|gas|torch|throttle)\b|^(?:full|half|wide open|heat)\b/i;
const share = new RegExp(String.raw`(${n})\s?(%|percent|per cent)?(?!\s?(?:psi|turns?|lbs?|in\b|min|°|f\b))`, "i");
const cylinder = new RegExp(
  String.raw`\b(?:cylinder|propane|bottle|lp tank|gas tank|tank weigh\w*)\b[^\d½¼¾]{0,20}(${n}\s?(?:${weight})?)`,
  "i",
);
const jugWord = /\b(?:jug|pail|bucket|carboy|reservoir|feed (?:tank|can|water)|can)\b/i;
const jugAmount = new RegExp(String.raw`(${n}\s?(?:${liquid}|${weight})(?: (?:and )?${n}\s?${liquid})?)`, "i");
const depthWord = /\b(?:depth|deep|liquid (?:level|depth|at)|level|dip ?stick)\b/i;
const depthAmount = new RegExp(String.raw`(${n}\s?(?:${length})?)`, "i");
const saltWord = /\b(?:salts?|lye|caustic|nitrates?|nitrites?|saltpeter|saltpetre|hydroxide|naoh|nano[23]|kno3)\b/i;
const saltAmount = new RegExp(String.raw`(${n}\s?${weight}(?: (?:and )?${n}\s?${weight})?)`, "i");
const nouns = `(?:parts?|blades?|knife|knives|pieces?|steel|barrels?|receivers?|slides?|screws?|work|batch|load|rack|basket|sword|swords|guns?|it|them|everything)`;
const moved = String.raw`(?:\s+(?:${n}\s?${weight}|(?:no\.? ?|#)?\d{1,3}|went|go|going|are|is|back|all|now|come|came|coming|taken|put|were|pulled|dropped|lowered|hung|lifted))*\s*[:-]?\s*`;
const goIn = new RegExp(
  String.raw`\b${nouns}${moved}(?:in|into|under)\b(?!\s+(?:good|bad|great|nice|shape|order))|\b(?:put|hung|lowered|dropped|loaded|dunked|placed|load|drop|hang)\b.{0,30}\b(?:in|into)\b|^(?:in|all in|parts|go in|went in)$|^in\s+${n}\s?${weight}`,
  "i",
);
const goOut = new RegExp(
  String.raw`\b${nouns}${moved}out\b|\b(?:pulled|removed|took|taken|lifted|pull|remove)\b.{0,30}\b(?:out|${nouns})\b|^(?:out|all out|came out|come out)\b`,
  "i",
);
const partsWeight = new RegExp(String.raw`(${n}\s?${weight})`, "i");
const signed = new RegExp(String.raw`^([+-])\s?(${n}(?:\s?(?:${liquid}|${weight}))?)`, "i");
const pour = new RegExp(String.raw`(${n}\s?${liquid}(?:\s(?:and )?${n}\s?${liquid})?)`, "i");
const waterWeight = new RegExp(
  String.raw`(${n}\s?${weight}(?: (?:and )?${n}\s?${weight})?)\s?(?:of )?(?:water|h2o)\b|\b(?:water|h2o)\b[\s:=+]*(${n}\s?${weight})`,
  "i",
);
const pourWord = new RegExp(
  String.raw`\b(?:water|add(?:ed)?|pour(?:ed)?|topped(?: up| off)?(?: with)?|top(?: up|-up)|make-?up(?: water)?)\b[\s:=+]*(${n})(?=$|[\s.!])(?!\s*(?:blades?|parts?|knives|pieces?|more))`,
  "i",
);
const waterBehind = new RegExp(String.raw`^(${n})\s(?:of )?(?:water|h2o)\b`, "i");
const takenOut = /\b(?:removed|took out|ladled|bailed|spill(?:ed|t)|lost|dipped out|drained)\b/i;

/**
 * The event that a piece of text tells of, or undefined if it is a plain remark. Words that only a maker's own
 * habit explains stay remarks.
 *
 * @param text the piece with spoken numbers in figures
 * @param said the piece as written
 * @param poured whether the row's water is written elsewhere, so that amounts here are talk
 * @returns a finding, or undefined
 * @example
 * eventOf("burner to 3/4", "burner to 3/4", false) // { kind: "burner", amount: "3/4", text: "burner to 3/4" }
 */
export function eventOf(text: string, said: string, poured: boolean): Finding | undefined {
  if (drip.test(text)) {
    const rate = flow.exec(text);
    if (rate)
      return {
        kind: "addition",
        flow: "on",
        amount: `${rate[1]}/${/^m/i.test(rate[2] ?? "") ? "min" : "h"}`,
        text: said,
      };
    if (/\b(?:drip\w*|feed\w*|water|tap)\b.{0,12}\b(?:off|stop\w*|shut|closed)\b/i.test(text))
      return { kind: "remark", flow: "off", text: said };
    if (/\bdrip\w*\b.{0,12}\b(?:on|start\w*|opened)\b/i.test(text)) {
      return notUnderstood(said, "how fast the drip runs", 'Write its rate: "drip on 5 fl oz/min".');
    }
  }
  const weighed = cylinder.exec(text);
  if (weighed?.[1] !== undefined) return { kind: "cylinder", amount: weighed[1].trim(), text: said };
  if (burner.test(text) && !/\b(?:boil|rolling)/i.test(text)) return burnerEvent(text, said);
  if (jugWord.test(text)) return jugEvent(text, said);
  const salt = saltWord.test(text) ? saltAmount.exec(text) : null;
  if (salt?.[1] !== undefined) return { kind: "salt in", amount: salt[1], text: said };
  const deep = depthWord.test(text) ? depthAmount.exec(text) : null;
  if (deep?.[1] !== undefined) return { kind: "depth", amount: deep[1].trim(), text: said };
  if (goOut.test(text)) return partsEvent("parts out", text, said);
  if (goIn.test(text)) return partsEvent("parts in", text, said);
  if (saltWord.test(text)) {
    if (!/\b(?:add(?:ed)?|in)\b|\d/i.test(text)) return undefined;
    return notUnderstood(said, "a weight of salt", 'Write its weight: "salt in 1 lb".');
  }
  return poured ? undefined : pourEvent(text, said);
}

function burnerEvent(text: string, said: string): Finding {
  const event: Finding = { kind: "burner", text: said };
  if (/\b(?:psi|turns?|°)/i.test(text)) return event;
  if (/\b(?:off|out|cut)\b/i.test(text)) return { ...event, amount: "0 %" };
  const number = share.exec(text);
  const size = number?.[1] ?? "";
  if (number?.[2] !== undefined) return { ...event, amount: `${size} %` };
  if (/[/½¼¾⅓⅔⅛⅜⅝⅞]/.test(size) || (size !== "" && Number(size) <= 1)) return { ...event, amount: size };
  if (Number(size) >= 5 && Number(size) <= 100) return { ...event, amount: `${size} %` };
  if (/\bthree[- ]quarters?\b/i.test(text)) return { ...event, amount: "3/4" };
  if (/\bhalf\b/i.test(text)) return { ...event, amount: "1/2" };
  if (/\bquarter\b/i.test(text)) return { ...event, amount: "1/4" };
  if (/\b(?:full|wide open|all the way|max)\b/i.test(text)) return { ...event, amount: "1" };
  if (/\b(?:on|lit|light|started)\b/i.test(text) && size === "") return event;
  const trouble = {
    read: said.slice(0, 80),
    expected: "how far the burner is open",
    remedy: 'Write a share of full fire: "burner to 3/4" or "burner to 70 %".',
  };
  return /\b(?:up|down|to|lower|higher|back|low|high|turned)\b|\d/i.test(text)
    ? { ...event, trouble }
    : { kind: "remark", text: said };
}

function jugEvent(text: string, said: string): Finding | undefined {
  const amount = jugAmount.exec(text)?.[1];
  const pouredIn = /\b(?:add(?:ed)?|pour(?:ed)?)\b/i.test(text);
  if (amount !== undefined) return { kind: pouredIn ? "addition" : "level", amount: amount.trim(), text: said };
  if (/\bempty\b/i.test(text)) return { kind: "level", amount: "0 fl oz", text: said };
  const bare = new RegExp(n).exec(text)?.[0];
  if (bare === undefined && !/\bfull\b/i.test(text)) return undefined;
  if (bare !== undefined && !pouredIn) return { kind: "level", amount: bare, text: said };
  return notUnderstood(said, "how much water is in the jug", 'Write the amount: "jug 1 gal".');
}

function partsEvent(kind: "parts in" | "parts out", text: string, said: string): Finding {
  const weighed = partsWeight.exec(text)?.[1];
  return weighed === undefined ? { kind, text: said } : { kind, amount: weighed, text: said };
}

function pourEvent(text: string, said: string): Finding | undefined {
  const plus = signed.exec(text);
  const amount =
    plus?.[2] ??
    (waterWeight
      .exec(text)
      ?.slice(1)
      .find((part) => part !== undefined) ||
      undefined) ??
    pour.exec(text)?.[1] ??
    pourWord.exec(text)?.[1] ??
    waterBehind.exec(text)?.[1];
  if (amount === undefined) return undefined;
  if (/\d\s*(?:x|×|\*|times)\s*\d/i.test(text)) {
    return notUnderstood(said, "one amount of water", "Write the sum: 16 oz instead of 2 x 8 oz.");
  }
  if (plus?.[1] === "-" || takenOut.test(text)) {
    return notUnderstood(
      said,
      "an amount of water that went in",
      "If water was taken out of the bath, say so on the page; else take the minus sign away.",
    );
  }
  if (/\d\s?(?:lbs?|pounds?|#|kgs?|g|grams?)\b/i.test(amount) && !/\b(?:water|h2o)\b/i.test(text) && plus === null)
    return undefined;
  const extra = text
    .replace(amount, "")
    .replace(/^[\s+]+|\b(?:water|h2o|add(?:ed)?|pour(?:ed)?|of|topped|up|off|with|make-?up|in)\b|[\s.:=+]/gi, "");
  return extra === ""
    ? { kind: "addition", amount: amount.trim() }
    : { kind: "addition", amount: amount.trim(), text: said };
}
