import { dirname, normalize } from 'node:path';
import { expect, test } from 'vitest';
import { sourcesBelow, textOf } from './trackedFiles.ts';

const tests = [...sourcesBelow('src/'), ...sourcesBelow('tests/')].filter((path) =>
  /\.test\.tsx?$/.test(path),
);
const asked = new Set(
  tests.flatMap((path) =>
    [...textOf(path).matchAll(/from '(\.[^']+)'/g)].map(([, from]) => normalize(`${dirname(path)}/${from}`)),
  ),
);

test('every formula is asked by a test of its own, not only through what uses it', () => {
  const formulas = sourcesBelow('src/science/').filter(
    (path) => !path.endsWith('.test.ts') && /^export (async )?function/m.test(textOf(path)),
  );
  expect(formulas.length).toBeGreaterThan(50);
  expect(formulas.filter((path) => !asked.has(path))).toEqual([]);
});
