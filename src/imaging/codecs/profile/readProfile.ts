import type { Matrix3 } from '../../../science/algebra/matrix3.ts';
import { readToneCurve, type ToneResponse } from './readToneCurve.ts';

/** What is needed of an ICC profile (ICC.1:2022) to turn code values into light. */
export type ColourProfile =
  | { readonly model: 'rgb-matrix'; readonly toConnection: Matrix3; readonly curves: readonly ToneResponse[] }
  | { readonly model: 'grey-curve'; readonly curve: ToneResponse }
  | { readonly model: 'table'; readonly space: string }
  | { readonly model: 'unreadable' };

const tableTags = ['A2B0', 'A2B1', 'D2B0', 'D2B1'];

/**
 * Reads an ICC profile of versions 2 and 4: matrix and tone curves of RGB profiles (columns rXYZ, gXYZ, bXYZ
 * are already adapted to D50), or the tone curve of grey ones. Profiles that carry a look-up table are named
 * `table`, because the table takes precedence (ICC.1 8.10). Damaged ones are `unreadable`; nothing is thrown.
 */
export function readProfile(bytes: Uint8Array): ColourProfile {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (bytes.length < 132 || text(view, 36) !== 'acsp') return { model: 'unreadable' };
  const tags = readTags(view);
  const space = text(view, 16).trim();
  if (tableTags.some((name) => tags.has(name))) return { model: 'table', space };
  if (space === 'GRAY') {
    const curve = curveOf(tags.get('kTRC'));
    return curve ? { model: 'grey-curve', curve } : { model: 'unreadable' };
  }
  if (space !== 'RGB' || text(view, 20) !== 'XYZ ') return { model: 'table', space };
  const columns = ['rXYZ', 'gXYZ', 'bXYZ'].map((name) => xyzOf(tags.get(name)));
  const curves = ['rTRC', 'gTRC', 'bTRC'].map((name) => curveOf(tags.get(name)));
  const [r, g, b] = columns;
  if (!r || !g || !b || curves.some((curve) => curve === null)) return { model: 'unreadable' };
  return {
    model: 'rgb-matrix',
    toConnection: [r[0]!, g[0]!, b[0]!, r[1]!, g[1]!, b[1]!, r[2]!, g[2]!, b[2]!],
    curves: curves.filter((curve) => curve !== null),
  };
}

function text(view: DataView, offset: number): string {
  return String.fromCharCode(...[0, 1, 2, 3].map((index) => view.getUint8(offset + index)));
}

function readTags(view: DataView): Map<string, DataView> {
  const tags = new Map<string, DataView>();
  const count = Math.min(view.getUint32(128), 200);
  for (let index = 0; index < count; index++) {
    const entry = 132 + 12 * index;
    if (entry + 12 > view.byteLength) break;
    const offset = view.getUint32(entry + 4);
    const size = view.getUint32(entry + 8);
    if (size < 8 || offset + size > view.byteLength) continue;
    tags.set(text(view, entry), new DataView(view.buffer, view.byteOffset + offset, size));
  }
  return tags;
}

function xyzOf(tag: DataView | undefined): readonly number[] | null {
  if (!tag || tag.byteLength < 20 || text(tag, 0) !== 'XYZ ') return null;
  return [8, 12, 16].map((offset) => tag.getInt32(offset) / 65536);
}

function curveOf(tag: DataView | undefined): ToneResponse | null {
  return tag ? readToneCurve(tag) : null;
}
