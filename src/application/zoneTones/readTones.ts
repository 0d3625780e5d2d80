import { readFile } from 'node:fs/promises';
import { ok, type Result } from '../../foundation/result.ts';
import { decodePhotograph } from '../../imaging/codecs/decodePhotograph.ts';
import type { Raster } from '../../imaging/raster.ts';
import { readZoneTones, type ZoneTonesReading } from '../../imaging/tone/readZoneTones.ts';
import type { WashSplit } from '../../records/etch.ts';
import type { Point } from '../../science/geometry/point.ts';
import { splitWash, type ToneGrid } from '../../studio/etch/splitWash.ts';
import type { TonePlace } from './tonePlace.ts';

/** What is to be read from a kept photograph. */
export interface TonesTask {
  readonly file: string;
  readonly fileName: string;
  readonly place: TonePlace;
  /** Ids of the zones whose wash is to be split by its tone. */
  readonly washes: readonly string[];
}

/** What was read; null where no bare stone could be found. */
export interface TonesAnswer {
  readonly reading: Omit<ZoneTonesReading, 'brushTone'> | null;
  /** By zone; outlines in stone mm. */
  readonly splits: ReadonlyMap<string, WashSplit>;
}

/** Reads the tones of zones from a photograph, and splits washes by them. Heavy: meant for a thread. */
export async function readTones({ file, fileName, place, washes }: TonesTask): Promise<Result<TonesAnswer>> {
  const photo = await decodePhotograph(await readFile(file), fileName);
  if (!photo.ok) return photo;
  const read = readZoneTones({ photo: photo.value, ...place });
  if (read === null) return ok({ reading: null, splits: new Map() });
  const { brushTone, ...reading } = read;
  const splits = new Map<string, WashSplit>();
  for (const zone of place.zones) {
    if (!brushTone || !washes.includes(zone.id)) continue;
    const split = splitWash(brushGrid(brushTone, zone.polygonMm), zone.polygonMm);
    splits.set(zone.id, movedBy(split, place.offsetMm));
  }
  return ok({ reading, splits });
}

/** The tone round a zone in cells of a millimetre, finer than which no brush lays. */
function brushGrid(tone: Raster, polygonMm: readonly Point[]): ToneGrid {
  const cellPx = Math.round(tone.pxPerMm);
  const bounds = (axis: 0 | 1, most: number) => {
    const values = polygonMm.map((point) => point[axis]);
    return [
      Math.max(0, Math.floor(Math.min(...values))),
      Math.min(most, Math.ceil(Math.max(...values))),
    ] as const;
  };
  const [left, right] = bounds(0, Math.floor(tone.widthPx / cellPx));
  const [top, bottom] = bounds(1, Math.floor(tone.heightPx / cellPx));
  const [widthPx, heightPx] = [Math.max(0, right - left), Math.max(0, bottom - top)];
  const data = new Float32Array(widthPx * heightPx);
  for (let y = 0; y < heightPx; y++) {
    for (let x = 0; x < widthPx; x++) {
      let sum = 0;
      for (let dy = 0; dy < cellPx; dy++) {
        for (let dx = 0; dx < cellPx; dx++) {
          sum += tone.data[((top + y) * cellPx + dy) * tone.widthPx + (left + x) * cellPx + dx]!;
        }
      }
      data[y * widthPx + x] = sum / cellPx ** 2;
    }
  }
  return { widthPx, heightPx, pxPerMm: 1, originMm: [left, top], data };
}

function movedBy(split: WashSplit, [dx, dy]: Point): WashSplit {
  const parts = split.parts.map((part) => ({
    ...part,
    outlinesMm: part.outlinesMm.map((ring) => ring.map(([x, y]): Point => [x + dx, y + dy])),
  }));
  return { ...split, parts };
}
