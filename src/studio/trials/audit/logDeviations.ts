import type { Contact } from '../../../records/bench.ts';
import type { PatchFinding } from '../../../records/patchReading.ts';
import type { TrialDeviation } from '../../../records/testStoneAnswer.ts';
import type { Point } from '../../../science/geometry/point.ts';
import { containsPoint } from '../../../science/geometry/polygon.ts';

/** What a run's log says of one place, and what the plan said. */
export type LoggedContact = Pick<Contact, 'place' | 'laidAt' | 'differenceSeconds' | 'plannedSeconds'> & {
  /** Seconds from the first touch, as planned; null where no schedule was. */
  readonly plannedLayFrom: number | null;
};

/** A place that was etched as one, in the test stone's own millimetres. */
export interface EtchedPlace {
  readonly id: string;
  readonly polygonMm: readonly Point[];
}

/** Less than this off plan is no deviation: 15 s or a tenth of what was planned, the more; laid later by a minute. Our rule. */
const allowed = { seconds: 15, share: 0.1, lateSeconds: 60 };

/**
 * What the log of an etch says went otherwise than planned, for the patches whose middle lies in the places it tells of. Times that
 * were never planned are no deviations.
 */
export function logDeviations(
  stone: string,
  contacts: readonly LoggedContact[],
  places: readonly EtchedPlace[],
  findings: readonly Pick<PatchFinding, 'patch' | 'polygonMm'>[],
): TrialDeviation[] {
  const beyond = ({ differenceSeconds, plannedSeconds }: LoggedContact, sign: 1 | -1) =>
    differenceSeconds !== null &&
    sign * differenceSeconds > Math.max(allowed.seconds, allowed.share * (plannedSeconds ?? 0));
  const first = Math.min(...contacts.map(({ laidAt }) => Date.parse(laidAt)));
  const firstPlanned = Math.min(
    ...contacts.flatMap(({ plannedLayFrom }) => (plannedLayFrom === null ? [] : [plannedLayFrom])),
  );
  const late = ({ laidAt, plannedLayFrom }: LoggedContact) =>
    plannedLayFrom !== null &&
    (Date.parse(laidAt) - first) / 1000 - (plannedLayFrom - firstPlanned) > allowed.lateSeconds;
  const kinds: readonly (readonly [string, (contact: LoggedContact) => boolean])[] = [
    ['Etch lay longer than planned', (contact) => beyond(contact, 1)],
    ['Etch lay shorter than planned', (contact) => beyond(contact, -1)],
    ['Etch was laid a minute or more later than planned', late],
  ];
  return kinds.flatMap(([what, applies]) => {
    const touched = new Set(contacts.filter(applies).map(({ place }) => place.split(':')[0]!));
    const own = places.filter(({ id }) => touched.has(id));
    const patches = findings
      .filter((finding) => own.some(({ polygonMm }) => containsPoint(polygonMm, middleOf(finding.polygonMm))))
      .map(({ patch }) => patch);
    return patches.length > 0 ? [{ what, stone, patches }] : [];
  });
}

/** Middle of the box round a polygon. */
function middleOf(polygon: readonly Point[]): Point {
  const middle = (values: readonly number[]) => (Math.min(...values) + Math.max(...values)) / 2;
  return [middle(polygon.map(([x]) => x)), middle(polygon.map(([, y]) => y))];
}
