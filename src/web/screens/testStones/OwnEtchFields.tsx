import './OwnEtchFields.css';
import { useState } from 'react';
import type { OwnEtch } from '../../../records/testPlan.ts';
import { Button } from '../../parts/Button.tsx';
import { Choice } from '../../parts/Choice.tsx';
import { NumberField } from '../../parts/NumberField.tsx';
import { say } from '../../words/say.ts';

const materials = [
  ['gum', say('gum')],
  ['tannic solution', say('tannic solution')],
  ['water', say('water')],
] as const;

const strengths = [
  ['light', say('a light etch')],
  ['middle', say('a middle etch')],
  ['dark', say('a strong etch')],
] as const;

type Material = (typeof materials)[number][0];

/** What a new etch is made of and how long it lies, so that millilitres and times can be worked out for it. */
export function OwnEtchFields({ level, onSaid }: { level: string; onSaid: (etch: OwnEtch) => void }) {
  const [first, setFirst] = useState<Material>('gum');
  const [second, setSecond] = useState<Material | ''>('tannic solution');
  const [partsOfFirst, setPartsOfFirst] = useState(1);
  const [partsOfSecond, setPartsOfSecond] = useState(1);
  const [strength, setStrength] = useState<OwnEtch['strength']>('middle');
  const [seconds, setSeconds] = useState(120);
  const parts = [
    { material: first, parts: partsOfFirst },
    ...(second === '' || second === first ? [] : [{ material: second, parts: partsOfSecond }]),
  ];
  const set = (put: (value: number) => void) => (value: number | null) => value !== null && put(value);
  return (
    <fieldset className="test-stone-fields">
      <legend>{say('What “{level}” is made of', { level })}</legend>
      <Choice label={say('Of')} value={first} options={materials} onChoose={setFirst} />
      <NumberField
        label={say('Parts of it')}
        value={partsOfFirst}
        least={0.1}
        most={1000}
        onValue={set(setPartsOfFirst)}
      />
      <Choice<Material | ''>
        label={say('And of')}
        value={second}
        options={[['', say('nothing else')], ...materials]}
        onChoose={setSecond}
      />
      <NumberField
        label={say('Parts of that')}
        value={partsOfSecond}
        least={0.1}
        most={1000}
        onValue={set(setPartsOfSecond)}
      />
      <Choice<OwnEtch['strength']>
        label={say('Handled like')}
        value={strength}
        options={strengths}
        onChoose={setStrength}
      />
      <NumberField
        label={say('Lies for')}
        unit="s"
        value={seconds}
        least={5}
        most={7200}
        onValue={set((value) => setSeconds(Math.round(value)))}
      />
      <Button onClick={() => onSaid({ level, parts, strength, contactSeconds: seconds })}>
        {say('Take it so')}
      </Button>
    </fieldset>
  );
}
