import type { KitTool } from '../../records/kit.ts';
import { type KitTyped, kitFields } from '../managers/kitForm.ts';
import { say } from '../words/say.ts';
import { Field } from './Field.tsx';
import { Picks } from './Picks.tsx';

/** The fields of a tool or set-up: its name, and what is asked of its kind. */
export function KitFields({
  tool,
  typed,
  troubleOf,
  set,
}: {
  tool: KitTool;
  typed: KitTyped;
  /** What is wrong with a field; null where nothing is. */
  troubleOf: (field: string) => string | null;
  set: (field: string, value: string) => void;
}) {
  return (
    <>
      <Field
        label={say('Name')}
        hint={say('As it is called here.')}
        autoComplete="off"
        maxLength={200}
        value={typed.name ?? ''}
        trouble={troubleOf('name')}
        onChange={(event) => set('name', event.target.value)}
      />
      {kitFields[tool].map(({ field, label, unit, kind }) =>
        kind === 'yes-no' ? (
          <Picks
            key={field}
            label={label}
            value={typed[field] ?? ''}
            options={[
              ['', say('not known')],
              ['yes', say('yes')],
              ['no', say('no')],
            ]}
            onPick={(value) => set(field, value)}
          />
        ) : (
          <Field
            key={field}
            label={label}
            {...(unit !== undefined && { unit })}
            {...(kind === 'day' && { type: 'date' })}
            {...(kind === 'number' && { inputMode: 'decimal' as const })}
            autoComplete="off"
            maxLength={200}
            value={typed[field] ?? ''}
            trouble={troubleOf(field)}
            onChange={(event) => set(field, event.target.value)}
          />
        ),
      )}
    </>
  );
}
