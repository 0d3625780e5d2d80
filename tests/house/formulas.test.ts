import { dirname, normalize } from 'node:path';
import { expect, test } from 'vitest';
import { sourcesBelow, textOf } from './trackedFiles.ts';

const tests = [...sourcesBelow('src/'), ...sourcesBelow('tests/')].filter((path) =>
  /\.test\.tsx?$/.test(path),
);
/** What tests import, as `path name`. */
const asked = new Set(
  tests.flatMap((path) =>
    [...textOf(path).matchAll(/import \{([^}]*)\} from '(\.[^']+)'/g)].flatMap(([, names, from]) =>
      names!
        .split(',')
        .map((name) => `${normalize(`${dirname(path)}/${from}`)} ${name.trim().split(' as ')[0]}`),
    ),
  ),
);
const formulas = sourcesBelow('src/science/').filter(
  (path) => !path.endsWith('.test.ts') && /^export (async )?function/m.test(textOf(path)),
);

test('every formula is asked by name in a test, not only through what uses it', () => {
  const named = formulas.flatMap((path) =>
    [...textOf(path).matchAll(/^export (?:async )?function (\w+)/gm)].map(([, name]) => `${path} ${name}`),
  );
  expect(named.length).toBeGreaterThan(100);
  expect(named.filter((formula) => !asked.has(formula))).toEqual([]);
});

test('every file of formulas names where they are from, or says that nobody else vouches for them', () => {
  const source = /\b(1[5-9]\d\d|20\d\d)\b|\bdoi |NIST|USP|from memory|common practice|our rule|by definition/;
  expect(formulas.filter((path) => !source.test(textOf(path)))).toEqual([]);
});
