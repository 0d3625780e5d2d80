import type { CoverageInterval } from '../../records/comparison.ts';
import type { HoldObservation } from '../../records/knownHolds.ts';
import { readHold } from '../../studio/trials/reading/readHold.ts';
import { readingsOf } from '../pulls/readingsOf.ts';
import type { KnownParts } from './knownParts.ts';

/**
 * What became of a work's zones on its last measured pull: drawn coverage as measured on the stone, printed as darkness over that
 * of a full film; the etch as the newest plan laid it. Zones without one of these are left out; earlier pulls of one stone
 * are no replicates.
 */
export async function holdsOfWork(parts: KnownParts, workId: string): Promise<HoldObservation[]> {
  const work = await parts.store.works.find(workId);
  const plan = await parts.store.plans.newestFirst(workId);
  if (!work || !plan) return [];
  const pulls = await parts.store.pulls.ofWork(workId);
  const readings = await readingsOf(parts, pulls);
  const last = pulls.toReversed().flatMap(({ photographs }) => {
    const read = photographs.map(({ photograph }) => readings.get(photograph));
    return read.filter((tones) => tones?.verdict === 'ok' && tones.solid !== null);
  })[0];
  if (!last?.solid) return [];
  const full = last.solid.darkness;
  return work.zones.flatMap((zone): HoldObservation[] => {
    const darkness = last.zones.find(({ id }) => id === zone.id)?.darkness;
    const etch = plan.plan.zones.find(({ id }) => id === zone.id)?.etch?.name;
    if (!darkness || !etch || !zone.tone || (zone.intention ?? 'drawn') !== 'drawn') return [];
    const printed: CoverageInterval = {
      coverage: darkness.value / full,
      low: darkness.low / full,
      high: darkness.high / full,
    };
    const drawn = { coverage: zone.tone.mean, low: zone.tone.mean, high: zone.tone.mean };
    const { hold, least, most } = readHold('image', drawn, printed);
    if (hold === null || least !== most) return [];
    return [
      { stone: work.stoneId, from: 'work', strip: `${workId} ${zone.id}`, medium: zone.medium, etch, hold },
    ];
  });
}
