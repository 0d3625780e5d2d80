import type { MeasureSide } from '../application/comparison/measureInput.ts';
import { readChips } from '../contract/chips.ts';
import { ok, type Result } from '../foundation/result.ts';
import type { Chip } from '../records/zone.ts';
import { type Arguments, required } from './arguments.ts';
import { readCorners } from './compareArguments.ts';
import { readPhotograph, readText } from './readInput.ts';

/** What is shown in place of a path that is missing. */
const examples = { stone: 'stone.jpg', proof: 'print.jpg' } as const;

/** One of the two photographs with its corners, and what goes with it. */
export async function sideOf(given: Arguments, side: 'stone' | 'proof'): Promise<Result<MeasureSide>> {
  const file = required(given, side, examples[side]);
  if (!file.ok) return file;
  const corners = readCorners(given.options.get(`${side}-corners`), side);
  if (!corners.ok) return corners;
  const photo = await readPhotograph(file.value);
  if (!photo.ok) return photo;
  const repeat = await readPhotograph(given.options.get(`${side}-repeat`));
  if (!repeat.ok) return repeat;
  const flat = await readPhotograph(given.options.get(`${side}-flat`));
  if (!flat.ok) return flat;
  return ok({ ...photo.value!, corners: corners.value, repeat: repeat.value, flat: flat.value });
}

/** chips.json; none where it isn't given. */
export function chipsOf(given: Arguments): Promise<Result<readonly Chip[]>> {
  return listOf(given, 'chips', readChips);
}

/** A list out of a JSON file; empty where none is given. */
export async function listOf<T>(
  given: Arguments,
  name: 'zones' | 'chips',
  read: (text: string) => Result<readonly T[]>,
): Promise<Result<readonly T[]>> {
  const file = given.options.get(name);
  if (file === undefined) return ok([]);
  const text = await readText(file);
  return text.ok ? read(text.value) : text;
}

/** How far it is, on a terminal. */
export function showProgress({
  stage,
  fraction,
}: {
  readonly stage: string;
  readonly fraction: number;
}): void {
  if (process.stderr.isTTY) process.stderr.write(`\r${stage} ${Math.round(fraction * 100)} %   `);
}

/** Takes that line away. */
export function endProgress(): void {
  if (process.stderr.isTTY) process.stderr.write('\r                      \r');
}
