import type { MeasureSide } from '../application/comparison/measureInput.ts';
import { readChips } from '../contract/chips.ts';
import { ok, type Result } from '../foundation/result.ts';
import type { Chip } from '../records/zone.ts';
import { type Arguments, type OptionList, required } from './arguments.ts';
import { readCorners } from './compareArguments.ts';
import { readPhotograph, readText } from './readInput.ts';

/** The options that name both photographs and what goes with them, each with an example. */
export const photographOptions = {
  stone: 'stone.jpg',
  proof: 'print.jpg',
  size: '300x400',
  'stone-corners': '"x,y x,y x,y x,y"',
  'proof-corners': '"x,y x,y x,y x,y"',
  'stone-repeat': 'stone-again.jpg',
  'proof-repeat': 'print-again.jpg',
  'stone-flat': 'white-sheet.jpg',
  'proof-flat': 'white-sheet.jpg',
} as const satisfies OptionList;

/** One of the two photographs with its corners, and what goes with it. */
export async function sideOf(given: Arguments, side: 'stone' | 'proof'): Promise<Result<MeasureSide>> {
  const file = required(given, side, photographOptions[side]);
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
