import { readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { fileURLToPath } from 'node:url';
import { inject } from 'vitest';
import type { ComparisonEntry, PhotographEntry } from '../../src/records/comparisonEntry.ts';
import type { Corners } from '../../src/science/geometry/point.ts';

const folder = new URL('../cli/pictures/', import.meta.url);

/** A pair of photographs kept for tests (2 megapixels), with where its corners are. */
export interface Pair {
  readonly stone: string;
  readonly print: string;
  readonly zones: string;
  readonly chips: string;
  readonly sizeMm: readonly [number, number];
  readonly stoneCorners: Corners;
  readonly printCorners: Corners;
}

export function keptPair(name: 'measured' | 'wrong-way-round'): Pair {
  const path = (rest: string) => fileURLToPath(new URL(`${name}${rest}`, folder));
  const { size, stoneCorners, proofCorners } = JSON.parse(readFileSync(path('.json'), 'utf8'));
  return {
    stone: path('-stone.jpg'),
    print: path('-print.jpg'),
    zones: path('-zones.json'),
    chips: path('-chips.json'),
    sizeMm: size.split('x').map(Number),
    stoneCorners,
    printCorners: proofCorners,
  };
}

/** Enters a comparison past the screens, to look at what becomes of it. */
export async function enteredComparison(
  title: string,
  stoneOf: Pair,
  printOf: Pair,
): Promise<ComparisonEntry> {
  const side = async (path: string, corners: Corners) => ({
    photograph: (await uploaded(path)).id,
    corners,
    repeat: null,
    flat: null,
  });
  return asked('/api/comparisons', {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({
      title,
      sizeMm: stoneOf.sizeMm,
      stone: await side(stoneOf.stone, stoneOf.stoneCorners),
      proof: await side(printOf.print, printOf.printCorners),
      zones: [],
      chips: [],
    }),
  });
}

function uploaded(path: string): Promise<PhotographEntry> {
  const form = new FormData();
  form.append('photograph', new Blob([readFileSync(path)]), basename(path));
  return asked('/api/photographs', { method: 'POST', body: form });
}

async function asked<T>(path: string, request?: RequestInit): Promise<T> {
  const answer = await fetch(inject('address') + path, request);
  if (!answer.ok) throw new Error(`${path}: ${answer.status} ${await answer.text()}`);
  return (await answer.json()) as T;
}
