import { readFile } from 'node:fs/promises';
import { basename, join } from 'node:path';
import type {
  MeasureInput,
  MeasureSide,
  PhotographFile,
} from '../src/application/comparison/measureInput.ts';
import { decodePhotograph } from '../src/imaging/codecs/decodePhotograph.ts';
import type { Chip, Zone } from '../src/records/zone.ts';
import type { Truth } from '../src/sample/render/truth.ts';
import type { Corners, Point } from '../src/science/geometry/point.ts';
import type { BenchPair } from './benchPair.ts';
import { kindOf } from './cases.ts';

interface PairArguments {
  readonly stone: string;
  readonly proof: string;
  readonly size: string;
  readonly 'stone-corners'?: Corners;
  readonly 'proof-corners'?: Corners;
  readonly 'stone-repeat'?: string;
  readonly 'proof-repeat'?: string;
  readonly 'stone-flat'?: string;
  readonly 'proof-flat'?: string;
  readonly zones?: string;
  readonly chips?: string;
}

/** What a pair folder asks to have measured: pictures, arguments.json, zones.json, chips.json. */
export async function readPairInput(folder: string): Promise<MeasureInput> {
  const json = async <T>(name: string) => JSON.parse(await readFile(join(folder, name), 'utf8')) as T;
  const given = await json<PairArguments>('arguments.json');
  const photograph = async (fileName: string): Promise<PhotographFile> => ({
    bytes: await readFile(join(folder, fileName)),
    fileName,
  });
  const perhaps = (fileName: string | undefined) => (fileName ? photograph(fileName) : null);
  const side = async (name: 'stone' | 'proof'): Promise<MeasureSide> => ({
    ...(await photograph(given[name])),
    corners: given[`${name}-corners`] ?? null,
    repeat: await perhaps(given[`${name}-repeat`]),
    flat: await perhaps(given[`${name}-flat`]),
  });
  return {
    stone: await side('stone'),
    proof: await side('proof'),
    sizeMm: given.size.split('x').map(Number) as unknown as Point,
    zones: given.zones ? await json<Zone[]>(given.zones) : [],
    chips: given.chips ? await json<Chip[]>(given.chips) : [],
  };
}

/** Reads a pair in the shared form with its truth/. */
export async function readPairFolder(folder: string): Promise<BenchPair> {
  const maps = await Promise.all(
    ['lost', 'filled', 'scum'].map((name) => readGrey(join(folder, 'truth', `${name}.png`))),
  );
  return {
    name: basename(folder),
    kind: kindOf(basename(folder)),
    input: await readPairInput(folder),
    again: null,
    truth: JSON.parse(await readFile(join(folder, 'truth', 'truth.json'), 'utf8')) as Truth,
    maps: {
      columns: maps[0]!.widthPx,
      rows: maps[0]!.heightPx,
      lost: maps[0]!.codes,
      filled: maps[1]!.codes,
      scum: maps[2]!.codes,
    },
  };
}

/** An 8-bit picture's first channel. */
export async function readGrey(
  path: string,
): Promise<{ widthPx: number; heightPx: number; codes: Uint8Array }> {
  return greyOf(await readFile(path), path);
}

/** The same from bytes. */
export async function greyOf(bytes: Uint8Array, name: string) {
  const decoded = await decodePhotograph(bytes, name);
  if (!decoded.ok) throw new Error(decoded.error.message);
  const { widthPx, heightPx, channels, codes } = decoded.value;
  return {
    widthPx,
    heightPx,
    codes: Uint8Array.from({ length: widthPx * heightPx }, (_, i) => codes[i * channels]!),
  };
}
