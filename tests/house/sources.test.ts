import ts from 'typescript';
import { expect, test } from 'vitest';
import { sourcesBelow, textFiles, textOf } from './trackedFiles.ts';

/** One concept to a file: more than this is two. */
const mostLines = 300;

/**
 * Short forms that this house writes out; mm, px and ml are the only ones it takes. Words that a library's own
 * options are called by stand in `named`.
 */
const shortForms = new Set(
  (
    'addr amt args arr attr avg bg btn buf calc cb cfg cmd cnt col cols conf coord coords ctx cur curr decl def del desc ' +
    'dest dev dict diff dim dims dir dirs dist doc docs dst elem elems env err ev evt expr fg fmt fn fns func funcs gen hdr hgt ' +
    'idx img imgs impl init iter lbl len lhs lib lnk loc lvl mgr msg msgs mult norm num nums obj objs opt opts param pct ' +
    'perc pic pkg pos pred prev proc ptr pwd qty rand rec recs rect refs req res resp ret rhs rot seq sep sig spec src std stdev str ' +
    'sz tbl temp thr tmp tot txt usr util utils val vals vec ver vert wid win'
  ).split(' '),
);

/** What libraries call their own options, and what a file format calls its own fields. */
const named = new Set([
  'fn',
  'mutationFn',
  'queryFn',
  'pageParam',
  'initialPageParam',
  'getNextPageParam',
  'maxParamLength',
]);

/** Every name that each file of src gives: variables, functions, types, parameters, properties. */
const namesOf: ReadonlyMap<string, ReadonlySet<string>> = new Map(
  sourcesBelow('src/')
    .filter((path) => /\.tsx?$/.test(path) && !path.endsWith('.d.ts'))
    .map((path) => [path, namesGiven(path)]),
);

function namesGiven(path: string): Set<string> {
  const file = ts.createSourceFile(path, textOf(path), ts.ScriptTarget.ES2023);
  const names = new Set<string>();
  const visit = (node: ts.Node): void => {
    const given =
      ts.isVariableDeclaration(node) ||
      ts.isFunctionDeclaration(node) ||
      ts.isClassDeclaration(node) ||
      ts.isInterfaceDeclaration(node) ||
      ts.isTypeAliasDeclaration(node) ||
      ts.isParameter(node) ||
      ts.isPropertySignature(node) ||
      ts.isPropertyDeclaration(node) ||
      ts.isMethodDeclaration(node) ||
      ts.isBindingElement(node)
        ? node.name
        : undefined;
    if (given && ts.isIdentifier(given)) names.add(given.text);
    ts.forEachChild(node, visit);
  };
  visit(file);
  return names;
}

const shortIn = (name: string): string[] =>
  name
    .split(/(?=[A-Z])|[_\d]+/)
    .map((word) => word.toLowerCase())
    .filter((word) => shortForms.has(word));

test(`no file of src is longer than ${mostLines} lines`, () => {
  const long = sourcesBelow('src/')
    .map((path) => [path, textOf(path).split('\n').length - 1] as const)
    .filter(([, lines]) => lines > mostLines);
  expect(long).toEqual([]);
});

test('every function that a file hands out says what it does, but for those of the screens', () => {
  const unsaid = sourcesBelow('src/')
    .filter((path) => path.endsWith('.ts') && !/^src\/web\/|\.(?:test|d)\.ts$/.test(path))
    .flatMap((path) => {
      const lines = textOf(path).split('\n');
      return lines.flatMap((line, at) => {
        const [, name] = /^export (?:async )?function\*? (\w+)/.exec(line) ?? [];
        return name && !/\*\/$/.test(lines[at - 1] ?? '') ? [`${path} ${name}`] : [];
      });
    });
  expect(unsaid).toEqual([]);
});

test('names are English words written out', () => {
  const found = [...namesOf]
    .flatMap(([path, names]) => [...names].map((name) => ({ path, name })))
    .filter(({ name }) => !named.has(name) && shortIn(name).length > 0);
  expect(found).toEqual([]);
});

test('names and file names keep to the letters of English', () => {
  const foreign = [
    ...sourcesBelow('src/').filter((path) => /[^\w./-]/.test(path)),
    ...[...namesOf]
      .filter(([, names]) => [...names].some((name) => /[^\w$]/.test(name)))
      .map(([path]) => path),
  ];
  expect(foreign).toEqual([]);
});

test('no file names a place on somebody’s machine, or a package registry', () => {
  const places = [
    /(?<![\w.:/~-])\/(?:work|home|root|Users|mnt|private|tmp)\/\w/,
    /\b[A-Z]:\\\\?(?:Users|home)/,
    /\bregistry\.[a-z]+\.[a-z]+/,
    /\b(?:npm|packages|artifactory|nexus|verdaccio)\.[a-z-]+\.(?:com|net|io|internal|local|lan)\b/,
  ];
  const found = textFiles.flatMap((path) => {
    const lines = textOf(path).split('\n');
    return lines.flatMap((line, i) =>
      places.some((place) => place.test(line)) ? [`${path}:${i + 1}: ${line.slice(0, 120)}`] : [],
    );
  });
  expect(found).toEqual([]);
});
