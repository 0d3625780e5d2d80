import { type SeriesTone, seriesTones } from '../../../records/proofSeries.ts';
import type { Work, WorkZone } from '../../../records/work.ts';
import type { SeriesSettings, ToneArea } from '../../../records/workSeries.ts';
import type { Deposit } from '../../../records/zone.ts';
import type { Point } from '../../../science/geometry/point.ts';
import { type Drawing, drawingOf, mediumNotSaid } from '../zoneDrawing.ts';

/** On the board an area is a zone whose deposit says which tone it stands for. */
const depositOf = { lights: 'light', middles: 'middle', darks: 'dark' } as const satisfies Record<
  SeriesTone,
  Deposit
>;

/** What a new outline becomes once it is closed. */
export function newArea(tone: SeriesTone): Omit<WorkZone, 'id' | 'polygonMm'> {
  return { name: tone, medium: mediumNotSaid, deposit: depositOf[tone], tone: null };
}

/** What to change of an area for it to stand for another tone. */
export function asTone(tone: SeriesTone): Pick<WorkZone, 'name' | 'deposit'> {
  return { name: tone, deposit: depositOf[tone] };
}

/** The tone that an area on the board stands for. */
export function toneOfArea({ deposit }: WorkZone): SeriesTone {
  return seriesTones.find((tone) => depositOf[tone] === deposit) ?? 'middles';
}

/** The areas of a series laid out to be drawn. */
export function areaDrawing(areas: SeriesSettings['areas'], work: Pick<Work, 'head' | 'rectangle'>): Drawing {
  const zones = seriesTones.flatMap((tone) =>
    areas[tone].polygonsMm.map(
      (polygonMm, index): WorkZone => ({ ...newArea(tone), id: `${tone}-${index + 1}`, polygonMm }),
    ),
  );
  return drawingOf({ head: work.head, rectangle: work.rectangle, zones });
}

/** What is drawn as the areas of a series. An area that lies just as a zone of the work does is still known by it. */
export function areasOf(drawing: Drawing, zones: readonly WorkZone[]): SeriesSettings['areas'] {
  const areaOf = (tone: SeriesTone): ToneArea => {
    const polygonsMm = drawing.zones
      .filter((zone) => toneOfArea(zone) === tone)
      .map((zone) => zone.polygonMm);
    return {
      origin: 'chosen',
      zones: zones
        .filter(({ polygonMm }) => polygonsMm.some((outline) => same(outline, polygonMm)))
        .map(({ id }) => id),
      polygonsMm,
    };
  };
  return { lights: areaOf('lights'), middles: areaOf('middles'), darks: areaOf('darks') };
}

/** The outlines of an area that are no zone's of the work: those that a hand drew. */
export function handDrawn({ polygonsMm }: ToneArea, zones: readonly WorkZone[]): ToneArea['polygonsMm'] {
  return polygonsMm.filter((outline) => !zones.some(({ polygonMm }) => same(outline, polygonMm)));
}

/** What an area goes by on the stone: `L1`, `M2`; by its tone, and which of that tone it is. */
export function areaSign(zones: readonly WorkZone[], area: WorkZone): string {
  const tone = toneOfArea(area);
  const own = zones.filter((zone) => toneOfArea(zone) === tone);
  return `${tone[0]!.toUpperCase()}${own.findIndex(({ id }) => id === area.id) + 1}`;
}

function same(a: readonly Point[], b: readonly Point[]): boolean {
  return a.length === b.length && a.every(([x, y], at) => x === b[at]![0] && y === b[at]![1]);
}
