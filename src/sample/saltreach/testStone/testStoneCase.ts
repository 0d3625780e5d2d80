import { normalDraw, type Random, seededRandom } from '../../../foundation/random.ts';
import type { StonePatch } from '../../../records/testStone.ts';
import type { Zone } from '../../../records/zone.ts';
import { cornerMarks, type Drawing, type Mark } from '../../render/drawing.ts';
import { crayonTone } from '../../render/layouts/testSheet.ts';
import { washTone } from '../../render/layouts/washTone.ts';
import { noiseField } from '../../render/noise.ts';
import { type PairCase, plainCase } from '../../render/pairCase.ts';
import { faithfulTransfer, type ToneTransfer } from '../../render/printing.ts';
import { plannedTestStones } from './plannedTestStones.ts';

const seed = 2207;

const media: Readonly<Record<string, { readonly texture: 'crayon' | 'wash'; readonly tone: number }>> = {
  'crayon #5': { texture: 'crayon', tone: 0.14 },
  'crayon #3': { texture: 'crayon', tone: 0.32 },
  'crayon #1': { texture: 'crayon', tone: 0.62 },
  'tusche in water': { texture: 'wash', tone: 0.42 },
};

/** T-2 drawn and printed: strong etch burns lights, gum alone lets darks close, the middle holds. Invented. */
export function testStoneCase(): PairCase {
  const [{ patches, sizeMm }] = plannedTestStones();
  const random = seededRandom(seed);
  const slow = noiseField(random, 400, 400, 1, [
    [24, 1],
    [7, 0.6],
  ]);
  const strips = new Map(
    [...new Set(patches.map(({ strip }) => strip))].map((strip) => [strip, normalDraw(random)]),
  );
  const marks: Mark[] = [];
  const zones: Zone[] = [];
  const zoneTransfers: Record<string, ToneTransfer> = {};
  for (const [index, { id, polygonMm, strip, treatment }] of patches.entries()) {
    const { texture, tone } = media[treatment.medium!]!;
    const toneAt = texture === 'wash' ? washTone(seed + index, tone, polygonMm) : crayonTone(tone, slow);
    marks.push({ kind: 'area', zoneId: id, texture, polygonMm, tone: toneAt });
    zones.push({ id, name: id, medium: treatment.medium!, polygonMm });
    zoneTransfers[id] = transferOf(treatment, tone, strips.get(strip)!, random);
  }
  const [left, top] = [sizeMm[0] - 62, sizeMm[1] - 14];
  // A bar of full tusche to read tones by.
  marks.push({
    kind: 'area',
    zoneId: null,
    texture: 'full',
    polygonMm: [
      [left, top],
      [left + 48, top],
      [left + 48, top + 10],
      [left, top + 10],
    ],
    tone: () => 1,
  });
  marks.push(cornerMarks(sizeMm));
  const drawing: Drawing = { name: 'T-2', sizeMm, marks, zones, stopOuts: [] };
  const base = plainCase('saltreach-t-2', seed, drawing);
  return {
    ...base,
    megapixels: 3.2,
    transfer: { ...faithfulTransfer, gain: 0.012, full: 0.988 },
    zoneTransfers,
    print: { ...base.print, table: 'planks' },
    cornerErrorMm: 2.5,
    files: { kind: 'jpeg', quality: 64, exifOrientation: 1 },
  };
}

function transferOf(
  { etch, medium }: StonePatch['treatment'],
  tone: number,
  ofStrip: number,
  random: Random,
): ToneTransfer {
  const luck = 0.6 * ofStrip + 0.6 * normalDraw(random);
  const gain = 0.015 + 0.012 * luck;
  const held: ToneTransfer = { ...faithfulTransfer, gain, full: 0.988 };
  const light = medium === 'crayon #5' || medium === 'crayon #3';
  if (etch === 'tannic solution' && light) {
    const reach = medium === 'crayon #5' ? 2.6 : 1.5;
    return { ...held, lightsLost: [0, tone * Math.max(0.4, reach + 0.25 * luck)] };
  }
  if (etch === 'gum alone' && medium === 'crayon #1')
    return { ...held, darksClosed: [tone * 0.2, tone * (0.62 + 0.04 * luck)] };
  return held;
}
