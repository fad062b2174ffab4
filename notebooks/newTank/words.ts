/** Headings under which the lines are listed. */
export const work = "The work";
export const tank = "The tank to build";
export const fits = "What fits";
export const fire = "Fire and gas";
export const holds = "What it holds";
export const does = "What it does";
export const trial = "Plain water boiled in the new tank";
export const beside = "The tanks beside it";
export const cost = "What it costs";

/** As they stand on the page; those of One run come after. */
export const headingsInOrder: readonly string[] = [work, tank, fits, holds, fire, does, trial, beside, cost];

export const tape = { takes: "length", atLeast: 0, unit: "in", metricUnit: "cm" } as const;
export const pounds = { unit: "lb", metricUnit: "kg" } as const;
export const weighed = { takes: "mass", atLeast: 0, ...pounds } as const;
export const flow = { unit: "fl oz/min", metricUnit: "ml/min" } as const;
export const long = { unit: "in", metricUnit: "cm", plain: true } as const;
export const power = { unit: "BTU/h", metricUnit: "kW" } as const;
export const water = { unit: "gal", metricUnit: "l" } as const;
export const price = { takes: "price by mass", atLeast: 0, unit: "$/lb", metricUnit: "$/kg", group: cost } as const;

/** What formulas of the work and of the new tank's inside take. */
export const workTaken = "part length, part width, part thickness, how many, room at the walls";
export const inside = "new length, new width, new depth";

export const brimful =
  "Danger. A tipped or split tank of hot caustic maims and blinds. The stand must carry this with a wide margin, hot, on ground that does not give; someone who can work it out, and the local code, decide.";
