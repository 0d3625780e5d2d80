import type { HazardClass, Material } from '../../../records/material.ts';
import type { LineStage } from '../../../records/run.ts';
import { hazardWords } from '../../../studio/room/hazardWords.ts';
import { type MaterialTyped, materialFieldWords } from '../../managers/room/materialForm.ts';
import { Field } from '../../parts/Field.tsx';
import { Picks } from '../../parts/Picks.tsx';
import { Ticks } from '../../parts/Ticks.tsx';
import { Words } from '../../parts/Words.tsx';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';
import type { TypedForm } from '../useTypedForm.ts';
import { stageOptions } from './stageOptions.ts';

const hazards = Object.entries(hazardWords).map(([hazard, words]) => [hazard, told(words)]) as [
  HazardClass,
  string,
][];

/** The fields of a material, in the order in which its safety data sheet says them. */
export function MaterialFields({ form }: { form: TypedForm<Material, MaterialTyped> }) {
  const line = (field: keyof MaterialTyped, more: { unit?: string; hint?: string; type?: string } = {}) => (
    <Field
      label={materialFieldWords[field]}
      {...more}
      {...(more.unit !== undefined ? { inputMode: 'decimal' as const } : {})}
      autoComplete="off"
      maxLength={2000}
      value={form.values[field]}
      trouble={form.troubleOf(field)}
      onChange={(event) => form.set({ [field]: event.target.value })}
    />
  );
  const words = (field: keyof MaterialTyped) => form.values[field].split(' ').filter(Boolean);
  return (
    <>
      {line('name', {
        hint: say('By what it is, such as low-odour white spirit, not by what it is sold as.'),
      })}
      <Picks
        label={materialFieldWords.read}
        value={form.values.read}
        options={[
          ['', say('not yet')],
          ['yes', say('yes')],
        ]}
        onPick={(read) => form.set({ read })}
      />
      {form.values.read === 'yes' && (
        <>
          <Ticks
            label={materialFieldWords.hazards}
            values={words('hazards') as HazardClass[]}
            options={hazards}
            onTick={(ticked) => form.set({ hazards: ticked.join(' ') })}
          />
          {line('statements')}
          <div className="fields">
            {line('sheetDate', { type: 'date' })}
            {line('sheetPlace')}
          </div>
          <div className="fields">
            {line('flashPointC', { unit: '°C' })}
            {line('limitMgPerM3', { unit: 'mg/m³' })}
            {line('gramsPerMl', { unit: 'g/ml' })}
          </div>
        </>
      )}
      <Ticks
        label={materialFieldWords.stages}
        values={words('stages') as LineStage[]}
        options={stageOptions}
        onTick={(ticked) => form.set({ stages: ticked.join(' ') })}
      />
      {line('protection')}
      {line('firstAid')}
      {line('storage')}
      {line('waste')}
      <Words
        label={materialFieldWords.note}
        maxLength={10_000}
        value={form.values.note}
        onChange={(event) => form.set({ note: event.target.value })}
      />
    </>
  );
}
