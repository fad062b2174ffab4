import { plainText } from "./plainText.ts";

export type Role =
  | "time"
  | "date"
  | "temperature"
  | "other temperature"
  | "water"
  | "water total"
  | "depth"
  | "level"
  | "cylinder"
  | "salt in"
  | "burner"
  | "parts"
  | "event"
  | "remark"
  | "struck"
  | "row number"
  | "unknown";

export interface Heading {
  readonly role: Role;
  /** The unit that the heading names, in the words of the heading ("fl oz", "h:mm", "°C"). */
  readonly unit?: string;
}

const temperatureUnit =
  /(?:°\s?|\bdeg(?:rees?)?\.?\s?)(?:f|c|k|fahrenheit|celsius)?\b|\b(?:fahrenheit|celsius|kelvin)\b|°|(?:^|[\s_([/,])[fck](?=$|[\s_)\]/])/;
const waterUnit =
  /\bfl\.?\s?oz\b|\bfloz\b|\bfluid ounces?\b|\b(?:oz|ounces?|ml|millilit(?:er|re)s?|cl|l|lit(?:er|re)s?|cups?|pints?|pts?|quarts?|qts?|gal(?:lon)?s?|lbs?|pounds?|kgs?|g|grams?)\b/;
const massUnit = /\b(?:lbs?|pounds?|kgs?|kilos?|oz|ounces?|g|grams?)\b/;
const lengthUnit = /\b(?:in|inch(?:es)?|cm|mm|ft|feet)\b|"/;
const timeUnit =
  /\bh{1,2}:mm(?::ss)?\b|\bm{1,2}:ss\b|\b(?:am\/pm|24 ?h(?:our)?|milliseconds?|ms|seconds?|secs?|s|minutes?|mins?|m|hours?|hrs?|h)\b/;
const notBath =
  /\b(?:flue|stack|chimney|ambient|air|room|shop|outside|outdoors?|weather|cold junction|cj|setpoint|set|target|goal|aim|part|steel|wall|lid|rinse|feed|regulator)\b/;
const temperatureWord =
  /\b(?:temp(?:erature)?s?|thermometers?|thermocouples?|probe|degrees?|deg|pyrometer|tc ?\d?|rtd|t\d)\b/;

