/**
 * Keeps the catalogue of src/web/words in step with the screens: every sentence that `say` and `sayRich` are given
 * goes into `catalogue/en/<room>.json`, in each other language the same keys with their translations.
 * `--check` changes nothing and ends with status 1 where something is missing, unused or at odds.
 */
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { IntlMessageFormat } from 'intl-messageformat';
import ts from 'typescript';

const home = fileURLToPath(new URL('../', import.meta.url));
const screens = join(home, 'src/web');
const catalogue = join(screens, 'words/catalogue');
const others = { de: 'german' };
/** Attributes that a person reads or hears. */
const readAloud =
  /^(aria-label|aria-valuetext|aria-roledescription|alt|title|placeholder|label|hint|headline|stamp|act)$/;
/** Words that are the same everywhere: the name of the tool, and what is typed as it stands. */
const sameEverywhere = /^(Stonetone|PDF|CSV|ZIP|mm|ml|px|in|g|D|pH|σ|EOF)$/;

const check = process.argv.includes('--check');
const faults = [];
/** Sentence → the rooms that say it. */
const said = new Map();

for (const path of sources(screens)) readSource(path);
const rooms = roomsOf(said);
const wanted = new Map();
wantedLanguage('en', (sentence) => sentence);
for (const [language, name] of Object.entries(others)) {
  const kept = keptWords(language);
  wantedLanguage(language, (sentence) => kept.get(sentence) ?? '');
  wanted.set(join(catalogue, `${name}.ts`), listOf(language, name));
  if (check) for (const sentence of said.keys()) compare(language, sentence, kept.get(sentence) ?? '');
}
if (check) compareFiles();
else {
  writeFiles();
  tellWhatWaits();
}

if (faults.length > 0) console.error(faults.join('\n'));
if (check && faults.length > 0) process.exitCode = 1;

