import type { PlannedZone } from '../../../records/etch.ts';
import type { KeptPlan } from '../../../records/keptPlan.ts';
import { Fold } from '../../parts/Fold.tsx';
import { Told } from '../../parts/Told.tsx';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';

/** Why a row is as it is: how its strength was chosen, where the rule comes from, and what other sources say. */
export function PlanRowWhy({ zone, kept }: { zone: PlannedZone; kept: KeptPlan }) {
  const strengths = zone.parts.length > 0 ? zone.parts.map((part) => part.strength) : [zone.strength];
  const rules = kept.request.table.rows.filter((row) => strengths.includes(row.strength));
  return (
    <Fold title={say('Why: {why}', { why: told(zone.why) })}>
      <div className="plan-why-inside">
        {rules.length === 0 && <p>{told(zone.basis)}</p>}
        {rules.map((rule) => (
          <div key={rule.strength}>
            <p>
              <b>
                {say('{rule}, for {strength}:', { rule: told(rule.name), strength: told(rule.strength) })}
              </b>{' '}
              {told(rule.basis.note)}
              {rule.basis.note.includes(rule.basis.basis) ? '' : ` (${told(rule.basis.basis)})`}.
            </p>
            {rule.advice?.map(({ source, advice }) => (
              <p key={source}>
                <cite>{source}</cite>: <Told>{advice}</Told>
              </p>
            ))}
            {rule.choice && (
              <p>
                <b>{say('Chosen here:')}</b> <Told>{rule.choice}</Told>
              </p>
            )}
          </div>
        ))}
        <p className="soft">
          {say('Table {table}, issue {issue}.', { table: told(kept.table.name), issue: kept.table.version })}
        </p>
      </div>
    </Fold>
  );
}