/** Words that give a column its role, tried in this order. */
const words: readonly (readonly [Role, RegExp])[] = [
  ["struck", /^(?:struck|struck out|crossed out|void|strike|x|ignore|skip)$/],
  ["date", /^(?:date|day)s?$/],
  ["row number", /^(?:#|no\.?|nr\.?|row|index|idx|line|sample|record|n|id|seq(?:uence)?)$/],
  [
    "time",
    /\b(?:times?|timestamp|date ?time|clock|elapsed|when|o'clock|timer|hh?:mm(?::ss)?|mm?:ss)\b|^t$|^(?:at|start)$/,
  ],
  [
    "time",
    /^\(?(?:milliseconds?|ms|seconds?|secs?|s|minutes?|mins?|m|hours?|hrs?|h)\)?(?: (?:in|into|from start|since start|gone))?$/,
  ],
  ["depth", /\bdepth\b|\bliquid level\b|\btank level\b|\bdeep\b|\bheight\b/],
  ["level", /\b(?:jug|pail|bucket|feed|feeder|reservoir|carboy|can)\b/],
  ["cylinder", /\b(?:cylinder|propane|bottle|lp|gas (?:weight|bottle|left))\b/],
  ["salt in", /\b(?:salts?|lye|caustic|nitrates?|nitrites?|hydroxide)\b/],
  ["burner", /\b(?:burner|fire|flame|valve|gas|heat|throttle)\b/],
  ["water total", /\b(?:total|cumulative|cum|so far|running|sum|altogether)\b/],
  ["water", /\b(?:water|h2o|added|adds?|additions?|pour(?:s|ed)?|make-?up|top-?ups?|topped|cups?|amount)\b/],
  ["temperature", /\b(?:bath|tank|reading|solution|liquor|pot|boil|actual|measured|pv)\b/],
  ["remark", /\b(?:notes?|remarks?|comments?|observations?|memo|text|words|description|who)\b/],
  ["event", /\b(?:events?|actions?|what|happened|did|doing|status|state|step)\b/],
  ["parts", /\b(?:parts?|blades?|work|batch|load)\b/],
];

/**
 * What a column holds by the words of its heading, and the unit that the heading names.
 *
 * @param text a heading as written, in any wording
 * @returns the role, "unknown" if no word of it is known
 * @example
 * heading("Water added (fl oz)") // { role: "water", unit: "fl oz" }
 */
export function heading(text: string): Heading {
  const plain = plainText(text.slice(0, 200)).toLowerCase().replace(/_/g, " ").trim();
  if (plain === "") return { role: "unknown" };
  const bare = plain
    .replace(/[([{].*?[)\]}]/g, " ")
    .replace(/[^\p{L}\p{N}#:°'/"-]+/gu, " ")
    .trim();
  const role = roleOf(plain, bare === "" ? plain : bare);
  const unit = unitOf(role, plain);
  return unit === undefined ? { role } : { role, unit };
}

function roleOf(plain: string, bare: string): Role {
  const tempLike = temperatureWord.test(bare) || temperatureUnit.test(plain);
  if (tempLike && !/\btime\b|\bdate\b/.test(bare)) {
    if (notBath.test(bare) && !/\bbath\b/.test(bare)) return "other temperature";
    const first = words.find(([, pattern]) => pattern.test(bare))?.[0];
    if (first === undefined || temperatureWord.test(bare) || ["temperature", "salt in", "level"].includes(first))
      return "temperature";
    if (first === "water" && !waterUnit.test(plain)) return "temperature";
    return first;
  }
  const found = words.find(([, pattern]) => pattern.test(bare))?.[0];
  if (found === "level" && lengthUnit.test(plain)) return "depth";
  if (found === "cylinder" || found === "burner") return massUnit.test(plain) ? "cylinder" : found;
  if (found !== undefined) return found;
  if (/^\W*(?:level)\b/.test(bare)) return lengthUnit.test(plain) ? "depth" : "level";
  if (notBath.test(bare)) return "other temperature";
  if (waterUnit.test(plain)) return "water";
  if (lengthUnit.test(bare)) return "depth";
  return "unknown";
}

function unitOf(role: Role, plain: string): string | undefined {
  const patterns = new Map<Role, RegExp>([
    ["time", timeUnit],
    ["temperature", temperatureUnit],
    ["other temperature", temperatureUnit],
    ["water", waterUnit],
    ["water total", waterUnit],
    ["level", waterUnit],
    ["cylinder", massUnit],
    ["salt in", massUnit],
    ["parts", massUnit],
    ["depth", lengthUnit],
  ]);
  const pattern = patterns.get(role);
  if (pattern === undefined) return role === "burner" && plain.includes("%") ? "%" : undefined;
  const bracketed = /[([{](.*?)[)\]}]/.exec(plain)?.[1];
  const within = bracketed === undefined ? null : pattern.exec(bracketed);
  const found = (within ?? pattern.exec(plain))?.[0].replace(/^[\s_([/,]+/, "").trim();
  if (role === "temperature" || role === "other temperature") {
    const letter = /[fck](?=$|[^a-z])|fahrenheit|celsius|kelvin/.exec(
      (found ?? "").replace(/^(?:°|deg(?:rees?)?\.?)\s?/, ""),
    )?.[0];
    return letter === undefined ? undefined : letter.startsWith("k") ? "K" : `°${letter.charAt(0).toUpperCase()}`;
  }
  if (role === "time" && /\bclock\b|o'clock|time of day/.test(plain) && (found === undefined || found === "h"))
    return "clock";
  return found;
}
