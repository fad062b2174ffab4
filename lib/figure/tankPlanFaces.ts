type Corner = readonly [x: number, y: number, z: number];

/** From above, or from the side that is the lower edge of the view from above. */
export type View = "above" | "side";

/**
 * The six faces of a bar, the farthest from the eye first, so that those drawn later hide those behind.
 *
 * @param corners eight, bit 1, 2 and 4 of a corner's place saying on which end of each edge it is
 * @param view from where
 * @returns each face's four corners in their round
 * @throws RangeError for another number of corners
 * @example
 * const cube = [0, 1, 2, 3, 4, 5, 6, 7].map((i) => [i & 1, (i & 2) / 2, (i & 4) / 4]);
 * barFaces(cube, "above").at(-1); // [[0, 0, 1], [1, 0, 1], [1, 1, 1], [0, 1, 1]]
 */
export function barFaces(corners: readonly Corner[], view: View): readonly (readonly Corner[])[] {
  if (corners.length !== 8) throw new RangeError(`invalid part: ${corners.length} corners; 8 of a bar`);
  const nearness = ([, y, z]: Corner) => (view === "above" ? z : -y);
  const faces = [
    [1, 2, 4],
    [2, 1, 4],
    [4, 1, 2],
  ].flatMap(([across = 0, one = 0, two = 0]) =>
    [0, across].map((base) => {
      const round = [base, base + one, base + one + two, base + two];
      return round.map((place) => corners[place]).filter((corner) => corner !== undefined);
    }),
  );
  const near = (face: readonly Corner[]) => face.reduce((sum, corner) => sum + nearness(corner), 0);
  return faces
    .map((face) => ({ face, at: near(face) }))
    .sort((a, b) => a.at - b.at)
    .map(({ face }) => face);
}
