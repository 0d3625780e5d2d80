import type { Edge } from '../../records/stone.ts';
import type { WorkRectangle, WorkZone } from '../../records/work.ts';
import type { Point } from '../../science/geometry/point.ts';
import { zoneLetter } from '../../studio/etch/zoneLetters.ts';
import { say } from '../words/say.ts';
import type { Neighbours } from './laidAgainst.ts';

/** What a person draws of a work on its stone. All places in stone mm. */
export interface Drawing {
  readonly head: Edge;
  readonly rectangle: WorkRectangle | null;
  readonly zones: readonly WorkZone[];
  /** The points of an outline that is being drawn; null while none is. Never saved. */
  readonly outline: readonly Point[] | null;
}

/** What a zone is before anybody says: no table has a rule for it, and the plan says so. */
export const mediumNotSaid = 'unknown';

/** The parts of a work that are drawn. */
export function drawingOf(work: Pick<Drawing, 'head' | 'rectangle' | 'zones'>): Drawing {
  const { head, rectangle, zones } = work;
  return { head, rectangle, zones, outline: null };
}

/** The zone of that id; undefined where it is gone. */
export function zoneOf(drawing: Drawing, id: string | null): WorkZone | undefined {
  return drawing.zones.find((zone) => zone.id === id);
}

/** What is said anew of a zone; undefined takes a field away. */
export type ZoneChanges = {
  readonly [Field in Exclude<keyof WorkZone, 'id'>]?: WorkZone[Field] | undefined;
};

/** The drawing with one zone changed. A tone that was measured under another outline is dropped. */
export function withZone(drawing: Drawing, id: string, changes: ZoneChanges): Drawing {
  const zones = drawing.zones.map((zone) => {
    if (zone.id !== id) return zone;
    const moved = changes.polygonMm !== undefined && changes.polygonMm !== zone.polygonMm;
    const tone = moved && zone.tone?.basis === 'measured' ? { tone: null } : {};
    const fields = Object.entries({ ...zone, ...tone, ...changes });
    return Object.fromEntries(fields.filter(([, value]) => value !== undefined)) as unknown as WorkZone;
  });
  return { ...drawing, zones };
}

/** What an outline is once it is closed, but for its points; a free id is found where none is given. */
export type ClosedAs = (
  drawing: Drawing,
) => Omit<WorkZone, 'id' | 'polygonMm'> & Partial<Pick<WorkZone, 'id'>>;

/** A zone of which nothing is said yet, named for its place in the row. */
export const namedZone: ClosedAs = ({ zones }) => ({
  name: say('Zone {zoneLetter}', { zoneLetter: zoneLetter(zones.length) }),
  medium: mediumNotSaid,
  tone: null,
});

/** The drawing with the outline in hand closed into a zone of its own. */
export function withClosedOutline(
  drawing: Drawing,
  said: ReturnType<ClosedAs>,
): { drawing: Drawing; id: string } | null {
  const { outline, zones } = drawing;
  if (!outline || outline.length < 3) return null;
  const id = said.id ?? freeId(zones);
  const zone: WorkZone = { ...said, id, polygonMm: outline };
  return { drawing: { ...drawing, zones: [...zones, zone], outline: null }, id };
}

/** The drawing with tones as they were read; zones of which none could be read keep theirs. */
export function withTones(
  drawing: Drawing,
  tones: readonly { readonly zone: string; readonly tone: WorkZone['tone'] }[],
): Drawing {
  const read = new Map(tones.map(({ zone, tone }) => [zone, tone]));
  return {
    ...drawing,
    zones: drawing.zones.map((zone) => ({ ...zone, tone: read.get(zone.id) ?? zone.tone })),
  };
}

/** The drawing without a zone. */
export function withoutZone(drawing: Drawing, id: string): Drawing {
  return { ...drawing, zones: drawing.zones.filter((zone) => zone.id !== id) };
}

/**
 * What a point may be laid against: all other zones, the outline being drawn, the stone's border. Of the zone that the moved
 * point belongs to (`moved`; null for a new point) only its other points count, not its own sides.
 */
export function neighboursOf(
  { zones, outline }: Drawing,
  stoneMm: Point,
  moved: { readonly zone: string; readonly index: number } | null,
): Neighbours {
  const own = zones.find(({ id }) => id === moved?.zone)?.polygonMm ?? [];
  return {
    outlines: zones.filter(({ id }) => id !== moved?.zone).map(({ polygonMm }) => polygonMm),
    lines: [...own.filter((_, index) => index !== moved?.index), ...(outline ?? [])].map((point) => [point]),
    stoneMm,
  };
}

/** An id that no zone has: plain, so that zones.json stays readable. */
function freeId(zones: readonly WorkZone[]): string {
  const taken = new Set(zones.map(({ id }) => id));
  let number = zones.length + 1;
  while (taken.has(`zone-${number}`)) number++;
  return `zone-${number}`;
}
