import type { InventedRow } from "./inventLog.ts";

type Write = (rows: readonly InventedRow[]) => string;

const two = (n: number) => String(n).padStart(2, "0");
const mss = (time: number) => `${Math.floor(time / 60)}:${two(Math.round(time) % 60)}`;

function minutesOf(clock: string): number {
  const [, hour, minute, half] = /^(\d+):(\d+)(?: (am|pm))?$/.exec(clock) ?? [];
  return (
    ((Number(hour) % 12) + (half === "pm" || (half === undefined && Number(hour) >= 12) ? 12 : 0)) * 60 + Number(minute)
  );
}

/** Comma-separated with minutes and seconds from the first row. */
export const asCommas: Write = (rows) =>
  `time,bath (°F),water (fl oz),note\n${rows.map(({ time, fahrenheit, water, note }) => [mss(time), fahrenheit ?? "", water ?? "", note ?? ""].join(",")).join("\n")}\n`;

/** Separated by semicolons, °C with a decimal comma, millilitres. */
export const asSemicolons: Write = (rows) => {
  const comma = (x: number, digits: number) => x.toFixed(digits).replace(".", ",");
  const lines = rows.map(({ time, fahrenheit, water, note }) =>
    [
      mss(time),
      fahrenheit === undefined ? "" : comma((Number(fahrenheit) - 32) / 1.8, 1),
      water === undefined ? "" : comma(Number(water) * 29.5735, 0),
      note ?? "",
    ].join(";"),
  );
  return `time;bath °C;water ml;note\n${lines.join("\n")}\n`;
};

/** Separated by tabs, with a 24-hour clock. */
export function asTabs(from: string): Write {
  const zero = minutesOf(from);
  return (rows) => {
    const lines = rows.map(({ time, fahrenheit, water, note }) => {
      const minutes = zero + Math.round(time / 60);
      return [`${Math.floor(minutes / 60) % 24}:${two(minutes % 60)}`, fahrenheit ?? "", water ?? "", note ?? ""].join(
        "\t",
      );
    });
    return `clock\tbath °F\twater fl oz\tnote\n${lines.join("\n")}\n`;
  };
}

/** As typed on a phone: clock time, then whatever there was to say. */
export function asScrap(from: string): Write {
  const zero = minutesOf(from);
  return (rows) => {
    const lines: string[] = [];
    for (const { time, fahrenheit, water, note } of rows) {
      const minutes = zero + Math.round(time / 60);
      const hour = Math.floor(minutes / 60) % 24;
      const clock = `${((hour + 11) % 12) + 1}:${two(minutes % 60)} ${hour >= 12 ? "pm" : "am"}`;
      lines.push(
        [clock, fahrenheit, water === undefined ? undefined : `${water} fl oz`, note].filter(Boolean).join(" "),
      );
    }
    return `${lines.join("\n")}\n`;
  };
}
