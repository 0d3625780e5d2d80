import { useState } from 'react';
import type { Basis } from '../../../foundation/measured.ts';
import type { EtchRowTyped } from '../../managers/etchRowTyped.ts';
import { Button } from '../../parts/Button.tsx';
import { Choice } from '../../parts/Choice.tsx';
import { Field } from '../../parts/Field.tsx';
import { Picks } from '../../parts/Picks.tsx';
import { StrengthSwatch } from '../../parts/StrengthSwatch.tsx';
import { strengthFor } from '../../parts/strengthWords.ts';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';
import { RecipeFields } from './RecipeFields.tsx';
import { SourceFields } from './SourceFields.tsx';

const bases: readonly (readonly [Basis, string])[] = [
  ['this room', say('this room’s record')],
  ['published', say('published')],
  ['common practice', say('common practice')],
  ['memory', say('from memory')],
  ['typed', say('typed, no basis')],
  ['measured', say('measured')],
];

/** One rule of a table while it is changed. */
export function RuleFields({
  row,
  troubles,
  onChange,
  onTakeOut,
}: {
  row: EtchRowTyped;
  troubles: Readonly<Record<string, string>>;
  onChange: (changes: Partial<EtchRowTyped>) => void;
  onTakeOut: () => void;
}) {
  const [open, setOpen] = useState(row.name === '');
  const faulty = Object.keys(troubles).length > 0;
  const time = (field: 'low' | 'wanted' | 'high' | 'moveWithin', label: string, hint: string) => (
    <Field
      label={label}
      hint={hint}
      autoComplete="off"
      value={row[field]}
      trouble={troubles[field] ?? null}
      onChange={(event) => onChange({ [field]: event.target.value })}
    />
  );
  return (
    <details className="rule" open={open || faulty} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary data-folded={say('change')} data-open={say('fold')}>
        <StrengthSwatch strength={row.strength} />
        <span>
          <b className="big">{told(row.strength)}</b>
          <span className="soft">{strengthFor[row.strength]}</span>
        </span>
        <span className="rule-says">
          {row.name === '' ? say('no etch yet') : row.name}
          {row.low !== '' && `, ${row.wanted === '' ? say('at least {low}', { low: row.low }) : row.wanted}`}
        </span>
      </summary>
      <fieldset className="rule-fields">
        <legend className="unseen">{told(row.strength)}</legend>
        <div className="rule-part">
          <Field
            label={say('The etch is called')}
            autoComplete="off"
            maxLength={200}
            value={row.name}
            trouble={troubles.name ?? null}
            onChange={(event) => onChange({ name: event.target.value })}
          />
          <Picks<EtchRowTyped['recipe']>
            label={say('Made up')}
            value={row.recipe}
            options={[
              ['parts', say('by parts')],
              ['drops', say('by drops of acid into gum')],
            ]}
            onPick={(recipe) => onChange({ recipe })}
          />
          <RecipeFields row={row} troubles={troubles} onChange={onChange} />
        </div>
        <div className="rule-part">
          <div className="fields rule-times">
            {time('low', say('Least contact'), say('1:30 or 90'))}
            {time('wanted', say('Wanted'), say('empty: none'))}
            {time('high', say('Most'), say('empty: none while wet'))}
            {time('moveWithin', say('Move within'), say('then it has lain too long'))}
          </div>
          <div className="fields" style={{ '--least': '220px' } as React.CSSProperties}>
            <Choice<Basis>
              label={say('It stands on')}
              value={row.basis}
              options={bases}
              onChoose={(basis) => onChange({ basis })}
            />
            <Field
              label={say('Where it comes from')}
              hint={say('Author, year, title, page; or what was seen here.')}
              autoComplete="off"
              maxLength={2000}
              value={row.note}
              trouble={troubles.note ?? null}
              onChange={(event) => onChange({ note: event.target.value })}
            />
          </div>
          <SourceFields row={row} troubles={troubles} onChange={onChange} />
          <Button kind="quiet" onClick={onTakeOut}>
            {say('Take the rule for {strength} out', { strength: told(row.strength) })}
          </Button>
        </div>
      </fieldset>
    </details>
  );
}
