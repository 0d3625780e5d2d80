import fc from 'fast-check';
import { expect, it } from 'vitest';
import { type Span, without } from './spans.ts';

const taken = fc.array(
  fc.tuple(fc.nat(60), fc.nat(20)).map(([from, length]): Span => ({ from, to: from + length })),
  { maxLength: 12 },
);
/** In order and without overlap. */
const free = fc
  .uniqueArray(fc.nat(60), { maxLength: 10 })
  .map((ends) => ends.toSorted((a, b) => a - b))
  .map((ends): Span[] =>
    ends.flatMap((from, index) =>
      index % 2 === 0 && ends[index + 1] ? [{ from, to: ends[index + 1]! }] : [],
    ),
  );
const momentsIn = (spans: readonly Span[]) =>
  new Set(spans.flatMap(({ from, to }) => Array.from({ length: to - from }, (_, index) => from + index)));

it('leaves every moment that nothing takes, in order and without overlap, all at once or one by one', () => {
  fc.assert(
    fc.property(free, taken, (spans, gone) => {
      const left = without(spans, gone);
      const wanted = momentsIn(spans);
      for (const moment of momentsIn(gone)) wanted.delete(moment);
      expect(momentsIn(left)).toEqual(wanted);
      for (const [index, { from, to }] of left.entries()) {
        expect(from).toBeLessThan(to);
        if (index > 0) expect(from).toBeGreaterThanOrEqual(left[index - 1]!.to);
      }
      expect(momentsIn(gone.reduce<readonly Span[]>((rest, one) => without(rest, [one]), spans))).toEqual(
        wanted,
      );
    }),
  );
});
