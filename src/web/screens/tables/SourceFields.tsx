import type { EtchRowTyped } from '../../managers/etchRowTyped.ts';
import { Button } from '../../parts/Button.tsx';
import { Field } from '../../parts/Field.tsx';

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
  const set = (index: number, changes: Partial<EtchRowTyped['advice'][number]>) =>
    onChange({ advice: row.advice.map((each, at) => (at === index ? { ...each, ...changes } : each)) });
  return (
    <>
      {row.advice.length > 0 && (
        <ul className="source-lines">
          {row.advice.map((each, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a source has no name of its own until one is typed
            <li key={index}>
              <Field
                label={`Source ${index + 1}`}
                autoComplete="off"
                value={each.source}
                trouble={troubles[`advice.${index}`] ?? null}
                onChange={(event) => set(index, { source: event.target.value })}
              />
              <Field
                label="It says"
                autoComplete="off"
                value={each.advice}
                onChange={(event) => set(index, { advice: event.target.value })}
              />
              <Button
                kind="quiet"
                aria-label={`Leave out source ${index + 1}`}
                onClick={() => onChange({ advice: row.advice.filter((_, at) => at !== index) })}
              >
                Leave out
              </Button>
            </li>
          ))}
        </ul>
      )}
      {(row.advice.length > 0 || row.choice !== '') && (
        <Field
          label="Chosen here, and why"
          autoComplete="off"
          value={row.choice}
          onChange={(event) => onChange({ choice: event.target.value })}
        />
      )}
      <Button kind="quiet" onClick={() => onChange({ advice: [...row.advice, { source: '', advice: '' }] })}>
        {row.advice.length === 0 ? 'Sources disagree: write down what each says' : 'Add a source'}
      </Button>
    </>
  );
}
