import { Told } from '../../parts/Told.tsx';
import { told } from '../../words/told.ts';
import './RowTable.css';
import { Link } from 'wouter';
import type { EtchRecipe, EtchRow } from '../../../records/etch.ts';
import { minutesSeconds } from '../../../studio/etch/clockWords.ts';
import { StrengthSwatch } from '../../parts/StrengthSwatch.tsx';
import { etchStrengths, strengthFor } from '../../parts/strengthWords.ts';
import { say } from '../../words/say.ts';
import { sayRich } from '../../words/sayRich.ts';
import { partsAddress } from '../mixing/askedParts.ts';
import { recipeWords } from './rowWords.ts';

/** The rules of an etch table, weakest first, each with its basis and what its sources say. */
export function RowTable({ rows }: { rows: readonly EtchRow[] }) {
  const missing = etchStrengths.filter((strength) => !rows.some((row) => row.strength === strength));
  return (
    <table className="row-table">
      <thead>
        <tr>
          <th scope="col">{say('Drawn')}</th>
          <th scope="col">{say('Etch')}</th>
          <th scope="col">{say('Contact')}</th>
          <th scope="col">{say('Move within')}</th>
          <th scope="col">{say('Where it comes from')}</th>
        </tr>
      </thead>
      {etchStrengths.flatMap((strength) => {
        const row = rows.find((each) => each.strength === strength);
        return row ? [<RuleRows key={strength} row={row} />] : [];
      })}
      {missing.length > 0 && (
        <tfoot>
          <tr>
            <td colSpan={5}>
              {say('No rule here for {missing}: test a patch first; a plan goes on without it.', {
                missing: missing.map(told).join(', '),
              })}
            </td>
          </tr>
        </tfoot>
      )}
    </table>
  );
}

function RuleRows({ row }: { row: EtchRow }) {
  const { strength, name, recipe, contactSeconds, moveWithinSeconds, basis, advice = [], choice } = row;
  const { low, wanted, high } = contactSeconds;
  return (
    <tbody>
      <tr>
        <th scope="row">
          <StrengthSwatch strength={strength} />
          <span>
            <b className="big">{told(strength)}</b>
            <span className="soft">{strengthFor[strength]}</span>
          </span>
        </th>
        <td data-label={say('Etch')}>
          <b>{told(name)}</b>
          {recipeAdds(recipe, name) && <span className="soft">{recipeWords(recipe)}</span>}
          {recipe.kind === 'parts' && recipe.parts.length > 1 && (
            <Link href={partsAddress(recipe.parts)}>
              {sayRich('in millilitres<span>: {name}</span>', {
                span: (words) => <span className="unseen">{words}</span>,
                name: told(name),
              })}
            </Link>
          )}
        </td>
        <td data-label={say('Contact')}>
          <span className="row-clock">
            <Clock of="least" seconds={low} />
            <Clock of="wanted" seconds={wanted} />
            <Clock of="most" seconds={high} none={say('none while wet')} />
          </span>
        </td>
        <td data-label={say('Move within')}>
          <span className="row-within">
            <b className="big">{minutesSeconds(moveWithinSeconds)}</b>
          </span>
        </td>
        <td data-label={say('Where it comes from')}>
          {!basis.note.toLowerCase().includes(basis.basis) && <b>{told(basis.basis)}</b>}
          <span>{told(basis.note)}</span>
        </td>
      </tr>
      {(advice.length > 0 || choice) && (
        <tr className="row-advice">
          <td colSpan={5}>
            {advice.length > 0 && (
              <>
                <p className="stamp">
                  {say('{count, plural, one {One source says} other {The sources do not agree}}', {
                    count: advice.length,
                  })}
                </p>
                <dl>
                  {advice.map(({ source, advice: says }) => (
                    <div key={`${source} ${says}`}>
                      <dt lang="en">{source}</dt>
                      <dd>
                        <Told>{says}</Told>
                      </dd>
                    </div>
                  ))}
                </dl>
              </>
            )}
            {choice && (
              <p>
                <b>{say('Chosen here:')}</b> {choice}
              </p>
            )}
          </td>
        </tr>
      )}
    </tbody>
  );
}

function Clock({ of, seconds, none = say('none') }: { of: string; seconds: number | null; none?: string }) {
  return (
    <span className={of === 'wanted' ? 'row-wanted' : undefined}>
      <b className="big">{seconds === null ? '–' : minutesSeconds(seconds)}</b>
      <small>{seconds === null && of === 'most' ? none : told(of)}</small>
    </span>
  );
}

/** Whether what an etch is made of says more than its name does. */
function recipeAdds(recipe: EtchRecipe, name: string): boolean {
  return recipe.kind === 'drops' || recipe.parts.length > 1 || !name.includes(recipe.parts[0]!.material);
}
