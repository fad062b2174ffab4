import { expect, test } from "vitest";
import { func, shape } from "./shape.ts";

// Order of operations is common practice in algebra: powers first and from the right, then × and ÷, then + and −.
test.each([
  ["2 + 3 * 4", "(2 + (3 * 4))"],
  ["2 - 3 - 4", "((2 - 3) - 4)"],
  ["2 / 3 / 4", "((2 / 3) / 4)"],
  ["2 / 3 * 4", "((2 / 3) * 4)"],
  ["(2 + 3) * 4", "((2 + 3) * 4)"],
  ["-2^2", "(-(2 ^ 2))"],
  ["2^3^2", "(2 ^ (3 ^ 2))"],
  ["2^-1", "(2 ^ (-1))"],
  ["2 * -3", "(2 * (-3))"],
  ["--2", "(-(-2))"],
  ["3 + 4²", "(3 + (4 ^ 2))"],
  ["2 × 3 · 4 ÷ 5 − 6", "((((2 * 3) * 4) / 5) - 6)"],
  ["1 < 2 and not 3 >= 4 or 5 = 6", "(((1 < 2) and (not (3 >= 4))) or (5 = 6))"],
  ["1 + 1 ≤ 2", "((1 + 1) <= 2)"],
])("parseFormula(%s) binds as algebra does", (text, wanted) => {
  expect(shape(text)).toBe(wanted);
});

test.each([
  ["30 min", "30[min]"],
  ["30min", "30[min]"],
  ["2 lb + 8 oz", "(2[lb] + 8[oz])"],
  ["12 fl oz/min", "12[fl oz/min]"],
  ["12 fl oz / min", "12[fl oz/min]"],
  ["10 lb / 2 gal", "(10[lb] / 2[gal])"],
  ["10 lb / gal", "10[lb/gal]"],
  ["1 / 5 min", "(1 / 5[min])"],
  ["2 in^2", "2[in^2]"],
  ["2 in²", "2[in²]"],
  ["(2 in)^2", "(2[in] ^ 2)"],
  ["2 BTU/(h ft2) * 3 ft2", "(2[BTU/(h ft2)] * 3[ft2])"],
  ["5 %", "5[%]"],
  ["3½ gal", "3.5[gal]"],
  ["½ cup", "0.5[cup]"],
  ["1e-3 kg", "0.001[kg]"],
  ["292 °F", "292[°F]"],
  ["$5 / 2 lb", "(5[$] / 2[lb])"],
])("parseFormula(%s) gives a number its unit", (text, wanted) => {
  expect(shape(text)).toBe(wanted);
});

const names = ["salt", "salt in the bath", "boil", "boil-off", "gas", "water balance", "time", "not lit", "band"];

test.each([
  ["salt in the bath / gas", "(<salt in the bath> / <gas>)"],
  ["salt / gas", "(<salt> / <gas>)"],
  ["SALT  in\nthe Bath", "<salt in the bath>"],
  ["boil-off", "<boil-off>"],
  ["boil - salt", "(<boil> - <salt>)"],
  ["boil-salt", "(<boil> - <salt>)"],
  ["gas-boil-off", "(<gas> - <boil-off>)"],
  ["boil -5", "(<boil> - 5)"],
  ["not lit", "<not lit>"],
  ["not (salt > gas)", "(not (<salt> > <gas>))"],
])("parseFormula(%s): the longest known name wins", (text, wanted) => {
  expect(shape(text, names)).toBe(wanted);
});

test.each([
  ["boil-off of water balance", "{boil-off}<water balance>"],
  ["boil-off of water balance - boil-off", "({boil-off}<water balance> - <boil-off>)"],
  ["gas - boil-off of water balance", "(<gas> - {boil-off}<water balance>)"],
  ["time in band of water balance", "{time in band}<water balance>"],
  ["not written down of water balance", "{not written down}<water balance>"],
  [
    "salt when gas > boil-off of water balance, otherwise band",
    "(<salt> when (<gas> > {boil-off}<water balance>), otherwise <band>)",
  ],
  ["rate of rise of water balance", "{rate}{rise}<water balance>"],
  ["start of fit of run(gas)", "{start}fit of run(<gas>)"],
  ["fit of run(gas)", "fit of run(<gas>)"],
  ["2 * (rate of water balance)^2", "(2 * ({rate}<water balance> ^ 2))"],
])("parseFormula(%s) finds a part of a thing", (text, wanted) => {
  expect(shape(text, names, [func("fit of run")])).toBe(wanted);
});

test.each([
  ["min(1,5)", "min(1; 5)"],
  ["min (1, 5) + 1", "(min(1; 5) + 1)"],
  ["min(salt when gas > 1, otherwise 2, 3)", "min((<salt> when (<gas> > 1), otherwise 2); 3)"],
  ["3 lb/min(1, 2)", "(3[lb] / min(1; 2))"],
  ["3 lb/min", "3[lb/min]"],
  ["now()", "now()"],
  ["water balance(gas) - water balance", "(water balance(<gas>) - <water balance>)"],
])("parseFormula(%s) tells functions from lines and units by their brackets", (text, wanted) => {
  expect(shape(text, names, [func("min"), func("now"), func("water balance")])).toBe(wanted);
});

