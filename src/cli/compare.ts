import { comparisonFileNames } from '../application/comparison/comparisonFileNames.ts';
import type { MeasureInput } from '../application/comparison/measureInput.ts';
import { measureComparison } from '../application/measureComparison.ts';
import { readZones } from '../contract/zones.ts';
import { ok, type Result } from '../foundation/result.ts';
import type { ComparisonRecord } from '../records/comparison.ts';
import { findingSentence } from '../studio/proofs/comparisonWords.ts';
import { type Arguments, type OptionList, readArguments, required } from './arguments.ts';
import { readSize } from './compareArguments.ts';
import {
  chipsOf,
  endProgress,
  listOf,
  photographOptions,
  showProgress,
  sideOf,
} from './comparePhotographs.ts';
import { exitDone, exitRefused } from './exitStatus.ts';
import { checkFolder, writeFolder } from './outputFolder.ts';
import { reportFailure } from './report.ts';

export const compareOptions: OptionList = {
  ...photographOptions,
  zones: 'zones.json',
  chips: 'chips.json',
  out: 'result',
};

/** `stonetone compare`: measures a print against its stone and writes the record, pictures and sheet into a folder. */
export async function compare(words: readonly string[]): Promise<number> {
  const given = readArguments(words, compareOptions);
  if (!given.ok) return reportFailure(given.error);
  const out = required(given.value, 'out', compareOptions.out!);
  if (!out.ok) return reportFailure(out.error);
  const writable = await checkFolder(out.value);
  if (!writable.ok) return reportFailure(writable.error);
  const input = await measureInputOf(given.value);
  if (!input.ok) return reportFailure(input.error);
  const measured = await measureComparison(
    input.value,
    { progress: showProgress, stopped: () => false },
    new Date(),
  );
  endProgress();
  if (!measured.ok) return reportFailure(measured.error);
  const written = await writeFolder(out.value, measured.value.files, comparisonFileNames);
  if (!written.ok) return reportFailure(written.error);
  sayResult(measured.value.record, out.value);
  return measured.value.record.verdict === 'ok' ? exitDone : exitRefused;
}

async function measureInputOf(given: Arguments): Promise<Result<MeasureInput>> {
  const sizeText = required(given, 'size', compareOptions.size!);
  if (!sizeText.ok) return sizeText;
  const sizeMm = readSize(sizeText.value);
  if (!sizeMm.ok) return sizeMm;
  const stone = await sideOf(given, 'stone');
  if (!stone.ok) return stone;
  const proof = await sideOf(given, 'proof');
  if (!proof.ok) return proof;
  const zones = await listOf(given, 'zones', readZones);
  if (!zones.ok) return zones;
  const chips = await chipsOf(given);
  if (!chips.ok) return chips;
  return ok({
    stone: stone.value,
    proof: proof.value,
    sizeMm: sizeMm.value,
    zones: zones.value,
    chips: chips.value,
  });
}

function sayResult(record: ComparisonRecord, folder: string): void {
  console.log(findingSentence(record));
  if (record.reason) console.log(`Why: ${record.reason}.`);
  for (const warning of record.warnings) console.log(`${warning.code}: ${warning.message}`);
  console.log(`Written to ${folder}.`);
}
