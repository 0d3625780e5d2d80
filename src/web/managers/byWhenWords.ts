import type { Standing } from '../../records/bench.ts';
import { gumToSee } from '../../studio/bench/gumToSee.ts';
import { say } from '../words/say.ts';
import { datedMomentText } from './localMoment.ts';

/** By when what comes next is done, and whether it hurries, as one sentence; what is not known is said once. */
export function byWhenWords(standing: Standing, now: Date): string {
  const { verdict, wet, bestBy } = standing;
  if (gumToSee(standing))
    return say('Look at it, and log whether it is gummed: before that nobody can say by when.');
  if (verdict === 'now')
    return wet ? say('Now: etch lies on the stone and does not wait.') : say('It is under way.');
  return bestBy === null ? withoutEnd(standing, now) : untilWords(standing, bestBy, now);
}

function untilWords({ range, verdict, gumNow, since }: Standing, bestBy: string, now: Date): string {
  const moment = datedMomentText(bestBy, now);
  const past = Date.parse(bestBy) < now.getTime();
  if (range?.bestTo === null) {
    if (!past) return say('In time until {moment}.', { moment });
    if (gumNow) return say('Do it at once: it was in time until {moment}.', { moment });
    return say('Do it soon: it was in time until {moment}.', { moment });
  }
  if (verdict === 'too-soon' && since !== null)
    return say('Too soon: wait until {from}, and do it by {moment}.', {
      from: openMoment(since, range, now),
      moment,
    });
  if (verdict === 'best') return say('Best done now, by {moment}.', { moment });
  if (!past) return say('It may be done now; best by {moment}.', { moment });
  if (verdict === 'past-best') return say('Do it soon: it was best by {moment}.', { moment });
  if (verdict === 'unknown')
    return say('It was best by {moment}; what so long a wait does is not known.', { moment });
  return say('It was best by {moment}, and may still be done: no latest time is known.', { moment });
}

function withoutEnd({ range, verdict, since, gumNow }: Standing, now: Date): string {
  if (range === null) return say('At any time: no latest time is known.');
  if (since === null)
    return gumNow
      ? say('Do it at once: since when it stands so is not known.')
      : say('Nobody logged since when it stands so: by when is not known.');
  if (verdict === 'unknown')
    return say('It waits longer than is known of here: what that does is not known.');
  if (verdict === 'too-soon')
    return say('Too soon: wait until {from}; no latest time is known.', {
      from: openMoment(since, range, now),
    });
  return say('It may be done now; no latest time is known.');
}

function openMoment(since: string, range: Standing['range'], now: Date): string {
  return datedMomentText(new Date(Date.parse(since) + (range?.openFrom ?? 0) * 1000).toISOString(), now);
}
