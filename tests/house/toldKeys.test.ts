import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';
import { expect, test } from 'vitest';
import sheets from '../../src/words/catalogue/sheets/de.json' with { type: 'json' };
import told from '../../src/words/catalogue/told/de.json' with { type: 'json' };
import { home } from './trackedFiles.ts';

/** Every source is read as a whole: a busy machine takes its time. */
const patienceMs = 120_000;
/** Where the sentences of these catalogues come from; what the gallery's people wrote is told as a sheet's own. */
const tellers = ['src', 'tests/gallery/records'];

/** Words that follow each other in a text, and those that begin and end one: what stands in a place comes between them. */
const said = { pairs: new Set<string>(), first: new Set<string>(), last: new Set<string>() };

function wordsOf(text: string): readonly string[] {
  return text.toLowerCase().match(/[\p{L}\p{N}’'°²-]+/gu) ?? [];
}

function hear(text: string): void {
  const words = wordsOf(text);
  if (words.length === 0) return;
  said.first.add(words[0]!);
  said.last.add(words.at(-1)!);
  for (const [place, word] of words.slice(1).entries()) said.pairs.add(`${words[place]} ${word}`);
}

function listen(node: ts.Node): void {
  if (ts.isStringLiteralLike(node) || ts.isJsxText(node)) hear(node.text);
  else if (ts.isTemplateExpression(node))
    for (const { text } of [node.head, ...node.templateSpans.map(({ literal }) => literal)]) hear(text);
  else if (ts.isPropertyAssignment(node) && ts.isIdentifier(node.name)) hear(node.name.text);
  ts.forEachChild(node, listen);
}

/** Two words of a key that no source says one after the other, nor ends and begins a text with. */
function unsaid(key: string): readonly string[] {
  return key.split(/\{\w+\}/).flatMap((run) => {
    const words = wordsOf(run);
    return words.slice(1).flatMap((word, place) => {
      const before = words[place]!;
      const found = said.pairs.has(`${before} ${word}`) || (said.last.has(before) && said.first.has(word));
      return found ? [] : [`${before} ${word}`];
    });
  });
}

test(
  'no sentence stays in the German of what is told and set once nothing says it any more',
  () => {
    for (const folder of tellers)
      for (const name of readdirSync(join(home, folder), { recursive: true, encoding: 'utf8' })) {
        if (!/\.tsx?$/.test(name) || /\.test\./.test(name) || name.includes('catalogue')) continue;
        const text = readFileSync(join(home, folder, name), 'utf8');
        listen(ts.createSourceFile(name, text, ts.ScriptTarget.ES2023, true));
      }
    expect(said.pairs.size).toBeGreaterThan(20_000);
    const stale = Object.keys({ ...told, ...sheets }).filter((key) => unsaid(key).length > 0);
    expect(stale.map((key) => `${key}: ${unsaid(key).join(', ')}`)).toEqual([]);
  },
  patienceMs,
);
