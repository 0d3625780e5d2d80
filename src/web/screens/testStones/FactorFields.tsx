import { useState } from 'react';
import type { TestFactor } from '../../../records/testStone.ts';
import { Button } from '../../parts/Button.tsx';
import { Choice } from '../../parts/Choice.tsx';
import { Field } from '../../parts/Field.tsx';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';

const given = [
  ['patch', say('each patch for itself')],
  ['strip', say('a whole strip at once')],
  ['stone', say('the whole stone at once')],
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
        {say(
          'What was given to a whole strip at once counts once for the strip, however many patches lie in it.',
        )}
      </p>
      {factors.map((factor) => (
        <div key={factor.name} className="test-stone-factor">
          <Choice<TestFactor['givenTo']>
            label={say('{factor} was given to', { factor: told(factor.name) })}
            value={factor.givenTo}
            options={given}
            onChoose={(givenTo) =>
              onFactors(factors.map((each) => (each === factor ? { ...each, givenTo } : each)))
            }
          />
          <Button kind="quiet" onClick={() => onFactors(factors.filter((each) => each !== factor))}>
            {say('Leave out {factor}', { factor: told(factor.name) })}
          </Button>
        </div>
      ))}
      <Field
        label={say('Something else that was varied')}
        hint={say('Such as etch strength, time, powder.')}
        value={typed}
        onChange={(event) => setTyped(event.target.value)}
        trouble={taken ? say('It is there already.') : null}
      />
      <Button
        disabled={name === '' || taken || factors.length >= 12}
        onClick={() => {
          onFactors([...factors, { name: name.slice(0, 60), givenTo: 'patch' }]);
          setTyped('');
        }}
      >
        {say('Add it')}
      </Button>
    </div>
  );
}
