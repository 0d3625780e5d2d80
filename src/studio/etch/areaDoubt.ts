import type { EtchPlan, PlanRequest } from '../../records/etch.ts';
import type { Point } from '../../science/geometry/point.ts';
import { signedArea } from '../../science/geometry/polygon.ts';
import { laidRows } from './laidRows.ts';
import { groundId, partId } from './planAreas.ts';

/** How far a drawn corner lies from the edge that it stands for, mm each way, 95 %: our rule, for a finger on a screen. */
export const cornerMm = 1;
/** How far a typed side of a stone is off, mm, 95 %: our rule, for a side typed to the millimetre. */
export const sideMm = 1;

/** What the ± of areas takes in, said once beside them. */
export const areaDoubtWords = `± of areas: drawn corners within ${cornerMm} mm, the stone’s sides within ${sideMm} mm (our rule); that of a split wash is unknown. ± of amounts: from the area alone, with the film as chosen; what the vessel adds is not in it.`;

/**
 * The 95 % uncertainty of every area of a plan, cm², by the ids that it is laid under. Corners err one by one, so that
 * the shoelace formula carries them: ±A = ½ δ √Σ|p(i+1) − p(i−1)|²; the stone's sides scale all of it. The ground's
 * adds what the zones' are. Null where nobody knows: the parts of a split wash, whose line was read from a tone map.
 */
export function areaDoubts({
  stone,
  zones,
}: Pick<PlanRequest, 'stone' | 'zones'>): ReadonlyMap<string, number | null> {
  const scale = Math.hypot(sideMm / stone.widthMm, sideMm / stone.heightMm);
  const doubts = new Map<string, number | null>();
  let groundMm2 = Math.hypot(sideMm * stone.heightMm, sideMm * stone.widthMm);
  for (const { id, polygonMm, split } of zones) {
    const mm2 = Math.hypot(cornersMm2(polygonMm), scale * signedArea(polygonMm));
    groundMm2 = Math.hypot(groundMm2, mm2);
    doubts.set(id, mm2 / 100);
    for (const { strength } of split?.parts ?? []) doubts.set(partId(id, strength), null);
  }
  doubts.set(groundId, groundMm2 / 100);
  return doubts;
}

/** What the corners alone do to an area, mm². */
function cornersMm2(polygonMm: readonly Point[]): number {
  const last = polygonMm.length;
  const sum = polygonMm.reduce((all, _, index) => {
    const [x, y] = polygonMm[(index + 1) % last]!;
    const [beforeX, beforeY] = polygonMm[(index + last - 1) % last]!;
    return all + (x - beforeX) ** 2 + (y - beforeY) ** 2;
  }, 0);
  return (cornerMm * Math.sqrt(sum)) / 2;
}

/** What an area's ± does to a film of it, ml; null where that is unknown. */
export function filmDoubtMl(areaDoubtCm2: number | null | undefined, filmMm: number): number | null {
  return areaDoubtCm2 == null ? null : (areaDoubtCm2 * filmMm) / 10;
}

/**
 * What the areas' ± does to one material of a whole plan, ml: its share of every film that takes it, added up, since the
 * stone's sides err for all of them at once. Null as soon as one of them is unknown.
 */
export function materialDoubtMl(
  { request, plan }: { readonly request: PlanRequest; readonly plan: EtchPlan },
  material: string,
): number | null {
  const doubts = areaDoubts(request);
  let sum = 0;
  for (const { row } of laidRows(plan)) {
    const part = row.etch?.parts.find((one) => one.material === material);
    if (!part) continue;
    const film = filmDoubtMl(doubts.get(row.id), request.filmMm);
    if (film === null) return null;
    sum += (film * part.ml) / row.etch!.ml;
  }
  return sum;
}

/** “± 1.2”, as many figures as it deserves, or that nobody knows it. */
export function doubtWords(arm: number | null | undefined): string {
  if (arm == null) return '± unknown';
  return `± ${arm < 1 ? Math.round(arm * 100) / 100 : arm < 10 ? Math.round(arm * 10) / 10 : Math.round(arm)}`;
}
