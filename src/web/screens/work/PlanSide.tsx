import { told } from '../../words/told.ts';
import './PlanSide.css';
import { useState } from 'react';
import type { PlannedPart, PlannedZone } from '../../../records/etch.ts';
import type { KeptPlan, PlanSummary } from '../../../records/keptPlan.ts';
import type { Paper } from '../../../records/paper.ts';
import { planSheet } from '../../client/plans.ts';
import { etchedAlready } from '../../managers/etchedAlready.ts';
import { planStands } from '../../managers/planChoices.ts';
import { ButtonFile } from '../../parts/Button.tsx';
import { CautionList } from '../../parts/CautionList.tsx';
import { dayWords } from '../../parts/entryWords.ts';
import { Figure } from '../../parts/Figure.tsx';
import { Fold } from '../../parts/Fold.tsx';
import { Notice } from '../../parts/Notice.tsx';
import { Picks } from '../../parts/Picks.tsx';
import { lengthWords } from '../../words/lengths.ts';
import { say } from '../../words/say.ts';
import { BeginAtStone } from './BeginAtStone.tsx';
import { PlanChanges } from './PlanChanges.tsx';
import { feasibleWords, planHeadline, sentence } from './planWords.ts';
import type { WorkDesk } from './useWorkDesk.ts';

/** What a plan says beside the stone: what to have ready, whether it can be kept, what to mind, and its papers. */
export function PlanSide({
  desk,
  kept,
  plans,
  onChoose,
}: {
  desk: WorkDesk;
  kept: KeptPlan;
  plans: readonly PlanSummary[];
  onChoose: (id: string) => void;
}) {
  const { plan, request, table } = kept;
  const { schedule } = plan;
  const [paper, setPaper] = useState<Paper>('a4');
  const newest = plans[0]?.id === kept.id;
  const changes = <PlanChanges kept={kept} desk={desk} onMade={onChoose} />;
  return (
    <>
      {!newest && plans.length > 0 && (
        <Notice kind="aside" title={say('An older plan.')}>
          {say('Made {day}; a newer one is listed below.', { day: dayWords(kept.createdAt) })}
        </Notice>
      )}
      {!planStands(kept, desk.work) && (
        <Notice kind="caution" title={say('The drawing is another now.')}>
          {say('This plan was made from the zones as they were then: plan anew below.')}
        </Notice>
      )}
      {schedule.feasible !== true && changes}
      {schedule.steps.length > 0 && <BeginAtStone kept={kept} work={desk.work} />}
      {etchedAlready(desk.work.stage) && (
        <p className="soft">{say('As it was planned: {finding}.', { finding: planHeadline(kept) })}</p>
      )}
      <section aria-labelledby="ready-head">
        <h2 id="ready-head" className="big">
          {say('To have ready')}
        </h2>
        <div className="plan-figures">
          {plan.batches.map(({ material, ml, drops, grams }) => (
            <Figure
              key={material}
              value={drops === undefined ? String(ml) : String(drops)}
              beside={drops === undefined ? 'ml' : say('drops')}
            >
              {told(material)}
              {drops !== undefined && say(' ({ml} ml)', { ml })}
              {grams !== null && say(', {grams} g to weigh', { grams })}
            </Figure>
          ))}
        </div>
        <ul className="plan-places" aria-hidden="true">
          {plan.zones
            .flatMap<PlannedZone | PlannedPart>((zone) => (zone.parts.length === 0 ? [zone] : zone.parts))
            .map(({ id, letter, etch }) => (
              <li key={id}>
                <b className="big">{letter}</b>{' '}
                {etch
                  ? say('{ml} ml {material}', { ml: etch.ml, material: told(etch.name) })
                  : say('no rule')}
              </li>
            ))}
        </ul>
        <p className="soft">
          {say(
            'A film of {film} with losses, rounded to what can be measured out. Table: {table}, issue {issue}.',
            { film: lengthWords(request.filmMm, 2), table: told(table.name), issue: table.version },
          )}
        </p>
      </section>
      <Picks<Paper>
        label={say('To print, on')}
        value={paper}
        options={[
          ['a4', 'A4'],
          ['a3', 'A3'],
          ['letter', say('Letter')],
        ]}
        onPick={setPaper}
      />
      <div className="plan-papers">
        <ButtonFile href={planSheet(kept.workId, kept.id, 'map', paper)}>
          {say('Etch map, true size')}
        </ButtonFile>
        <ButtonFile href={planSheet(kept.workId, kept.id, 'steps', paper)}>{say('Step sheet')}</ButtonFile>
      </div>
      {schedule.feasible === true && changes}
      {plan.neighbours.length > 0 && (
        <section aria-labelledby="near-head" className="plan-words">
          <h2 id="near-head" className="big">
            {say('Strong beside light')}
          </h2>
          {plan.neighbours.map(({ a, b, gapMm, why }) => (
            <p key={`${a} ${b}`}>
              <b>
                {gapMm === 0
                  ? say('{nameOf} and {nameOf2}, touching:', {
                      nameOf: nameOf(kept, a),
                      nameOf2: nameOf(kept, b),
                    })
                  : say('{nameOf} and {nameOf2}, about {gap} apart:', {
                      nameOf: nameOf(kept, a),
                      nameOf2: nameOf(kept, b),
                      gap: lengthWords(gapMm, gapMm < 1 ? 1 : 0),
                    })}
              </b>{' '}
              {sentence(told(why))}
            </p>
          ))}
        </section>
      )}
      <section aria-labelledby="buff-head" className="plan-words">
        <h2 id="buff-head" className="big">
          {say('Buffed in this order')}
        </h2>
        <p>
          {say('{buffOrder}. A fresh cloth each round.', {
            buffOrder: plan.buffOrder.map((id) => nameOf(kept, id)).join(', '),
          })}
        </p>
      </section>
      <CautionList cautions={plan.cautions} />
      {plans.length > 1 && (
        <Fold title={say('{count} plans of this etch', { count: plans.length })}>
          <ul className="plan-list">
            {plans.map(({ id, createdAt, table: used, feasible }) => (
              <li key={id}>
                <button type="button" aria-pressed={id === kept.id} onClick={() => onChoose(id)}>
                  {dayWords(createdAt)}
                  <span className="soft">
                    {say('{used}, issue {issue}; {feasible}', {
                      used: told(used.name),
                      issue: used.version,
                      feasible: feasibleWords(feasible),
                    })}
                  </span>
                </button>
              </li>
            ))}
          </ul>
        </Fold>
      )}
    </>
  );
}

/** A zone, or a part of a split wash, by letter and name. */
function nameOf({ plan }: KeptPlan, id: string): string {
  for (const zone of plan.zones) {
    if (zone.id === id) return `${zone.letter} ${zone.name}`;
    const part = zone.parts.find((each) => each.id === id);
    if (part) return `${part.letter} ${zone.name}, ${told(part.strength)}`;
  }
  return id;
}
