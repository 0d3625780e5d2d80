import type { EtchPlan, PlannedPart, PlannedZone, PlanRequest } from '../../../records/etch.ts';
import type { EtchStrength } from '../../../records/etchStrength.ts';
import type { Point } from '../../../science/geometry/point.ts';
import { contactWords } from '../../../studio/etch/clockWords.ts';
import { textInWords } from '../../../words/inWords.ts';

/** What a map is drawn from: the plan, and where its zones lie. */
export interface EtchMapInput {
  readonly request: Pick<PlanRequest, 'stone' | 'zones'>;
  readonly plan: EtchPlan;
}

/** One hatched place of the map, in the order painted: later ones lie over earlier ones. */
export interface MapArea {
  readonly id: string;
  readonly letter: string;
  /** null where there is no rule. */
  readonly strength: EtchStrength | null;
  /** Stone mm, mirrored where the map is; inside an odd number of rings. */
  readonly rings: readonly (readonly Point[])[];
  /** Amount and time, or what to do where there is no rule. */
  readonly words: readonly string[];
}

interface Drawn {
  readonly row: PlannedZone | PlannedPart;
  readonly rings: MapArea['rings'];
}

/** The ground over the whole stone, then the zones, large ones first, so that a small one inside stays visible. */
export function mapAreas({ request, plan }: EtchMapInput, mirrored: boolean): MapArea[] {
  const { widthMm, heightMm } = request.stone;
  const placed = (ring: readonly Point[]) =>
    mirrored ? ring.map(([x, y]): Point => [widthMm - x, y]) : ring;
  const whole: Point[] = [
    [0, 0],
    [widthMm, 0],
    [widthMm, heightMm],
    [0, heightMm],
  ];
  const zonesById = new Map(request.zones.map((zone) => [zone.id, zone]));
  const bySize = plan.zones
    .filter((row) => zonesById.has(row.id))
    .toSorted((a, b) => b.areaCm2 - a.areaCm2)
    .flatMap((row): Drawn[] => {
      const zone = zonesById.get(row.id)!;
      if (row.parts.length === 0) return [{ row, rings: [zone.polygonMm] }];
      return row.parts.map((part, index) => ({ row: part, rings: zone.split!.parts[index]!.outlinesMm }));
    });
  const ground = plan.zones
    .filter((row) => !zonesById.has(row.id))
    .map((row): Drawn => ({ row, rings: [whole] }));
  return [...ground, ...bySize].map(({ row, rings }) => ({
    id: row.id,
    letter: row.letter,
    strength: row.strength,
    rings: rings.map(placed),
    words: (row.etch ? [`${row.etch.ml} ml`, contactWords(row)!] : ['test a patch']).map(textInWords),
  }));
}

/** Which side a map shows, in words. */
export function mapSideWords(mirrored: boolean): string {
  return mirrored ? 'Mirrored, as the print will show it' : 'As seen on the stone';
}
