import { nothing, type SVGTemplateResult, svg } from "lit-html";
import { textWidth } from "../../lib/figure/textWidth.ts";
import type { CardFacts } from "./cardFacts.ts";
import type { Correction, System } from "./corrections.ts";
import { timeWords, waterWords } from "./words.ts";

/** px of the two drawings on a card, at the size of the paper. */
export const ruleSize = { width: 400, height: 456 } as const;
export const correctionSize = { width: 290, height: 456 } as const;

const edge = 96;

/** The minute rule: parts in, pours or looks at the jug at their true minutes, each with a box to tick, parts out. */
export function minuteRule({ minutes, holdTime, feedFrom, steady }: CardFacts): SVGTemplateResult {
  const top = 30;
  const bottom = ruleSize.height - 26;
  const y = (time: number) => top + (time / holdTime) * (bottom - top);
  const whole = holdTime / 60;
  const tick = whole <= 45 ? 1 : whole <= 120 ? 5 : 10;
  const figure = whole <= 45 ? 10 : whole <= 120 ? 20 : 60;
  const ticks = Array.from({ length: Math.floor(whole / tick) + 1 }, (_, i) => i * tick);
  const gap = minutes.length > 1 ? y(minutes[1]?.time ?? 0) - y(minutes[0]?.time ?? 0) : 80;
  // Pours that follow each other too closely for one column stand in two or three, their amount in the order alone.
  const columns = gap >= 26 ? 1 : gap >= 13 ? 2 : 3;
  const row = gap * columns;
  const size = Math.max(15, Math.min(34, row * 0.8));
  const box = Math.min(30, Math.max(13, row * 0.7));
  const wide = (ruleSize.width - edge - 20) / columns;
  // The first stands clear of the words for parts in.
  const startsAt = y(minutes[0]?.time ?? holdTime);
  const words = startsAt - top > size * 0.8 + 14 ? 22 : 17;
  return svg`<g font-family="var(--cut)" fill="#000">
    <text x=${edge - 26} y="14" font-size="15" text-anchor="end">min</text>
    <line x1=${edge} x2=${edge} y1=${top} y2=${bottom} stroke="#000" stroke-width="2" />
    ${ticks.map((at) => {
      const long = at % figure === 0;
      const middle = at % (5 * tick) === 0;
      return svg`<line x1=${edge - (long ? 20 : middle ? 13 : 7)} x2=${edge} y1=${y(60 * at)} y2=${y(60 * at)} stroke="#000" stroke-width=${long ? 1.6 : 1} />${long ? svg`<text x=${edge - 26} y=${y(60 * at) + 6} font-size="18" text-anchor="end">${at}</text>` : nothing}`;
    })}
    <text x=${edge + 26} y=${top - 8} font-size=${words} font-weight="600">parts in: start the clock${steady && feedFrom >= 10 ? `, drip from ${timeWords(Math.round(feedFrom / 5) * 5)}` : ""}</text>
    ${minutes.map(({ time, clock, says }, i) => {
      const at = y(time);
      const from = edge + 20 + (i % columns) * wide;
      const foot = at + size * 0.35;
      return svg`<g><line x1=${edge} x2=${from - 2} y1=${at} y2=${at} stroke="#000" stroke-width=${i % columns === 0 ? 1.6 : 0.6} />
        <text x=${from + 4} y=${foot} font-size=${size} font-family="var(--read)" stroke="#fff" stroke-width="5" paint-order="stroke">${clock}</text>
        ${columns === 1 ? svg`<text x=${edge + 100} y=${foot} font-size=${Math.max(15, size * 0.66)} font-weight="600">${says}</text>` : nothing}
        <rect x=${from + wide - box - 8} y=${at - box / 2} width=${box} height=${box} fill="#fff" stroke="#000" stroke-width="1.6" /></g>`;
    })}
    <text x=${edge + 26} y=${bottom + 18} font-size="22" font-weight="600">parts out${steady ? ", stop the drip" : ""}</text>
  </g>`;
}

