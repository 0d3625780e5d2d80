import { expect, it } from 'vitest';
import { comparedWorks } from './comparedWorks.ts';

type Works = Parameters<typeof comparedWorks>[1];
const work = (id: string, photographs: readonly string[], zones: readonly string[] = []) =>
  ({
    id,
    photographs: photographs.map((photograph) => ({ photograph })),
    zones: zones.map((name) => ({ id: `${name}-id`, name })),
  }) as unknown as Works[number];
const compared = (zones: readonly string[] = []) =>
  ({
    stone: { photograph: 'stone' },
    proof: { photograph: 'print' },
    zones: zones.map((name) => ({ id: `${name}-id`, name })),
  }) as unknown as Parameters<typeof comparedWorks>[0];
const of = (zones: readonly string[], works: Works) =>
  comparedWorks(compared(zones), works).map(({ id }) => id);

it('gives a comparison to the work to which its print hangs, before one that shares the stone alone', () => {
  expect(of([], [work('before', ['stone']), work('after', ['stone', 'print'])])).toEqual(['after']);
  expect(of([], [work('before', ['stone']), work('after', ['print'])])).toEqual(['after']);
  expect(of([], [work('stone alone', ['stone']), work('on that stone', [])])).toEqual(['stone alone']);
});

it('lets the zones decide where the same photographs hang at two works, and says both where they do not', () => {
  const [sky, mud] = [work('sky', ['stone', 'print'], ['sky']), work('mud', ['stone', 'print'], ['mud'])];
  expect(of(['mud'], [sky, mud])).toEqual(['mud']);
  expect(of([], [sky, mud])).toEqual(['sky', 'mud']);
});
