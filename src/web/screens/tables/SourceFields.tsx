import type { EtchRowTyped } from '../../managers/etchRowTyped.ts';
import { Button } from '../../parts/Button.tsx';
import { Field } from '../../parts/Field.tsx';
import { say } from '../../words/say.ts';
import { FieldLines } from './FieldLines.tsx';

/** What several sources say to one rule, and why this table says what it does. */
export function SourceFields({
  row,
  troubles,
  onChange,
}: {
  row: EtchRowTyped;
  troubles: Readonly<Record<string, string>>;
  onChange: (changes: Partial<EtchRowTyped>) => void;
}) {
  return (
    <>
      {row.advice.length > 0 && (
        <FieldLines
          className="source-lines"
          name="source"
          lines={row.advice}
          onLines={(advice) => onChange({ advice })}
        >
          {(each, index, set) => (
            <>
              <Field
                label={say('Source {index}', { index: index + 1 })}
                autoComplete="off"
                value={each.source}
                trouble={troubles[`advice.${index}`] ?? null}
                onChange={(event) => set({ source: event.target.value })}
              />
              <Field
                label={say('It says')}
                autoComplete="off"
                value={each.advice}
                onChange={(event) => set({ advice: event.target.value })}
              />
            </>
          )}
        </FieldLines>
      )}
      {(row.advice.length > 0 || row.choice !== '') && (
        <Field
          label={say('Chosen here, and why')}
          autoComplete="off"
          value={row.choice}
          onChange={(event) => onChange({ choice: event.target.value })}
        />
      )}
      <Button kind="quiet" onClick={() => onChange({ advice: [...row.advice, { source: '', advice: '' }] })}>
        {row.advice.length === 0 ? say('Sources disagree: write down what each says') : say('Add a source')}
      </Button>
    </>
  );
}
