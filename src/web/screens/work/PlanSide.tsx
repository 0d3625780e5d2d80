import './PlanSide.css';
import { useState } from 'react';
import type { KeptPlan, PlanSummary } from '../../../records/keptPlan.ts';
import type { Paper } from '../../../records/paper.ts';
import { planSheet } from '../../client/plans.ts';
import { planStands } from '../../managers/planChoices.ts';
import { ButtonFile } from '../../parts/Button.tsx';
import { CautionList } from '../../parts/CautionList.tsx';
import { dayWords } from '../../parts/entryWords.ts';
import { Figure } from '../../parts/Figure.tsx';
import { Fold } from '../../parts/Fold.tsx';
import { Notice } from '../../parts/Notice.tsx';
import { Picks } from '../../parts/Picks.tsx';
import { BeginAtStone } from './BeginAtStone.tsx';
import { changeTitles, feasibleWords, sentence } from './planWords.ts';
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
  return (
    <>
      {!newest && plans.length > 0 && (
        <Notice kind="aside" title="An older plan.">
          Made {dayWords(kept.createdAt)}; a newer one is listed below.
        </Notice>
      )}
      {!planStands(kept, desk.work) && (
        <Notice kind="caution" title="The drawing is another now.">
          This plan was made from the zones as they were then: plan anew below.
        </Notice>
      )}
      {schedule.steps.length > 0 && <BeginAtStone kept={kept} work={desk.work} />}
      <section aria-labelledby="ready-head">
        <h2 id="ready-head" className="big">
          To have ready
        </h2>
        <div className="plan-figures">
          {plan.batches.map(({ material, ml, drops, grams }) => (
            <Figure
              key={material}
              value={drops === undefined ? String(ml) : String(drops)}
              beside={drops === undefined ? 'ml' : 'drops'}
            >
              {material}
              {drops !== undefined && ` (${ml} ml)`}
              {grams !== null && `, ${grams} g to weigh`}
            </Figure>
          ))}
        </div>
        <p className="soft">
          A film of {request.filmMm} mm with losses, rounded to what can be measured out. Table: {table.name},
          version {table.version}.
        </p>
      </section>
      <Picks<Paper>
        label="To print, on"
        value={paper}
        options={[
          ['a4', 'A4'],
          ['a3', 'A3'],
          ['letter', 'Letter'],
        ]}
        onPick={setPaper}
      />
      <div className="plan-papers">
        <ButtonFile href={planSheet(kept.workId, kept.id, 'map', paper)}>Etch map, true size</ButtonFile>
        <ButtonFile href={planSheet(kept.workId, kept.id, 'steps', paper)}>Step sheet</ButtonFile>
      </div>
      {(schedule.reason !== null || schedule.changes.length > 0) && (
        <section aria-labelledby="changes-head" className="plan-changes">
          <h2 id="changes-head" className="big">
            {schedule.feasible === true ? 'It could also be' : 'What would help'}
          </h2>
          {schedule.reason && <p>{sentence(schedule.reason)}</p>}
          <ul>
            {schedule.changes.map(({ change, feasible, effect }) => (
              <li key={change}>
                <b>
                  {changeTitles[change]}: {feasibleWords(feasible)}.
                </b>{' '}
                {effect}
              </li>
            ))}
          </ul>
        </section>
      )}
      {plan.neighbours.length > 0 && (
        <section aria-labelledby="near-head" className="plan-words">
          <h2 id="near-head" className="big">
            Strong beside light
          </h2>
          {plan.neighbours.map(({ a, b, gapMm, why }) => (
            <p key={`${a} ${b}`}>
              <b>
                {nameOf(kept, a)} and {nameOf(kept, b)},{' '}
                {gapMm === 0
                  ? 'touching'
                  : `about ${gapMm < 1 ? gapMm.toFixed(1) : Math.round(gapMm)} mm apart`}
                :
              </b>{' '}
              {sentence(why)}
            </p>
          ))}
        </section>
      )}
      <section aria-labelledby="buff-head" className="plan-words">
        <h2 id="buff-head" className="big">
          Buffed in this order
        </h2>
        <p>{plan.buffOrder.map((id) => nameOf(kept, id)).join(', then ')}. A fresh cloth each round.</p>
      </section>
      <CautionList cautions={plan.cautions} />
      {plans.length > 1 && (
        <Fold title={`${plans.length} plans of this etch`}>
          <ul className="plan-list">
            {plans.map(({ id, createdAt, table: used, feasible }) => (
              <li key={id}>
                <button type="button" aria-pressed={id === kept.id} onClick={() => onChoose(id)}>
                  {dayWords(createdAt)}
                  <span className="soft">
                    {used.name}, version {used.version}; {feasibleWords(feasible)}
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
    if (part) return `${part.letter} ${zone.name}, ${part.strength}`;
  }
  return id;
}
