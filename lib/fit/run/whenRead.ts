/**
 * A result some parts of which are worked out when they are first read, and then kept. To every reader, and to what
 * copies it (a spread, `structuredClone` on the way to another thread), it is plain data.
 *
 * @param now parts that are there
 * @param later how each other part is worked out; it throws when it is read, if it throws
 * @example whenRead({ a: 1 }, { b: () => 2 }).b // 2
 */
export function whenRead<Now extends object, Later extends object>(
  now: Now,
  later: { readonly [Part in keyof Later]: () => Later[Part] },
): Now & Later {
  const whole = { ...now };
  for (const part of Object.keys(later) as (keyof Later)[]) {
    const put = (how: PropertyDescriptor) =>
      Object.defineProperty(whole, part, { enumerable: true, configurable: true, ...how });
    put({
      get: () => {
        const value = later[part]();
        put({ value });
        return value;
      },
    });
  }
  return whole as Now & Later;
}
