import { useEffect, useState } from 'react';
import type { Zone } from '../../records/zone.ts';
import type { Point } from '../../science/geometry/point.ts';
import { comparisonFile } from '../client/comparisons.ts';
import { firstLift } from '../managers/firstLift.ts';
import { type LiftScene, rimMm } from '../managers/liftPainter.ts';
import type { Lift } from '../managers/sheetLift.ts';
import { asAlpha, cutToSheet, grounded, loadPicture, markedByColumn } from '../managers/sheetPictures.ts';
import { zoneLetter } from '../managers/zonePlace.ts';

type Pictures = Pick<LiftScene, 'stone' | 'print' | 'masks'> & { readonly opening: Lift };

// Phones give a page little memory for canvases; 8 px/mm on a 300 x 400 mm stone still fits.
const longestPx = 3200;
const longestMaskPx = 1600;

/** Loads the straightened pictures and masks of a comparison. Of a `partial` sheet only what it covered is shown. `opening` is the lift to open with; `failed` when a picture could not be had. */
export function useLiftScene(
  id: string,
  sizeMm: Point,
  zones: readonly Zone[],
  partial: boolean,
): { scene: (Omit<LiftScene, 'picked' | 'lettered'> & { readonly opening: Lift }) | null; failed: boolean } {
  const [pictures, setPictures] = useState<Pictures | null>(null);
  const [failed, setFailed] = useState(false);
  useEffect(() => {
    let wanted = true;
    const load = (name: string) => loadPicture(comparisonFile(id, name));
    const mask = (name: string) =>
      load(name).then(
        (picture) => asAlpha(picture, longestMaskPx),
        () => undefined,
      );
    Promise.all([
      load('stone.jpg'),
      load('proof.jpg'),
      mask('lost.png'),
      mask('filled.png'),
      mask('scum.png'),
      partial ? mask('sheet.png') : undefined,
    ]).then(
      ([stone, print, lost, filled, scum, sheet]) => {
        if (!wanted) return;
        const masks = { ...(lost && { lost }), ...(filled && { filled }), ...(scum && { scum }) };
        const lying = grounded(print, longestPx);
        const rim = rimMm(sizeMm);
        setPictures({
          stone: grounded(stone, longestPx),
          print: sheet ? cutToSheet(lying, sheet, [rim / sizeMm[0], rim / sizeMm[1]]) : lying,
          masks,
          opening: firstLift(markedByColumn(Object.values(masks), 50)),
        });
      },
      () => wanted && setFailed(true),
    );
    return () => {
      wanted = false;
    };
  }, [id, sizeMm, partial]);
  const lettered = zones.map((zone, index) => ({ ...zone, letter: zoneLetter(index) }));
  return { scene: pictures && { ...pictures, sizeMm, zones: lettered }, failed };
}
