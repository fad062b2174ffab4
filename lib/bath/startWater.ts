const gallon = 3.785411784 * 0.9982;

interface Water {
  readonly value: number;
  readonly u: number;
}

/**
 * Water at the first boil, kg, with its relative doubt, from the best that is known: told by the maker, worked out from
 * the depth, or left to the readings. Told water that the boiling point plainly contradicts is not taken, and a remark
 * says so: a wrong start would spoil the whole balance.
 *
 * @param told by the maker, with what was poured before the boil
 * @param deep from the depth in the tank
 * @param seen kg that the first readings at the boil say
 * @param slope K for each e-fold of water
 * @param remarks where a contradiction is told
 * @example startWater({ value: 9, u: 0.4 }, undefined, 8.8, 40, []).relative // about 0.045
 */
export function startWater(
  told: Water | undefined,
  deep: Water | undefined,
  seen: number,
  slope: number,
  remarks: string[],
): { readonly value: number; readonly relative: number } {
  if (!told) return deep ? { value: deep.value, relative: deep.u / deep.value } : { value: seen, relative: 0.6 };
  const relative = Math.hypot(told.u / told.value, 0.005);
  // Curve, thermometer and salts together leave about 2.5 K.
  const apart = Math.log(told.value / seen) / Math.hypot(relative, 2.5 / slope, 0.03);
  if (deep || Math.abs(apart) < 3.5) return { value: told.value, relative };
  const shown = (kg: number) => `${(kg / gallon).toFixed(1)} gal`;
  remarks.push(
    `The water given, ${shown(told.value)}, doesn't fit: by its salts the bath would have had to boil elsewhere. The first readings say ${shown(seen)}, and that is taken. Check the water, the weight of the salts and the temperature's unit.`,
  );
  return { value: seen, relative: 0.6 };
}
