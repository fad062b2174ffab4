/** What must stand beside every charge of salt, whoever reads it out. */
export const chargeCautions: readonly string[] = [
  "The salt's safety data sheet and your local rules come first; where they differ from this, they are right.",
  "Salt goes into a cold bath only, fire off, in small lots. Never add dry salt or lye to a warm or hot bath.",
  "Face shield over goggles, gauntlets, apron, long sleeves, closed shoes; running water for the eyes within reach.",
  "Steel tank only: lye eats aluminium, zinc, tin and solder, and gives off hydrogen. Never ammonium salts, never acid.",
  "A cold bath sets to a crust, and liquid caught under it can erupt: warm a standing bath slowly, from one end, standing clear.",
];
