import type { KeptSecondEtch } from '../../../records/keptPlan.ts';
import { groundId } from '../../../studio/etch/planAreas.ts';
import { CautionList } from '../../parts/CautionList.tsx';
import { dayWords } from '../../parts/entryWords.ts';
import { Fold } from '../../parts/Fold.tsx';
import { StrengthSwatch } from '../../parts/StrengthSwatch.tsx';
import { Told } from '../../parts/Told.tsx';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';

/** The second etch as planned last: zone by zone with its reason, then step by step with end signs. */
export function SecondEtchPlanned({
  last,
  older,
}: {
  last: KeptSecondEtch;
  older: readonly KeptSecondEtch[];
}) {
  const { plan, table, createdAt, planId } = last;
  return (
    <>
      <section aria-labelledby="second-zones">
        <h2 id="second-zones" className="big">
          {say('Zone by zone')}
        </h2>
        <p className="soft">
          {say('Planned {day} with {table}, issue {issue}.{planId}', {
            day: dayWords(createdAt),
            table: told(table.name),
            issue: table.version,
            planId:
              planId === null &&
              say(
                ' No first etch was planned here, so its strengths are not known: gum only, unless read otherwise.',
              ),
          })}
        </p>
        <ul className="second-zones">
          {plan.zones.map(({ id, name, strength, etch, why }) => (
            <li key={id}>
              {strength ? <StrengthSwatch strength={strength} /> : <span className="no-rule-swatch" />}
              <b>{id === groundId ? say('Ground') : name}</b>
              <span>
                {etch ?? say('no etch here')}
                {strength && <span className="soft"> {told(strength)}</span>}
              </span>
              <span className="soft">
                <Told>{why}</Told>
              </span>
            </li>
          ))}
        </ul>
      </section>
      <section aria-labelledby="second-steps">
        <h2 id="second-steps" className="big">
          {say('Step by step')}
        </h2>
        <ol className="second-steps">
          {plan.steps.map(({ what, endSign, basis }) => (
            <li key={what}>
              <b>{told(what)}</b>
              <span>{say('until {endSign}', { endSign })}</span>
              <span className="soft">{told(basis)}</span>
            </li>
          ))}
        </ol>
      </section>
      <CautionList cautions={plan.cautions} />
      {older.length > 0 && (
        <section>
          <Fold
            title={say('{count} earlier {count, plural, one {plan} other {plans}} of a second etch', {
              count: older.length,
            })}
          >
            <ul className="second-older">
              {older.map((each) => (
                <li key={each.id}>
                  {dayWords(each.createdAt)}: {each.plan.line};{' '}
                  {each.plan.zones.map(({ name, etch }) => `${name} ${etch ?? 'none'}`).join(', ')}
                </li>
              ))}
            </ul>
          </Fold>
        </section>
      )}
    </>
  );
}
