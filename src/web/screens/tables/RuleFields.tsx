import { useState } from 'react';
import type { Basis } from '../../../foundation/measured.ts';
import type { EtchRowTyped } from '../../managers/etchRowTyped.ts';
import { Button } from '../../parts/Button.tsx';
import { Choice } from '../../parts/Choice.tsx';
import { Field } from '../../parts/Field.tsx';
import { Picks } from '../../parts/Picks.tsx';
import { StrengthSwatch } from '../../parts/StrengthSwatch.tsx';
import { strengthFor } from '../../parts/strengthWords.ts';
import { RecipeFields } from './RecipeFields.tsx';
import { SourceFields } from './SourceFields.tsx';

const bases: readonly (readonly [Basis, string])[] = [
  ['this room', 'this room’s record'],
  ['published', 'published'],
  ['common practice', 'common practice'],
  ['memory', 'from memory'],
  ['typed', 'typed, no basis'],
  ['measured', 'measured'],
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
      <summary>
        <StrengthSwatch strength={row.strength} />
        <span>
          <b className="big">{row.strength}</b>
          <span className="soft">{strengthFor[row.strength]}</span>
        </span>
        <span className="rule-says">
          {row.name === '' ? 'no etch yet' : row.name}
          {row.low !== '' && `, ${row.wanted === '' ? `at least ${row.low}` : row.wanted}`}
        </span>
      </summary>
      <fieldset className="rule-fields">
        <legend className="unseen">{row.strength}</legend>
        <div className="rule-part">
          <Field
            label="The etch is called"
            autoComplete="off"
            maxLength={200}
            value={row.name}
            trouble={troubles.name ?? null}
            onChange={(event) => onChange({ name: event.target.value })}
          />
          <Picks<EtchRowTyped['recipe']>
            label="Made up"
            value={row.recipe}
            options={[
              ['parts', 'by parts'],
              ['drops', 'by drops of acid into gum'],
            ]}
            onPick={(recipe) => onChange({ recipe })}
          />
          <RecipeFields row={row} troubles={troubles} onChange={onChange} />
        </div>
        <div className="rule-part">
          <div className="fields rule-times">
            {time('low', 'Least contact', '1:30 or 90')}
            {time('wanted', 'Wanted', 'empty: none')}
            {time('high', 'Most', 'empty: none while wet')}
            {time('moveWithin', 'Move within', 'then it has lain too long')}
          </div>
          <div className="fields" style={{ '--least': '220px' } as React.CSSProperties}>
            <Choice<Basis>
              label="It stands on"
              value={row.basis}
              options={bases}
              onChoose={(basis) => onChange({ basis })}
            />
            <Field
              label="Where it comes from"
              hint="Author, year, title, page; or what was seen here."
              autoComplete="off"
              maxLength={2000}
              value={row.note}
              trouble={troubles.note ?? null}
              onChange={(event) => onChange({ note: event.target.value })}
            />
          </div>
          <SourceFields row={row} troubles={troubles} onChange={onChange} />
          <Button kind="quiet" onClick={onTakeOut}>
            Take the rule for {row.strength} out
          </Button>
        </div>
      </fieldset>
    </details>
  );
}
