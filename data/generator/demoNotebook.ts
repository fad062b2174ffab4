import type { KeptNotebook } from "../../lib/record/types.ts";

/** An invented question of the invented shop: what a notebook of the maker's own looks like. */
export const demoNotebook: Pick<KeptNotebook, "id" | "name" | "notebook"> = {
  id: "demo-question-gas",
  name: "What does the gas cost for each blade?",
  notebook: {
    asks: "What does the gas cost for each blade?",
    lines: {
      "cylinder before": {
        kind: "given",
        text: "31.6 lb",
        known: "weighed",
        unit: "lb",
        metricUnit: "kg",
        group: "Gas",
      },
      "cylinder after": {
        kind: "given",
        text: "28.1 lb",
        known: "weighed",
        unit: "lb",
        metricUnit: "kg",
        group: "Gas",
      },
      "gas burned": {
        kind: "worked",
        formula: "cylinder before - cylinder after",
        unit: "lb",
        metricUnit: "kg",
        group: "Gas",
      },
      "gas price": { kind: "given", text: "1.15 $/lb", known: "from the label", unit: "$/lb", group: "Cost" },
      blades: { kind: "given", text: "6", exact: true, group: "Cost" },
      "gas cost": { kind: "worked", formula: "gas burned * gas price", unit: "$", group: "Cost" },
      "gas cost for each blade": { kind: "worked", formula: "gas cost / blades", unit: "$", group: "Cost" },
    },
    cases: { "six blades": {}, "full rack": { blades: "10", "cylinder after": { text: "27.7 lb", known: "weighed" } } },
    caseOrder: ["six blades", "full rack"],
    base: "six blades",
    answer: ["The gas for each blade costs {gas cost for each blade}."],
    figures: [
      { draws: "a line across cases", line: "gas cost for each blade" },
      { draws: "a sweep", line: "gas cost for each blade", by: "blades", from: "1", to: "12" },
    ],
    notes: ["The weights and the price are invented. Write your own over them, or ask another question."],
  },
};
