import { comparisonFileNames } from '../application/comparison/comparisonFileNames.ts';
import { findingsTable } from '../application/testStones/findingsTable.ts';
import { patchesOfFile } from '../application/testStones/patchesOfFile.ts';
import {
  readTestPhotographs,
  type TestPhotographsRead,
} from '../application/testStones/readTestPhotographs.ts';
import { patchesFileSchema } from '../contract/patchesFile.ts';
import { ok, type Result } from '../foundation/result.ts';
import { type Hold, holds } from '../records/patchReading.ts';
import { holdRule } from '../studio/trials/reading/readHold.ts';
import { type OptionList, readArguments, required } from './arguments.ts';
import { readSize } from './compareArguments.ts';
import { chipsOf, endProgress, photographOptions, showProgress, sideOf } from './comparePhotographs.ts';
import { checkFolder, writeFolder } from './outputFolder.ts';
import { readJson } from './readJson.ts';

const options: OptionList = {
  ...photographOptions,
  patches: 'patches.json',
  chips: 'chips.json',
  out: 'reading',
};

const ownNames = ['patches.csv', 'reading.json'];

/**
 * `stonetone trial read`: reads a test stone made by hand, and one print of it, from photographs; writes the table that
 * `trial analyse` takes. @returns what is told at the end.
 */
export async function trialRead(words: readonly string[]): Promise<Result<string>> {
  const given = readArguments(words, options);
  if (!given.ok) return given;
  const out = required(given.value, 'out', options.out!);
  if (!out.ok) return out;
  const writable = await checkFolder(out.value);
  if (!writable.ok) return writable;
  const sizeText = required(given.value, 'size', options.size!);
  if (!sizeText.ok) return sizeText;
  const sizeMm = readSize(sizeText.value);
  if (!sizeMm.ok) return sizeMm;
  const file = required(given.value, 'patches', options.patches!);
  if (!file.ok) return file;
  const list = await readJson(file.value, patchesFileSchema, 'patches-malformed');
  if (!list.ok) return list;
  const stone = await sideOf(given.value, 'stone');
  if (!stone.ok) return stone;
  const proof = await sideOf(given.value, 'proof');
  if (!proof.ok) return proof;
  const chips = await chipsOf(given.value);
  if (!chips.ok) return chips;
  const { patches, factors } = patchesOfFile(list.value);
  const read = await readTestPhotographs(
    {
      stone: stone.value,
      proof: proof.value,
      sizeMm: sizeMm.value,
      patches,
      factors,
      chips: chips.value,
      ruler: list.value.ruler,
    },
    { progress: showProgress, stopped: () => false },
  );
  endProgress();
  if (!read.ok) return read;
  const { name } = list.value;
  const { findings, cautions, record } = read.value;
  const reading = { schema: 'stonetone/test-stone-reading/1', name, rule: holdRule, findings, cautions };
  const written = await writeFolder(
    out.value,
    new Map([
      ...read.value.files,
      ['patches.csv', Buffer.from(findingsTable(name, factors, findings))],
      ['reading.json', Buffer.from(`${JSON.stringify(reading, null, 1)}\n`)],
    ]),
    [...comparisonFileNames, ...ownNames],
  );
  if (!written.ok) return written;
  const told = record.verdict === 'ok' ? findingSentences(read.value) : [`Not read: ${record.reason}.`];
  return ok([...told, `Written to ${out.value}.`].join('\n'));
}

function findingSentences({ findings, cautions, record }: TestPhotographsRead): string[] {
  const counts = new Map<Hold, number>();
  for (const { hold } of findings) if (hold !== null) counts.set(hold, (counts.get(hold) ?? 0) + 1);
  const unsure = findings.filter(({ camera }) => camera.least !== camera.most).length;
  const parts = [...holds].reverse().map((hold) => `${counts.get(hold) ?? 0} ${hold}`);
  return [
    `${findings.length} patches: ${parts.join(', ')}.`,
    ...(unsure > 0
      ? [`Of ${unsure} of them the intervals leave another verdict possible; reading.json says which.`]
      : []),
    ...cautions.map(({ message }) => message),
    ...record.warnings.map(({ code, message }) => `${code}: ${message}`),
  ];
}
