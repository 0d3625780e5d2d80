import { useState } from 'react';
import type { RunState } from '../../../records/bench.ts';
import type { RunPayloads } from '../../../records/run.ts';
import { lineCourse } from '../../../studio/bench/lineCourse.ts';
import { lineRule } from '../../../studio/bench/lineStages.ts';
import { clockOf, spentWords } from '../../managers/bench/spanWords.ts';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';
import type { PanelParts } from './panelParts.ts';
import { TargetPicks } from './TargetPicks.tsx';

const minute = 60;
const hour = 3600;
/** Times that can be remembered by a touch, seconds. */
const spans = [
  ...[0.5, 1, 2, 3, 5, 10, 15, 30, 45].map((minutes) => minutes * minute),
  ...[1, 2, 4, 8, 12, 24].map((hours) => hours * hour),
];

interface Forgotten {
  readonly key: string;
  readonly words: string;
  readonly of: Pick<RunPayloads['remembered'], 'stage' | 'place'>;
}

/** “I forgot: about two minutes”: what, and about how long; it is kept as remembered and never as measured. */
export function ForgotPanel({ state, work, letterOf, onLog }: PanelParts) {
  const things = forgettable(state, work.stage, work.zones, letterOf);
  const [key, setKey] = useState(things[0]?.key ?? null);
  const [seconds, setSeconds] = useState<number | null>(null);
  const what = things.find((one) => one.key === key) ?? null;
  return (
    <>
      <TargetPicks
        label={say('It was')}
        value={key}
        options={things.map((one) => [one.key, one.words])}
        onPick={setKey}
      />
      <TargetPicks
        label={say('It took about')}
        value={seconds === null ? null : String(seconds)}
        options={spans.map((each) => [String(each), clockOf(each)])}
        onPick={(each) => setSeconds(Number(each))}
      />
      <p>
        {say(
          'Kept as remembered, not measured: taken for right within half of it either way. Where the stage is under way, it is over with this.',
        )}
      </p>
      <button
        type="button"
        className="bench-target first"
        disabled={what === null || seconds === null}
        onClick={() => onLog({ kind: 'remembered', payload: { ...what!.of, seconds: seconds! } })}
      >
        {what === null || seconds === null
          ? say('Pick what, and about how long')
          : say('{what}: about {clockOf}', { what: what.words, clockOf: clockOf(seconds) })}
      </button>
    </>
  );
}

/** What may have been forgotten: what is under way, what comes next, what was done untimed, then every place. */
function forgettable(
  state: RunState,
  workStage: Parameters<typeof lineCourse>[1],
  zones: PanelParts['work']['zones'],
  letterOf: PanelParts['letterOf'],
): readonly Forgotten[] {
  const { open, next } = lineCourse(state.stages, workStage);
  const untimed = state.stages.filter(({ state: done, spent }) => done === 'done' && spent === null);
  const stages = [...new Set([open?.stage, next, ...untimed.toReversed().map(({ stage }) => stage)])];
  const places = [...new Set([...state.contacts.map(({ place }) => place), ...zones.map(({ id }) => id)])];
  return [
    ...stages
      .filter((stage) => stage != null)
      .map((stage) => ({
        key: say('stage {stage}', { stage }),
        words:
          stage === open?.stage
            ? say('{lineRule} (under way)', { lineRule: told(lineRule(stage).name) })
            : told(lineRule(stage).name),
        of: { stage },
      })),
    ...places.map((place) => {
      const contact = state.contacts.findLast((one) => one.place === place);
      const known = contact?.spent ? `, ${spentWords(contact.spent)}` : '';
      return {
        key: say('place {place}', { place }),
        words: say('etch on {letterOf}{known}', { letterOf: letterOf(place), known }),
        of: { place },
      };
    }),
  ];
}
