import { useState } from 'react';
import type { KitEntry, KitTool } from '../../records/kit.ts';
import { addKit } from '../client/kit.ts';
import { type ShownFailure, shownFailure } from '../client/shownFailure.ts';
import { type KitTyped, kitFields, kitOfTyped } from '../managers/kitForm.ts';
import { Button } from './Button.tsx';
import { FailureNotice } from './FailureNotice.tsx';
import { Field } from './Field.tsx';
import { Picks } from './Picks.tsx';

/** Enters a tool or set-up into the kit: its name, and what is known of it. */
export function NewKit({
  tool,
  onAdded,
  onLeave,
}: {
  tool: KitTool;
  onAdded: (entry: KitEntry) => void;
  onLeave: () => void;
}) {
  const [typed, setTyped] = useState<KitTyped>({});
  const [troubles, setTroubles] = useState<Readonly<Record<string, string>>>({});
  const [refused, setRefused] = useState<ShownFailure | null>(null);
  const [busy, setBusy] = useState(false);
  const set = (field: string, value: string) => setTyped((now) => ({ ...now, [field]: value }));
  const add = async () => {
    const read = kitOfTyped(tool, typed);
    setTroubles(read.troubles);
    if (read.draft === null) return;
    setBusy(true);
    setRefused(null);
    try {
      onAdded(await addKit(read.draft));
    } catch (thrown) {
      setRefused(shownFailure(thrown));
      setBusy(false);
    }
  };
  return (
    <form
      className="kit-form"
      onSubmit={(event) => {
        event.preventDefault();
        void add();
      }}
    >
      <Field
        label="Name"
        hint="As it is called here."
        autoComplete="off"
        maxLength={200}
        value={typed.name ?? ''}
        trouble={troubles.name ?? null}
        onChange={(event) => set('name', event.target.value)}
      />
      {kitFields[tool].map(({ field, label, unit, kind }) =>
        kind === 'yes-no' ? (
          <Picks
            key={field}
            label={label}
            value={typed[field] ?? ''}
            options={[
              ['', 'not known'],
              ['yes', 'yes'],
              ['no', 'no'],
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
            trouble={troubles[field] ?? null}
            onChange={(event) => set(field, event.target.value)}
          />
        ),
      )}
      {refused && <FailureNotice failure={refused} />}
      <div className="kit-form-act">
        <Button kind="act" type="submit" disabled={busy}>
          {busy ? 'Entering …' : 'Enter and pick it'}
        </Button>
        <Button kind="quiet" onClick={onLeave}>
          Leave it
        </Button>
      </div>
    </form>
  );
}
