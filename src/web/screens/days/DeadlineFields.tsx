import type { DayStep, Deadline } from '../../../records/dayPlan.ts';
import type { LineStage } from '../../../records/run.ts';
import { lineRule } from '../../../studio/bench/lineStages.ts';
import { localText, momentOf } from '../../managers/localMoment.ts';
import { Choice } from '../../parts/Choice.tsx';
import { Field } from '../../parts/Field.tsx';
import { NumberField } from '../../parts/NumberField.tsx';
import { Picks } from '../../parts/Picks.tsx';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';

/** What one plans towards; the rest of the line lies between. */
const goals: readonly LineStage[] = [
  'draw',
  'first-etch',
  'washout',
  'roll-up',
  'trial-proofs',
  'second-etch',
  'proofs',
  'good-to-print',
  'edition',
  'close-down',
];

/** What one plans towards after a stage; null after the last. */
export function nextGoal(goal: LineStage): LineStage | null {
  return goals[goals.indexOf(goal) + 1] ?? null;
}

/** What is to be done by when, which way, and how long takes what nobody else can know. */
export function DeadlineFields({
  asked,
  steps,
  onChange,
}: {
  asked: Deadline;
  steps: readonly DayStep[];
  onChange: (asked: Deadline) => void;
}) {
  const set = (changes: Partial<Deadline>) => onChange({ ...asked, ...changes });
  const untold = steps.filter(({ hands }) => hands.highMinutes === null).flatMap(({ stages }) => stages);
  const stages = [...new Set([...asked.times.map(({ stage }) => stage), ...untold])];
  return (
    <>
      <Choice
        label={say('What must be done')}
        value={asked.goal}
        options={goals.map((stage) => [stage, told(lineRule(stage).name)] as const)}
        onChoose={(goal) => set({ goal })}
      />
      <Field
        label={say('By when')}
        type="datetime-local"
        value={localText(asked.by)}
        onChange={(event) => {
          const by = momentOf(event.target.value);
          if (by) set({ by });
        }}
      />
      <Picks
        label={say('Second etch')}
        value={asked.second}
        options={[
          ['full', say('Full, rests 12 h')],
          ['quick', say('Quick')],
        ]}
        onPick={(second) => set({ second })}
      />
      <Picks
        label={say('Trial proofs before it')}
        value={asked.trialProofs ? 'yes' : 'no'}
        options={[
          ['yes', say('Yes')],
          ['no', say('No')],
        ]}
        onPick={(answer) => set({ trialProofs: answer === 'yes' })}
      />
      {stages.map((stage) => (
        <HoursFor key={stage} stage={stage} asked={asked} set={set} />
      ))}
    </>
  );
}

function HoursFor({
  stage,
  asked,
  set,
}: {
  stage: LineStage;
  asked: Deadline;
  set: (changes: Partial<Deadline>) => void;
}) {
  const typed = asked.times.find((one) => one.stage === stage);
  const others = asked.times.filter((one) => one.stage !== stage);
  const people = typed?.people ?? (stage === 'edition' ? 2 : 1);
  const tell = (lowHours: number | null, highHours: number | null) => {
    if (lowHours === null && highHours === null) return set({ times: others });
    const low = Math.round((lowHours ?? highHours!) * 60);
    const high = Math.round((highHours ?? lowHours!) * 60);
    const [lowMinutes, highMinutes] = [Math.min(low, high), Math.max(low, high)];
    set({ times: [...others, { stage, lowMinutes, highMinutes, people }] });
  };
  const hours = (minutes: number | undefined) =>
    minutes === undefined ? null : Math.round((minutes / 60) * 100) / 100;
  const [low, high] = [hours(typed?.lowMinutes), hours(typed?.highMinutes)];
  return (
    <fieldset className="days-hours">
      <legend>{say('How many hours: {lineRule}', { lineRule: told(lineRule(stage).name) })}</legend>
      <NumberField
        label={say('At least')}
        unit={say('hours')}
        value={low}
        least={0.1}
        most={500}
        needed={false}
        onValue={(value) => tell(value, high)}
      />
      <NumberField
        label={say('At most')}
        unit={say('hours')}
        value={high}
        least={0.1}
        most={500}
        needed={false}
        onValue={(value) => tell(low, value)}
      />
    </fieldset>
  );
}
