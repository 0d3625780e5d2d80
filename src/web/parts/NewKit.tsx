import { useState } from 'react';
import type { KitEntry, KitTool } from '../../records/kit.ts';
import { addKit } from '../client/kit.ts';
import { type ShownFailure, shownFailure } from '../client/shownFailure.ts';
import { type KitTyped, kitOfTyped } from '../managers/kitForm.ts';
import { say } from '../words/say.ts';
import { Button } from './Button.tsx';
import { FailureNotice } from './FailureNotice.tsx';
import { KitFields } from './KitFields.tsx';

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
      <KitFields tool={tool} typed={typed} troubleOf={(field) => troubles[field] ?? null} set={set} />
      {refused && <FailureNotice failure={refused} />}
      <div className="kit-form-act">
        <Button kind="act" type="submit" disabled={busy}>
          {busy ? say('Entering …') : say('Enter and take it in hand')}
        </Button>
        <Button kind="quiet" onClick={onLeave}>
          {say('Leave it')}
        </Button>
      </div>
    </form>
  );
}
