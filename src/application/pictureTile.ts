import { join } from 'node:path';
import { failure } from '../foundation/failure.ts';
import { fail, ok, type Result } from '../foundation/result.ts';
import { fullSizeLevel, previewWidthsPx, tileSizePx } from '../imaging/codecs/writePyramid.ts';
import type { Store } from '../store/openStore.ts';
import { findPhotograph } from './findPhotograph.ts';
import type { PictureDesk } from './pictures/pictureDesk.ts';

export interface PictureParts {
  readonly store: Pick<Store, 'photographs'>;
  readonly desk: Pick<PictureDesk, 'pyramidOf'>;
}

/** Where a tile lies in the deep-zoom pyramid: level 0 is one pixel, each level twice the one below. */
export interface TilePlace {
  readonly level: number;
  readonly column: number;
  readonly row: number;
}

/** The file of one tile of a photograph (JPEG, 512 px, no overlap), or `not-found` where the pyramid has none. */
export async function pictureTile(
  parts: PictureParts,
  id: string,
  place: TilePlace,
): Promise<Result<string>> {
  const photograph = await findPhotograph(parts.store, id);
  if (!photograph.ok) return photograph;
  const { widthPx, heightPx } = photograph.value;
  const full = fullSizeLevel(widthPx, heightPx);
  const shrunk = 2 ** (full - place.level) * tileSizePx;
  const inside = place.level <= full && place.column * shrunk < widthPx && place.row * shrunk < heightPx;
  if (!inside) return fail(failure('not-found', { what: 'such tile' }));
  const folder = await parts.desk.pyramidOf(photograph.value);
  if (!folder.ok) return folder;
  const name = `${place.column}_${place.row}.jpeg`;
  return ok(join(folder.value, 'tiles_files', String(place.level), name));
}

/** The file of a small whole picture: the narrowest kept one that is at least `widthPx` wide, else the widest. */
export async function picturePreview(
  parts: PictureParts,
  id: string,
  widthPx: number,
): Promise<Result<string>> {
  const photograph = await findPhotograph(parts.store, id);
  if (!photograph.ok) return photograph;
  const folder = await parts.desk.pyramidOf(photograph.value);
  if (!folder.ok) return folder;
  const width = previewWidthsPx.find((kept) => kept >= widthPx) ?? previewWidthsPx.at(-1);
  return ok(join(folder.value, `preview-${width}.jpg`));
}
