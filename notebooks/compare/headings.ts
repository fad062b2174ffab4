/** Headings of the comparison's lines. */
export const supposed = "Supposed changes";
export const firing = "The firing";
export const cylinder = "Cylinder";
export const heat = "Where the heat goes";
export const boils = "Boil-off and make-up";
export const hold = "The hold, left alone and with parts";
export const gas = "Gas";
export const room = "What the tank holds";