const short = ({ does, again }: Correction, every: number, facts: CardFacts, system: System): string => {
  const later = again > every ? `, read in ${timeWords(again)}` : "";
  switch (does.kind) {
    case "nothing":
      return facts.steady ? "keep dripping" : "keep to the clock";
    case "add":
      return `add ${waterWords(does.water, system)}`;
    case "wait":
      return facts.steady ? `no drip ${timeWords(does.pause)}${later}` : `delay pour ${timeWords(does.pause)}${later}`;
    case "stop":
      return does.side === "above" ? "STOP: fire down, stand back" : "STOP the water; fire out? Gas off";
  }
};

/** The correction rule: readings upright, what to do beside them, the band white between grey, both ends hatched. */
export function correctionRule(facts: CardFacts, readEvery: number, system: System): SVGTemplateResult {
  const { corrections, inside } = facts;
  const { width, height } = correctionSize;
  const end = 44;
  const rows = corrections.filter(({ from, to }) => from !== undefined && to !== undefined);
  const high = rows[0]?.to ?? 0;
  const low = rows.at(-1)?.from ?? 0;
  const each = (height - 2 * end) / Math.max(1, high - low + 1);
  const y = (degrees: number) => end + (high + 0.5 - degrees) * each;
  const left = 62;
  const size = Math.max(12, Math.min(19, each * 1.05));
  const foot = height - end;
  const bandTop = y(Math.min(high, inside.high) + 0.5);
  const bandFoot = y(Math.max(low, inside.low) - 0.5);
  const hatch = (from: number) =>
    Array.from({ length: Math.ceil((width + end) / 9) }, (_, i) => {
      const x = i * 9;
      return svg`<line x1=${Math.max(0, x - end)} y1=${from + Math.min(end, x)} x2=${Math.min(width, x)} y2=${from + Math.max(0, x - width)} stroke="#000" stroke-width="1" /><line x1=${Math.max(0, x - end)} y1=${from + end - Math.min(end, x)} x2=${Math.min(width, x)} y2=${from + end - Math.max(0, x - width)} stroke="#000" stroke-width="1" />`;
    });
  const ends = corrections.filter(({ does }) => does.kind === "stop");
  return svg`<g font-family="var(--cut)" fill="#000">
    <rect x="0" y=${end} width=${width} height=${foot - end} fill="#d9d9d9" />
    <rect x="0" y=${bandTop} width=${width} height=${Math.max(0, bandFoot - bandTop)} fill="#fff" />
    ${hatch(0)}${hatch(foot)}
    ${ends.map((one) => {
      const at = one.to === undefined ? 0 : foot;
      return svg`<rect x="8" y=${at + 6} width=${width - 16} height=${end - 12} fill="#fff" /><text x="14" y=${at + end / 2 + 5} font-size="14.5" font-weight="600">${one.to === undefined ? one.from : one.to} ${short(one, readEvery, facts, system)}</text>`;
    })}
    ${rows.map((one) => {
      const [from, to] = [one.from ?? 0, one.to ?? 0];
      const middle = (y(from) + y(to)) / 2;
      const words = short(one, readEvery, facts, system);
      const fits = Math.min(size, (width - left - 14) / textWidth(words, 1, 600));
      const label = from === to ? String(from) : `${from}–${to}`;
      return svg`<line x1="0" x2=${width} y1=${y(from - 0.5)} y2=${y(from - 0.5)} stroke="#000" stroke-width="0.9" />
        <text x=${left - 8} y=${middle + size * 0.35} font-size=${Math.min(size, label.length > 3 ? 13 : size)} text-anchor="end" font-weight="500">${label}</text>
        <text x=${left + 8} y=${middle + size * 0.35} font-size=${fits} font-weight=${one.does.kind === "nothing" ? 400 : 600}>${words}</text>`;
    })}
    <line x1=${left} x2=${left} y1=${end} y2=${foot} stroke="#000" stroke-width="2" />
    ${Array.from({ length: high - low + 1 }, (_, i) => low + i).map(
      (at) => svg`<line x1=${left - 5} x2=${left} y1=${y(at)} y2=${y(at)} stroke="#000" stroke-width="1" />`,
    )}
    <line x1="0" x2=${width} y1=${bandTop} y2=${bandTop} stroke="#000" stroke-width="2" />
    <line x1="0" x2=${width} y1=${bandFoot} y2=${bandFoot} stroke="#000" stroke-width="2" />
  </g>`;
}
