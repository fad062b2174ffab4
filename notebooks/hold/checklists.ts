/** A list to go by, in the maker's words. */
export interface Checklist {
  readonly id: string;
  readonly title: string;
  /** Its finding in one line. */
  readonly finding: string;
  /** Stands above it: what hurts. */
  readonly danger: string;
  readonly steps: readonly string[];
  readonly source: string;
}

const practice = "Common practice, no source.";
const sheet =
  "The salt’s safety data sheet and your local rules come first; where they differ from this list, they are right.";

/** The lists of a bath’s life. */
export const checklists: readonly Checklist[] = [
  {
    id: "list-new-bath",
    title: "A new bath",
    finding: "cold, water first, small lots; scrap before anything that matters",
    danger:
      "Dissolving lye heats water by itself: too much at once boils and throws caustic. Water first, lye into it, never water onto lye.",
    steps: [
      "Read the salt’s safety data sheet; have its eyewash, gauntlets, goggles under a face shield and apron there and on.",
      "Somebody else is within call, and knows where the water is.",
      "Tank of plain welded steel, seams looked over, level, a steel tray under it that holds all of it. Nothing of aluminium, zinc, tin, brass, solder or plastic in or over it.",
      "Cold water in, to the amount worked here; mark the level on a dipstick.",
      "Salt in by the lots and order worked here, stirred until dissolved; wait until the tank is below hand heat before the next lot.",
      "Light up slowly from one end, out of doors or well ventilated. Read the first boil and write it down: it decides, not the scale.",
      "Too strong: cold water as a thin steady stream. Too weak: let it boil. No salt goes into a warm bath.",
      "Test pieces first: scrap of the same steel, cleaned the same way, for the whole hold. Look at them dry and oiled before the real part goes in.",
      "Write a log of that first run: it fits the bath, and narrows every number here.",
    ],
    source: `${practice} ${sheet}`,
  },
  {
    id: "list-crusted-bath",
    title: "A cold bath with a crust",
    finding: "heating one is the most dangerous hour: break the crust, warm from one end",
    danger:
      "Salt sets to a crust when the bath is cold. Liquid that boils under it can burst through and throw caustic out of the tank.",
    steps: [
      "Everything on as for the boil, before the burner is lit: shield over goggles, gauntlets, apron, long sleeves, closed shoes.",
      "Lift the cover away from you. Look for water that ran in: read the level on the dipstick.",
      "Break the crust with a steel bar at both ends and down to the liquid in the middle, standing to the side. A crust that does not break: warm one end on the smallest flame until it melts open there, before anything heats under the middle.",
      "Leave an open way for vapour from the bottom to the air at the heated end the whole time.",
      "Smallest flame, one end, nobody leaning over the tank; turn up only when all of the crust is gone and the bath can be stirred.",
      "No water poured on the crust, hot or cold; no salt; no parts until it boils evenly.",
      "Any sudden thump or lifting of the crust: gas off from a distance, stand back, let it cool.",
    ],
    source: `${practice} ${sheet}`,
  },
  {
    id: "list-shutting-down",
    title: "Shutting down and covering",
    finding: "parts out, gas off at the cylinder, cover when it no longer steams",
    danger: "For hours it stays hot enough to burn to the bone, and looks like still water.",
    steps: [
      "Parts out slowly, let them drain over the bath, then straight into the rinse.",
      "Feed off, and the hose or drip out of the bath: a drip that goes on into a bath below its boil lies cold on it.",
      "Gas off at the cylinder, let the hose burn empty, then the burner valve.",
      "Write the last reading, the level and the cylinder’s weight.",
      "Leave it uncovered until it no longer steams; then a steel cover that sheds rain and that no child or animal can lift. Water that runs in under a cover lies on top, and flashes at the next firing.",
      "A sign on it: what is in it, hot, caustic, since when.",
      "Gauntlets and tools rinsed with much water. Drips on the floor too.",
    ],
    source: `${practice} ${sheet}`,
  },
  {
    id: "list-sludge",
    title: "Sludge",
    finding: "cold or barely warm, wet, by ladle; it is still caustic",
    danger: "Sludge holds strong caustic and often nitrite: never acid on it, nitrite then gives off poisonous gas.",
    steps: [
      "Only with the fire off and the bath cooled to where it can be ladled without vapour.",
      "Skim or ladle with a steel ladle into a steel bucket, slowly; let it drain over the tank.",
      "Weigh the bucket wet before and after: half of it counts as bath lost (a judgement).",
      "Keep it wet, closed and labelled. Where it may go the waste authority says; never down a drain unasked.",
      "Bring back level and strength with the cold charge worked here, not by guess.",
    ],
    source: `${practice} ${sheet}`,
  },
  {
    id: "list-emptying",
    title: "Emptying",
    finding: "cold, by ladle or pump into steel, and somebody licensed takes it",
    danger:
      "Never tip a tank. Never neutralise it yourself: acid on nitrite gives off poisonous gas, acid on lye boils.",
    steps: [
      "Ask the waste authority first what takes strong caustic with nitrate and nitrite, and in which containers.",
      "Let it cool to where it does not steam, but before it sets; full protection on.",
      "Ladle or pump into closed steel containers with room at the top; label them with what the safety data sheet says.",
      "What has set: cold water in by small amounts, and time. No hammering a crust above liquid, no flame under it.",
      "Rinse the tank with much water; that rinse is caustic too.",
      "No welding or cutting on a tank that held caustic before it is rinsed and dried, and somebody competent has said so.",
    ],
    source: `${practice} ${sheet}`,
  },
];
