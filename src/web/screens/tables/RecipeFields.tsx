import type { EtchRowTyped } from '../../managers/etchRowTyped.ts';
import { Button } from '../../parts/Button.tsx';
import { Field } from '../../parts/Field.tsx';
import { Notice } from '../../parts/Notice.tsx';
import { say } from '../../words/say.ts';
import { FieldLines } from './FieldLines.tsx';

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
          {field('acid', say('Acid and its strength'))}
          {field('into', say('Into'))}
        </div>
        <div className="fields">
          {field('dropsLow', say('Drops to 30 ml, least'))}
          {field('dropsHigh', say('Drops to 30 ml, most'))}
        </div>
        <Notice kind="caution" title={say('Acid into gum,')}>
          {say('never gum into acid; nitric never near alcohol, solvent or oily rags.')}
        </Notice>
      </>
    );
  }
  return (
    <>
      <FieldLines
        className="recipe-parts"
        name="part"
        lines={row.parts}
        least={1}
        onLines={(parts) => onChange({ parts })}
      >
        {(part, index, set) => (
          <>
            <Field
              label={say('Part {index}', { index: index + 1 })}
              autoComplete="off"
              value={part.material}
              trouble={troubles[`parts.${index}.material`] ?? null}
              onChange={(event) => set({ material: event.target.value })}
            />
            <Field
              label={say('Parts')}
              inputMode="decimal"
              autoComplete="off"
              value={part.parts}
              trouble={troubles[`parts.${index}.parts`] ?? null}
              onChange={(event) => set({ parts: event.target.value })}
            />
          </>
        )}
      </FieldLines>
      <Button kind="quiet" onClick={() => onChange({ parts: [...row.parts, { material: '', parts: '1' }] })}>
        {say('Add a part')}
      </Button>
    </>
  );
}
