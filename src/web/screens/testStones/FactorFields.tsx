import { useState } from 'react';
import type { TestFactor } from '../../../records/testStone.ts';
import { Button } from '../../parts/Button.tsx';
import { Choice } from '../../parts/Choice.tsx';
import { Field } from '../../parts/Field.tsx';

const given = [
  ['patch', 'each patch for itself'],
  ['strip', 'a whole strip at once'],
  ['stone', 'the whole stone at once'],
] as const;

/** What was varied on a test stone, and to what it was given at once. */
export function FactorFields({
  factors,
  onFactors,
}: {
  factors: readonly TestFactor[];
  onFactors: (factors: readonly TestFactor[]) => void;
}) {
  const [typed, setTyped] = useState('');
  const name = typed.trim();
  const taken = factors.some((factor) => factor.name === name);
  return (
    <div className="test-stone-form">
      <p className="soft">
        What was given to a whole strip at once counts once for the strip, however many patches lie in it.
      </p>
      {factors.map((factor) => (
        <div key={factor.name} className="test-stone-factor">
          <Choice<TestFactor['givenTo']>
            label={`${factor.name} was given to`}
            value={factor.givenTo}
            options={given}
            onChoose={(givenTo) =>
              onFactors(factors.map((each) => (each === factor ? { ...each, givenTo } : each)))
            }
          />
          <Button kind="quiet" onClick={() => onFactors(factors.filter((each) => each !== factor))}>
            Leave out {factor.name}
          </Button>
        </div>
      ))}
      <Field
        label="Something else that was varied"
        hint="Such as etch strength, time, powder."
        value={typed}
        onChange={(event) => setTyped(event.target.value)}
        trouble={taken ? 'It is there already.' : null}
      />
      <Button
        disabled={name === '' || taken || factors.length >= 12}
        onClick={() => {
          onFactors([...factors, { name: name.slice(0, 60), givenTo: 'patch' }]);
          setTyped('');
        }}
      >
        Add it
      </Button>
    </div>
  );
}
