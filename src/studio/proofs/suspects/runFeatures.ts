import type { RunState, StageDone } from '../../../records/bench.ts';
import type { LineStage, RunEvent } from '../../../records/run.ts';
import type { FeatureReading, Features } from '../../../records/suspects.ts';

/** The pause after which an inked stone should be gummed. Common practice, no source. */
const longestPauseMinutes = 15;
/** Stages after which the stone stands inked and open. */
const inkedStages: readonly LineStage[] = ['roll-up', 'second-roll-up', 'trial-proofs', 'proofs', 'edition'];

/**
 * What a run's log tells of suspects; what was not logged is left out, since it is not known.
 * @param events those that count, in order; taken-back ones left out.
 */
export function runFeatures(
  state: Pick<RunState, 'stages' | 'contacts'>,
  events: readonly RunEvent[],
): Features {
  const skipped = (...stages: readonly LineStage[]) => {
    const done = state.stages.filter(({ stage, state: how }) => stages.includes(stage) && how !== 'open');
    return done.length === 0 ? null : told(done.some(({ state: how }) => how === 'skipped') ? 1 : 0, 0.05);
  };
  return known({
    etchOverrun: farthest(state, 1),
    etchShort: farthest(state, -1),
    baseSkipped: skipped('base', 'second-base'),
    powderSkipped: skipped('powder', 'second-powder'),
    borderSkipped: skipped('gum-border'),
    rollUpShort: shortRollUp(state.stages),
    ungummedPause: longestPause(events),
  });
}

function told(value: number, deviation: number): FeatureReading {
  return { value, deviation, note: null };
}

function known(features: Features): Features {
  return Object.fromEntries(Object.entries(features).filter(([, reading]) => reading != null));
}

/** By which share of its planned time the worst contact lay too long (1) or too short (−1). */
function farthest({ contacts }: Pick<RunState, 'contacts'>, way: 1 | -1): FeatureReading | null {
  const shares = contacts.flatMap(({ name, spent, plannedSeconds }) =>
    spent && plannedSeconds
      ? [
          {
            share: (way * (spent.seconds - plannedSeconds)) / plannedSeconds,
            doubt: (spent.high - spent.low) / 4 / plannedSeconds,
            name,
          },
        ]
      : [],
  );
  const worst = shares.toSorted((a, b) => b.share - a.share)[0];
  return worst
    ? { value: Math.max(0, worst.share), deviation: worst.doubt, note: worst.share > 0 ? worst.name : null }
    : null;
}

function shortRollUp(stages: readonly StageDone[]): FeatureReading | null {
  const shares = stages.flatMap(({ stage, state, spent, expected }) => {
    if (stage !== 'roll-up' && stage !== 'second-roll-up') return [];
    if (state === 'skipped') return [1];
    const least = expected?.lowSeconds;
    return spent && least ? [Math.max(0, 1 - spent.seconds / least)] : [];
  });
  return shares.length === 0 ? null : told(Math.max(...shares), 0.05);
}

/** Minutes beyond a quarter of an hour for which an inked stone stood open. */
function longestPause(events: readonly RunEvent[]): FeatureReading | null {
  let openSince: number | null = null;
  let longest: number | null = null;
  for (const event of events) {
    const at = Date.parse(event.at);
    if (openSince !== null && (event.kind === 'gummed' || event.kind === 'stage-started')) {
      longest = Math.max(longest ?? 0, (at - openSince) / 60_000 - longestPauseMinutes);
      openSince = null;
    }
    if (event.kind === 'stage-ended' && inkedStages.includes(event.payload.stage)) openSince = at;
  }
  return longest === null ? null : told(Math.max(0, longest), 0.2);
}
