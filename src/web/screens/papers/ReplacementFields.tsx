import { useQuery } from '@tanstack/react-query';
import type { Report } from '../../../records/report.ts';
import { listMaterials, materialsKey } from '../../client/materials.ts';
import {
  type ReplacementTyped,
  type ReportTyped,
  replacementsIn,
  reportFieldWords,
  withReplacement,
} from '../../managers/papers/reportForm.ts';
import { Button } from '../../parts/Button.tsx';
import { Choice } from '../../parts/Choice.tsx';
import { Field } from '../../parts/Field.tsx';
import { say } from '../../words/say.ts';
import type { TypedForm } from '../useTypedForm.ts';

/** Materials that others took the place of; amounts before are typed, since no record of them is kept. */
export function ReplacementFields({ form }: { form: TypedForm<Report, ReportTyped> }) {
  const all = replacementsIn(form.values);
  const trouble = form.troubleOf('replacements');
  const materials = useQuery({
    queryKey: [...materialsKey, 'for reports'],
    queryFn: ({ signal }) => listMaterials({ search: '', putBy: 'no' }, null, signal),
  });
  const register = [
    ['', say('not entered')] as const,
    ...(materials.data?.materials ?? []).map(({ id, name }) => [id, name] as const),
  ];
  return (
    <fieldset className="replacements">
      <legend>{reportFieldWords.replacements}</legend>
      {all.map((one, index) => (
        <OneReplacement
          // they have no other name than their place
          // biome-ignore lint/suspicious/noArrayIndexKey: see above
          key={index}
          number={index + 1}
          typed={one}
          register={register}
          onChange={(change) => form.set(withReplacement(form.values, index, change))}
        />
      ))}
      {trouble && (
        <p className="field-trouble" role="alert">
          {trouble}
        </p>
      )}
      <Button onClick={() => form.set(withReplacement(form.values, all.length, {}))}>
        {all.length === 0 ? say('A material was replaced') : say('One more')}
      </Button>
    </fieldset>
  );
}

function OneReplacement({
  number,
  typed,
  register,
  onChange,
}: {
  number: number;
  typed: ReplacementTyped;
  register: readonly (readonly [string, string])[];
  onChange: (change: Partial<ReplacementTyped> | null) => void;
}) {
  const line = (field: 'before' | 'beforeMl' | 'beforeFrom' | 'now', label: string, more: object = {}) => (
    <Field
      label={label}
      autoComplete="off"
      maxLength={200}
      value={typed[field]}
      onChange={(event) => onChange({ [field]: event.target.value })}
      {...more}
    />
  );
  const sheet = (field: 'beforeMaterialId' | 'nowMaterialId', label: string) => (
    <Choice
      label={label}
      value={typed[field]}
      options={register}
      onChoose={(id) => onChange({ [field]: id })}
    />
  );
  return (
    <div className="replacement" role="group" aria-label={say('Replaced material {number}', { number })}>
      <div className="fields">
        {line('before', say('Used before'), { hint: say('By what it is.') })}
        {sheet('beforeMaterialId', say('Its entry in the register'))}
      </div>
      <div className="fields">
        {line('beforeMl', say('How much, for the same works'), { unit: 'ml', inputMode: 'decimal' })}
        {line('beforeFrom', say('Where that is from'))}
      </div>
      <div className="fields">
        {line('now', say('What takes its place'), {
          hint: say('As plans name it, such as tannic solution.'),
        })}
        {sheet('nowMaterialId', say('Its own entry in the register'))}
      </div>
      <Button kind="quiet" onClick={() => onChange(null)}>
        {say('Leave this one out')}
      </Button>
    </div>
  );
}
