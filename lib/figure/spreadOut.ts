/**
 * Centres for things in a row so that none meets its neighbour, each as near to where it belongs as the others let it,
 * in the order given; nothing where they do not fit between `low` and `high`. All in px; `wanted` in rising order.
 * @example spreadOut([50, 52], [20, 20], { gap: 4, low: 0, high: 100 }) // [39, 63]
 */
export function spreadOut(
  wanted: readonly number[],
  sizes: readonly number[],
  room: { readonly gap: number; readonly low: number; readonly high: number },
): readonly number[] | undefined {
  const size = (index: number): number => sizes[index] ?? 0;
  const whole = wanted.reduce((sum, _, index) => sum + size(index), 0) + room.gap * Math.max(0, wanted.length - 1);
  if (whole > room.high - room.low) return undefined;
  // Things that would meet become one block, centred where its members would like to be on average.
  const blocks: { first: number; count: number; length: number; start: number; wish: number }[] = [];
  const settle = (block: { length: number; wish: number; count: number }): number =>
    Math.min(Math.max(block.wish / block.count, room.low), room.high - block.length);
  wanted.forEach((centre, index) => {
    let block = { first: index, count: 1, length: size(index), start: 0, wish: centre - size(index) / 2 };
    block.start = settle(block);
    let before = blocks.at(-1);
    while (before && before.start + before.length + room.gap > block.start) {
      blocks.pop();
      const joined = before.length + room.gap + block.length;
      // A member's wish for the block's start is its own start less its place within.
      const wish = before.wish + block.wish - block.count * (before.length + room.gap);
      block = { first: before.first, count: before.count + block.count, length: joined, start: 0, wish };
      block.start = settle(block);
      before = blocks.at(-1);
    }
    blocks.push(block);
  });
  return blocks.flatMap((block) => {
    let along = block.start;
    return Array.from({ length: block.count }, (_, offset) => {
      const centre = along + size(block.first + offset) / 2;
      along += size(block.first + offset) + room.gap;
      return centre;
    });
  });
}