function sources(folder) {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((path) => /\.tsx?$/.test(path) && !/\.test\.|\.testing\.|\.d\.ts$|^words\/catalogue\//.test(path))
    .map((path) => join(folder, path))
    .sort();
}

function readSource(path) {
  const file = ts.createSourceFile(path, readFileSync(path, 'utf8'), ts.ScriptTarget.ES2023, true);
  const place = (node) =>
    `${relative(home, path)}:${file.getLineAndCharacterOfPosition(node.getStart(file)).line + 1}`;
  const visit = (node) => {
    if (ts.isCallExpression(node) && /^(say|sayRich)$/.test(node.expression.getText(file))) {
      readSentence(node, place(node), roomOf(path));
    }
    if (ts.isJsxText(node) && isBare(node.text) && !isCode(node.parent)) {
      faults.push(`${place(node)}: bare words on a screen: ${node.text.trim()}`);
    }
    if (ts.isJsxAttribute(node) && readAloud.test(node.name.getText(file))) {
      const value = node.initializer;
      if (value && ts.isStringLiteral(value) && isBare(value.text)) {
        faults.push(`${place(node)}: bare words in ${node.name.getText(file)}: ${value.text}`);
      }
    }
    ts.forEachChild(node, visit);
  };
  visit(file);
}

function isBare(text) {
  return text.split(/[\s·×–,:.()/]+/).some((word) => /\p{L}/u.test(word) && !sameEverywhere.test(word));
}

function isCode(element) {
  return ts.isJsxElement(element) && /^(code|kbd|samp)$/.test(element.openingElement.tagName.getText());
}

function readSentence(call, place, room) {
  const [sentence, values] = call.arguments;
  if (!sentence || !ts.isStringLiteralLike(sentence)) {
    // The sentences of src/web/words are handed on, not said.
    if (!place.startsWith('src/web/words/')) faults.push(`${place}: not a literal sentence`);
    return;
  }
  if (!said.has(sentence.text)) said.set(sentence.text, new Set());
  said.get(sentence.text).add(room);
  // What is spread in cannot be seen here.
  if (values && !(ts.isObjectLiteralExpression(values) && values.properties.every((one) => one.name))) return;
  const given = new Set((values?.properties ?? []).map((property) => property.name?.getText()));
  for (const name of placesOf(sentence.text, place)) {
    const plain = name.replace(/^<|>$/g, '');
    if (!given.has(plain)) faults.push(`${place}: nothing is given for ${name} of: ${sentence.text}`);
  }
}

/** The placeholders and tags of a sentence: `name`, `<b>`. */
function placesOf(sentence, place) {
  const found = new Set();
  const walk = (elements) => {
    for (const element of elements) {
      // literal 0, argument 1, number 2, date 3, time 4, select 5, plural 6, pound 7, tag 8
      if (element.type >= 1 && element.type <= 6) found.add(element.value);
      if (element.type === 8) found.add(`<${element.value}>`);
      if (element.children) walk(element.children);
      for (const option of Object.values(element.options ?? {})) walk(option.value);
    }
  };
  try {
    walk(new IntlMessageFormat(sentence, 'en').getAst());
  } catch (thrown) {
    faults.push(`${place}: ${thrown.message} in: ${sentence}`);
  }
  return found;
}

/** `screens/kit/…` and `managers/kit/…` are the room kit; what lies in no folder belongs to the folder above. */
function roomOf(path) {
  const [folder, inner, file] = relative(screens, path).split('/');
  return file !== undefined ? inner : folder.replace(/\.tsx?$/, '');
}

function roomsOf(sentences) {
  const found = new Map();
  for (const [sentence, speakers] of sentences) {
    const room = speakers.size > 1 ? 'everywhere' : [...speakers][0];
    if (!found.has(room)) found.set(room, []);
    found.get(room).push(sentence);
  }
  return found;
}

function keptWords(language) {
  const folder = join(catalogue, language);
  if (!existsSync(folder)) return new Map();
  const files = readdirSync(folder).filter((name) => name.endsWith('.json'));
  return new Map(
    files.flatMap((name) => Object.entries(JSON.parse(readFileSync(join(folder, name), 'utf8')))),
  );
}

function wantedLanguage(language, wordsOf) {
  for (const [room, sentences] of rooms) {
    const entries = sentences.toSorted().map((sentence) => [sentence, wordsOf(sentence)]);
    wanted.set(
      join(catalogue, language, `${room}.json`),
      `${JSON.stringify(Object.fromEntries(entries), null, 2)}\n`,
    );
  }
}

function listOf(language, name) {
  const names = [...rooms.keys()].toSorted();
  return `// written by tools/words.js
${names.map((room) => `import ${room} from './${language}/${room}.json' with { type: 'json' };`).join('\n')}

/** English sentence → the same in ${name.replace(/^./, (letter) => letter.toUpperCase())}, of all rooms. */
export const ${name}: Readonly<Record<string, string>> = {
${names.map((room) => `  ...${room},`).join('\n')}
};
`;
}

function compare(language, sentence, translation) {
  if (translation === '') {
    faults.push(`${language}: not translated: ${sentence}`);
    return;
  }
  const theirs = [...placesOf(translation, language)].toSorted().join(' ');
  const ours = [...placesOf(sentence, 'en')].toSorted().join(' ');
  if (theirs !== ours) faults.push(`${language}: other places (${theirs}) than (${ours}): ${sentence}`);
}

function keptFiles() {
  return ['en', ...Object.keys(others)]
    .map((language) => join(catalogue, language))
    .filter(existsSync)
    .flatMap((folder) => readdirSync(folder).map((name) => join(folder, name)));
}

function compareFiles() {
  for (const path of keptFiles()) {
    if (!wanted.has(path)) faults.push(`${relative(home, path)}: no longer said; run npm run words`);
  }
  for (const [path, text] of wanted) {
    if (!existsSync(path) || readFileSync(path, 'utf8') !== text) {
      faults.push(`${relative(home, path)}: not as the screens have it; run npm run words`);
    }
  }
}

/** Where translations are missing: those are empty in the files that were just written. */
function tellWhatWaits() {
  for (const [path, text] of wanted) {
    if (!path.endsWith('.json')) continue;
    const missing = Object.values(JSON.parse(text)).filter((translation) => translation === '').length;
    if (missing > 0) console.log(`${relative(home, path)}: to be translated: ${missing}`);
  }
}

function writeFiles() {
  for (const path of keptFiles()) if (!wanted.has(path)) rmSync(path);
  for (const [path, text] of wanted) {
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, text);
  }
}
