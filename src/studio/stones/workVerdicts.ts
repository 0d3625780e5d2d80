import type { ImageExtent, Stone } from '../../records/stone.ts';
import type { Work, WorkZone } from '../../records/work.ts';
import type { WorkVerdicts } from '../../records/workEntry.ts';
import { signedArea } from '../../science/geometry/polygon.ts';
import { unionArea } from '../../science/geometry/polygonArea.ts';
import { borderCheck } from './borderCheck.ts';
import { zoneFindings } from './zoneFindings.ts';

/** More sentences than this help nobody; the rest is counted. Our rule. */
const mostSentences = 20;
const neverPrints = new Set(['blank', 'stop-out', 'scraped-white']);

/**
 * What follows from a work's zones on its stone: areas, overlaps, narrow gaps, borders and scraper, in numbers and
 * in sentences.
 * @param work zones on the stone (stone mm), not self-crossing.
 */
export function workVerdicts(
  work: Pick<Work, 'zones' | 'rectangle' | 'head'>,
  stone: Pick<Stone, 'widthMm' | 'heightMm' | 'pressSetUp'>,
): WorkVerdicts {
  const { zones, rectangle, head } = work;
  const areas = zones.map((zone) => ({ zone: zone.id, areaCm2: cm2(Math.abs(signedArea(zone.polygonMm))) }));
  const drawnMm2 = unionArea(zones.map((zone) => zone.polygonMm));
  const findings = zoneFindings(zones);
  const image = printedExtent(zones) ?? rectangleExtent(rectangle);
  const borders = image && borderCheck(stone, image, head);
  const nameOf = (id: string) => zones.find((zone) => zone.id === id)?.name ?? id;
  const sentences = [
    ...(borders?.sentences ?? []),
    ...scraperSentence(stone.pressSetUp.scraperMm, borders?.scraperMm ?? null),
    ...findings.overlaps.map(
      ({ a, b, areaCm2 }) =>
        `${nameOf(a)} and ${nameOf(b)} share ${areaText(areaCm2)}: what is measured out for both counts it twice.`,
    ),
    ...findings.gaps.map(
      ({ a, b, gapMm }) =>
        `Only ${gapMm.toFixed(1)} mm of ground lies between ${nameOf(a)} and ${nameOf(b)}: too narrow to gum by brush (our rule).`,
    ),
    ...zones
      .filter((zone) => rectangle !== null && reachesOut(zone, rectangle))
      .map((zone) => `${zone.name} reaches outside the work rectangle: nothing is measured there.`),
  ];
  return {
    areasCm2: areas,
    groundCm2: cm2(Math.max(0, stone.widthMm * stone.heightMm - drawnMm2)),
    ...findings,
    image,
    borders,
    sentences: shortened(sentences),
  };
}

/** A tenth under 100 cm², whole above: an outline drawn by hand bears no more. */
function areaText(areaCm2: number): string {
  return `${areaCm2 < 100 ? Math.round(areaCm2 * 10) / 10 : Math.round(areaCm2)} cm²`;
}

/** The extent of what is meant to print, null where nothing is. */
function printedExtent(zones: readonly WorkZone[]): ImageExtent | null {
  const points = zones
    .filter(({ intention, medium }) => (intention ?? 'drawn') === 'drawn' && !neverPrints.has(medium))
    .flatMap((zone) => zone.polygonMm);
  if (points.length === 0) return null;
  const first = points[0]!;
  return points.reduce<ImageExtent>(
    ({ topLeftMm: [left, top], bottomRightMm: [right, bottom] }, [x, y]) => ({
      topLeftMm: [Math.min(left, x), Math.min(top, y)],
      bottomRightMm: [Math.max(right, x), Math.max(bottom, y)],
    }),
    { topLeftMm: first, bottomRightMm: first },
  );
}

function rectangleExtent(rectangle: Work['rectangle']): ImageExtent | null {
  if (rectangle === null) return null;
  const [x, y] = rectangle.offsetMm;
  return { topLeftMm: [x, y], bottomRightMm: [x + rectangle.sizeMm[0], y + rectangle.sizeMm[1]] };
}

function reachesOut(zone: WorkZone, rectangle: NonNullable<Work['rectangle']>): boolean {
  const slackMm = 0.5;
  return zone.polygonMm.some((point) =>
    point.some((value, axis) => {
      const along = value - rectangle.offsetMm[axis]!;
      return along < -slackMm || along > rectangle.sizeMm[axis]! + slackMm;
    }),
  );
}

function scraperSentence(scraperMm: number | null, fits: { least: number; most: number } | null): string[] {
  if (scraperMm === null || fits === null) return [];
  if (scraperMm >= fits.least && scraperMm <= fits.most) return [];
  return [
    `The scraper of ${scraperMm} mm does not fit: from ${Math.ceil(fits.least)} to ${Math.floor(fits.most)} mm would be wider than the image and inside the stone.`,
  ];
}

function shortened(sentences: readonly string[]): readonly string[] {
  if (sentences.length <= mostSentences) return sentences;
  return [...sentences.slice(0, mostSentences), `And ${sentences.length - mostSentences} more of the kind.`];
}

function cm2(mm2: number): number {
  return Math.round(mm2) / 100;
}
