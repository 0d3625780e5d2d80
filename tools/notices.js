/**
 * Writes THIRD-PARTY-NOTICES from the lock file and node_modules: what an installed Stonetone runs, what its screens
 * carry, its fonts, and where the pictures of its tests and benches come from.
 *
 *   node tools/notices.js           writes the file
 *   node tools/notices.js --check   ends with 1 where the file is not what would be written
 */
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const home = fileURLToPath(new URL('..', import.meta.url));
const target = `${home}THIRD-PARTY-NOTICES`;
const locked = JSON.parse(readFileSync(`${home}package-lock.json`, 'utf8')).packages;

/** Bundled into the screens, though only needed to build them: what src/web imports. */
function carriedByTheScreens() {
  const sources = readdirSync(`${home}src/web`, { recursive: true })
    .filter((name) => /\.tsx?$/.test(name) && !/\.test\.tsx?$/.test(name))
    .map((name) => readFileSync(`${home}src/web/${name}`, 'utf8'));
  const asked = sources.flatMap((text) =>
    [...text.matchAll(/(?:from|import) '([^.'/][^']*)'/g)].map(([, name]) =>
      name
        .split('/')
        .slice(0, name.startsWith('@') ? 2 : 1)
        .join('/'),
    ),
  );
  const found = new Set();
  const add = (path) => {
    if (!(path in locked) || found.has(path)) return;
    found.add(path);
    for (const name of Object.keys(locked[path].dependencies ?? {})) {
      const inner = `${path}/node_modules/${name}`;
      add(inner in locked ? inner : `node_modules/${name}`);
    }
  };
  for (const name of asked) add(`node_modules/${name}`);
  return found;
}

/** A licence that a package states nowhere in its package.json, as its own text has it. */
const statedElsewhere = { 'png-js': 'MIT' };

function nameOf(path) {
  return path.slice(path.lastIndexOf('node_modules/') + 'node_modules/'.length);
}

function licenceTextOf(path) {
  const folder = `${home}${path}`;
  if (!existsSync(folder)) return null;
  const texts = readdirSync(folder)
    .filter((name) => /^(licen[cs]e|copying|ofl)([._-].*)?$/i.test(name))
    .toSorted()
    .map((name) => readFileSync(`${folder}/${name}`, 'utf8').replaceAll('\r\n', '\n').trim());
  return texts.length > 0 ? texts.join('\n\n') : null;
}

const screens = carriedByTheScreens();
const shipped = Object.entries(locked)
  .filter(([path, entry]) => path !== '' && (!entry.dev || screens.has(path)))
  .map(([path, entry]) => ({
    path,
    name: nameOf(path),
    version: entry.version,
    licence: entry.license ?? statedElsewhere[nameOf(path)] ?? 'see its text',
    // Built for one kind of machine: not there on others, so its text is left to its own folder.
    forOneMachine: entry.optional === true,
  }))
  .toSorted((a, b) => (`${a.name} ${a.version}` < `${b.name} ${b.version}` ? -1 : 1));

/** Equal texts are printed once, under the names of all that carry them. */
const byText = new Map();
for (const one of shipped) {
  if (one.forOneMachine) continue;
  const text = licenceTextOf(one.path);
  if (text === null) continue;
  const key = text.replace(/\s+/g, ' ');
  const group = byText.get(key) ?? { text, names: [] };
  group.names.push(`${one.name} ${one.version}`);
  byText.set(key, group);
}

const pictures = ['bench', 'tests']
  .flatMap((room) =>
    readdirSync(`${home}${room}`, { recursive: true }).map((name) => `${room}/${name.replaceAll('\\', '/')}`),
  )
  .filter((path) => /\/(data|pictures)\/(.*\/)?(SOURCES|README)\.md$/.test(path))
  .toSorted();

const rule = '-'.repeat(79);
const line = ({ name, version, licence, forOneMachine }) =>
  `${name} ${version}: ${licence}${forOneMachine ? ' (only on the machines it is built for)' : ''}`;
const notices = `Third-party notices of Stonetone
Written by tools/notices.js; do not edit.

Stonetone is under the MIT licence (LICENSE). It installs, or carries in its screens, the packages listed here, each
under its own licence; their texts follow. Packages under the LGPL are installed beside it as they are, unchanged.

Fonts: Archivo and Archivo Narrow, Copyright 2020 The Archivo Project Authors
(https://github.com/Omnibus-Type/Archivo), SIL Open Font License 1.1, from the packages of their names below.
PDFs and screens carry them.

Pictures of tests and benches, each with source and licence beside it; none is part of the built program:
${pictures.map((path) => `  ${path}`).join('\n')}
The demo pair "Low Water" and all other rendered pictures are the project's own.

${rule}
Packages
${rule}
${shipped.map(line).join('\n')}

${[...byText.values()].map(({ text, names }) => `${rule}\n${names.join('\n')}\n${rule}\n${text}\n`).join('\n')}`;

if (process.argv.includes('--check')) {
  const kept = existsSync(target) ? readFileSync(target, 'utf8') : '';
  if (kept !== notices) {
    console.error('THIRD-PARTY-NOTICES is not up to date. Run: npm run notices');
    process.exitCode = 1;
  }
} else {
  writeFileSync(target, notices);
}
