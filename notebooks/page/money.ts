const sign = "$";

/** A number as it stands before its unit: money has its sign first, "$0.67", "−$0.22"; any other number is as it is. */
export function withSign(number: string, unit: string): string {
  if (!unit.startsWith(sign)) return number;
  const [, before = "", digits = number] = /^([+\u2212-]?)(.*)$/u.exec(number) ?? [];
  return `${before}${sign}${digits}`;
}

/** What of a unit is left to stand behind a number that has its sign of money: "" of "$", "/lb" of "$/lb". */
export function afterSign(unit: string): string {
  return unit.startsWith(sign) ? unit.slice(sign.length) : unit;
}
