import ts from 'typescript';
import { expect, test } from 'vitest';
import { sourcesBelow, textOf } from './trackedFiles.ts';

/** What the contract takes less of than the records know, on purpose: a batch is entered in the batch log, not in the kit. */
const fewer = new Set(['src/contract/kit.ts: batch']);

/** A file's texts that stand in one list or one union, each with where it stands. */
function listsOf(path: string, wanted: (node: ts.Node) => readonly ts.Node[] | null) {
  const file = ts.createSourceFile(path, textOf(path), ts.ScriptTarget.ES2023, true);
  const lists: { readonly path: string; readonly words: readonly string[] }[] = [];
  const visit = (node: ts.Node): void => {
    const words = wanted(node)?.map((one) => {
      const text = ts.isLiteralTypeNode(one) ? one.literal : one;
      return ts.isStringLiteral(text) ? text.text : null;
    });
    if (words && words.length > 1 && words.every((word) => word !== null)) lists.push({ path, words });
    ts.forEachChild(node, visit);
  };
  visit(file);
  return lists;
}

/** Unions of words that the records are made of. */
const unions = ['src/records/', 'src/foundation/', 'src/science/'].flatMap((room) =>
  sourcesBelow(room).flatMap((path) =>
    listsOf(path, (node) =>
      ts.isUnionTypeNode(node)
        ? node.types.filter((type) => !/^(null|undefined)$/.test(type.getText()))
        : null,
    ),
  ),
);

const enums = sourcesBelow('src/contract/')
  .filter((path) => !path.endsWith('.test.ts'))
  .flatMap((path) =>
    listsOf(path, (node) => {
      if (!ts.isCallExpression(node) || node.expression.getText() !== 'z.enum') return null;
      const [list] = node.arguments;
      return list && ts.isArrayLiteralExpression(list) ? list.elements : null;
    }),
  );

// `satisfies` lets a list through that lacks a word: what the records gained would be refused over HTTP.
test('what a record may say, the contract takes', () => {
  expect(enums.length).toBeGreaterThan(60);
  const lacking = enums.flatMap(({ path, words }) => {
    const holding = unions
      .map((union) => union.words)
      .filter((union) => words.every((word) => union.includes(word)))
      .sort((one, other) => one.length - other.length)[0];
    return (holding ?? []).filter((word) => !words.includes(word)).map((word) => `${path}: ${word}`);
  });
  expect(lacking.filter((one) => !fewer.has(one))).toEqual([]);
});
