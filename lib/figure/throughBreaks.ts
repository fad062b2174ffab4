import type { BrokenScale } from "./brokenScale.ts";
import type { CoursePoint } from "./types.ts";

/**
 * A course with points added where its line or an edge of its spread passes a change of the rule's scale, so that it
 * bends there and nowhere else. Points in order of time, K.
 * @example
 * const scale = brokenScale([287, 295], [70, 280, 297], { top: 20, bottom: 380, least: 8 });
 * throughBreaks([{ time: 0, value: 70, low: 70, high: 70 }, { time: 600, value: 290, low: 290, high: 290 }], scale).length // 3
 */
export function throughBreaks(course: readonly CoursePoint[], scale: BrokenScale): readonly CoursePoint[] {
  const changes = scale.stretches.slice(1).map((stretch) => stretch.low);
  if (changes.length === 0) return course;
  return course.flatMap((to, index) => {
    const from = course[index - 1];
    if (!from) return [to];
    const shares = changes.flatMap((change) =>
      (["value", "low", "high"] as const)
        .filter((key) => (from[key] - change) * (to[key] - change) < 0)
        .map((key) => (change - from[key]) / (to[key] - from[key])),
    );
    const between = [...new Set(shares)]
      .sort((a, b) => a - b)
      .map((share): CoursePoint => {
        const mix = (key: keyof CoursePoint) => from[key] + share * (to[key] - from[key]);
        return { time: mix("time"), value: mix("value"), low: mix("low"), high: mix("high") };
      });
    return [...between, to];
  });
}
