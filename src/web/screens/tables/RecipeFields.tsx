import type { EtchRowTyped } from '../../managers/etchRowTyped.ts';
import { Button } from '../../parts/Button.tsx';
import { Field } from '../../parts/Field.tsx';
import { Notice } from '../../parts/Notice.tsx';

/** How an etch is made up: its parts, or the drops that go into its gum. */
export function RecipeFields({
  row,
  troubles,
  onChange,
}: {
  row: EtchRowTyped;
  troubles: Readonly<Record<string, string>>;
  onChange: (changes: Partial<EtchRowTyped>) => void;
}) {
  if (row.recipe === 'drops') {
    const field = (name: 'acid' | 'into' | 'dropsLow' | 'dropsHigh', label: string) => (
      <Field
        label={label}
        autoComplete="off"
        {...(name.startsWith('drops') && { inputMode: 'decimal' as const })}
        value={row[name]}
        trouble={troubles[name] ?? null}
        onChange={(event) => onChange({ [name]: event.target.value })}
      />
    );
    return (
      <>
        <div className="fields" style={{ '--least': '180px' } as React.CSSProperties}>
          {field('acid', 'Acid and its strength')}
          {field('into', 'Into')}
        </div>
        <div className="fields">
          {field('dropsLow', 'Drops to 30 ml, least')}
          {field('dropsHigh', 'Drops to 30 ml, most')}
        </div>
        <Notice kind="caution" title="Acid into gum,">
          never gum into acid; nitric never near alcohol, solvent or oily rags.
        </Notice>
      </>
    );
  }
  const setPart = (index: number, changes: Partial<EtchRowTyped['parts'][number]>) =>
    onChange({ parts: row.parts.map((part, each) => (each === index ? { ...part, ...changes } : part)) });
  return (
    <>
      <ul className="recipe-parts">
        {row.parts.map((part, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: parts have no name of their own until one is typed
          <li key={index}>
            <Field
              label={`Part ${index + 1}`}
              autoComplete="off"
              value={part.material}
              trouble={troubles[`parts.${index}.material`] ?? null}
              onChange={(event) => setPart(index, { material: event.target.value })}
            />
            <Field
              label="Parts"
              inputMode="decimal"
              autoComplete="off"
              value={part.parts}
              trouble={troubles[`parts.${index}.parts`] ?? null}
              onChange={(event) => setPart(index, { parts: event.target.value })}
            />
            {row.parts.length > 1 && (
              <Button
                kind="quiet"
                aria-label={`Leave out part ${index + 1}`}
                onClick={() => onChange({ parts: row.parts.filter((_, each) => each !== index) })}
              >
                Leave out
              </Button>
            )}
          </li>
        ))}
      </ul>
      <Button kind="quiet" onClick={() => onChange({ parts: [...row.parts, { material: '', parts: '1' }] })}>
        Add a part
      </Button>
    </>
  );
}
