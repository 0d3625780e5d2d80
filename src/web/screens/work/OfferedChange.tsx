import type { ScheduleChange } from '../../../records/etch.ts';
import type { KeptPlan } from '../../../records/keptPlan.ts';
import { choicesWith } from '../../managers/planChoices.ts';
import { Button, ButtonLink } from '../../parts/Button.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';
import { changeTitles, feasibleWords } from './planWords.ts';
import { usePlanMaking } from './usePlanMaking.ts';
import type { WorkDesk } from './useWorkDesk.ts';

/** A change that would help a plan, what it would do, and taking it up; what can't help is told without. */
export function OfferedChange({
  offered: { change, feasible, effect },
  lit,
  kept,
  desk,
  onMade,
}: {
  offered: ScheduleChange;
  /** Whether it is what to do next. */
  lit: boolean;
  kept: KeptPlan;
  desk: Pick<WorkDesk, 'unsaved' | 'save'>;
  onMade: (id: string) => void;
}) {
  const { make, busy, trouble } = usePlanMaking(kept.workId, desk, onMade);
  const choices = choicesWith(kept, change);
  return (
    <li>
      <b>
        {changeTitles[change]}: {feasibleWords(feasible)}.
      </b>{' '}
      {told(effect)}
      {trouble && <FailureNotice failure={trouble} />}
      {feasible !== false && (
        <div className="plan-change">
          {choices ? (
            <Button kind={lit ? 'act' : 'plain'} disabled={busy} onClick={() => void make(choices)}>
              {busy ? say('Planning …') : planItSo[change]}
            </Button>
          ) : (
            <ButtonLink kind={lit ? 'act' : 'plain'} href={`/works/${kept.workId}`}>
              {planItSo[change]}
            </ButtonLink>
          )}
        </div>
      )}
    </li>
  );
}

const planItSo: Readonly<Record<ScheduleChange['change'], string>> = {
  'second-person': say('Plan it for two'),
  merge: say('Draw them as one zone'),
  'deeper-film': say('Plan it with the deeper film'),
  'two-stages': say('Plan it in two stages'),
};
