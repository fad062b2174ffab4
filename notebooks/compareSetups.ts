import { fitted, notebook, worked } from "../lib/lines/index.ts";
import oneRun from "./oneRun.ts";

/** Which tank and which fire to use for a piece: cases side by side, from fitted runs, setups and supposed changes. */
export default notebook({
  name: "Compare setups",
  asks: "Which tank, on which fire?",
  lines: {
    ...Object.fromEntries(
      Object.entries(oneRun.lines).filter(
        ([, line]) => line.kind === "given" || line.hidden === true || line.group === "Conditions",
      ),
    ),
    "boil-off": worked("boil-off of fitted bath", "fl oz/min", { metricUnit: "ml/min", mark: "water" }),
    "heat into the bath": fitted("heat into the bath of fitted bath", "BTU/h", { metricUnit: "kW" }),
    "make-up water": worked("make-up water of fitted bath", "fl oz/min", { metricUnit: "ml/min", mark: "water" }),
  },
  answer: ["It boils off {boil-off} a minute; to hold it takes {make-up water}."],
  figures: [],
});