test.each([
  ["1 when gas > 2, otherwise 3", "(1 when (<gas> > 2), otherwise 3)"],
  ["1 when gas > 2, 2 when gas > 1, otherwise 3", "(1 when (<gas> > 2), 2 when (<gas> > 1), otherwise 3)"],
  ["1 when band is given otherwise 2", "(1 when (<band> is given), otherwise 2)"],
  ["1 when band is not given, otherwise 2", "(1 when (<band> is not given), otherwise 2)"],
  ['1 when band is "wide", otherwise 2', '(1 when (<band> = "wide"), otherwise 2)'],
])("parseFormula(%s) takes a formula in pieces", (text, wanted) => {
  expect(shape(text, names)).toBe(wanted);
});

test.each([
  ["", "0: nothing is written here: write a formula"],
  ["   ", "0: nothing is written here: write a formula"],
  ["2 +", "3: the formula stops short: a name, a number or ( was expected"],
  ["2 + )", '4: a name, a number or ( was expected here, not ")"'],
  ["(2", "0: this bracket is never closed: write )"],
  ["2)", "1: this bracket was never opened"],
  ["1,5", "1: a comma only parts what a function is given: write 1.5"],
  ["2 * (1,5)", "6: a comma only parts what a function is given: write 1.5"],
  ["1,500", "1: a comma only parts what a function is given: write 1500, or 1.500"],
  ["1,500,000.5", "1: a comma only parts what a function is given: write 1500000.5"],
  ["½,5", "1: a comma only parts what a function is given"],
  ["(1,5,2)", "2: a comma only parts what a function is given"],
  ["salt,5", "4: a comma stands only between what a function is given; a number takes a point"],
  ["sqrt(1,5)", "0: sqrt takes amount 1: 2 written here; a comma parts them, a number takes a point"],
  ["1.5.2", '3: nothing multiplies by standing side by side: write a sign between "1.5" and ".2"'],
  ["2 salt", '2: nothing multiplies by standing side by side: write a sign between "2" and "salt"'],
  ["salt gas", '5: nothing multiplies by standing side by side: write a sign between "salt" and "gas"'],
  ["salt (gas)", '5: nothing multiplies by standing side by side: write a sign between "salt" and "("'],
  ["5 lbx", '2: "lbx" is neither a unit nor a line: did you mean "lb"?'],
  ["5 gallns * 2", '2: "gallns" is neither a unit nor a line: did you mean "gallons"?'],
  ["5 zzzzz", '2: "zzzzz" is neither a unit nor a line: a number takes its unit behind it, say 30 min'],
  ["sallt * 2", '0: no line is called "sallt": did you mean "salt"?'],
  ["2 * salt in bath", '4: no line is called "salt in bath": did you mean "salt in the bath"?'],
  ["2 * zzz", '4: no line is called "zzz"'],
  ["salt * lb", '7: "lb" is a unit: write a number before it'],
  ["when 2", '0: a name or a number was expected before "when"'],
  ["1 when gas", '10: ", otherwise …" was expected here: say what holds when the condition does not'],
  ["1 when gas, 2", '13: "when …" was expected here, or "otherwise" before the last amount'],
  ["min", "0: min works on something: write it in brackets behind the name"],
  ["min(1, 2, 3, 4)", "0: min takes amount 1, amount 2 (may be left out), amount 3 (may be left out): 4 written here"],
  ["min()", "0: min takes amount 1, amount 2 (may be left out), amount 3 (may be left out): 0 written here"],
  ["(1, 2)", "2: a comma stands only between what a function is given"],
  ["salt # gas", '5: "#" has no meaning in a formula'],
  ["1e999", "0: this number is too large"],
])("parseFormula(%j) says what is wrong, and where", (text, wanted) => {
  expect(shape(text, names, [func("min", 1), func("sqrt", 1, 1)])).toBe(wanted);
});

test("parseFormula refuses a formula that is too long or too deep", () => {
  expect(shape(`1${" + 1".repeat(500)}`)).toMatch(/^2000: a formula has at most 2000 characters/u);
  expect(shape("(".repeat(200))).toMatch(/^\d+: this formula is too deep/u);
  expect(shape("-".repeat(500))).toMatch(/^\d+: this formula is too deep/u);
  expect(shape(`${"2^".repeat(300)}2`)).toMatch(/^\d+: this formula is too deep/u);
});

test.each(["constructor", "__proto__", "toString", "status", "hasOwnProperty", "valueOf"])(
  "parseFormula(%s) knows a line by that name only if there is one",
  (name) => {
    expect(shape(name)).toBe(`0: no line is called "${name}"`);
    expect(shape(`2 * ${name}`, [name])).toBe(`(2 * <${name}>)`);
    expect(shape(`${name}(1)`)).toBe(`0: no line is called "${name}"`);
  },
);
