import type { ReactNode } from 'react';
import type { StoneEntry } from '../../../records/stoneEntry.ts';
import type { Typed } from '../../managers/typedMerge.ts';
import { SaveForm } from '../../parts/SaveForm.tsx';
import type { TypedForm } from '../useTypedForm.ts';
import { useKeptStone } from './useKeptStone.ts';

/** A form over a part of a stone, inside its page: once it is saved, the page shows the stone so and the form is left. */
export function StoneForm<Values extends Typed>({
  label,
  act,
  form,
  words,
  onLeave,
  children,
}: {
  label: string;
  act: string;
  form: TypedForm<StoneEntry, Values>;
  /** What each field is called. */
  words: Readonly<Record<string, string>>;
  onLeave: () => void;
  children: ReactNode;
}) {
  const keep = useKeptStone();
  const save = async () => {
    const saved = await form.save();
    if (saved) {
      keep(saved);
      onLeave();
    }
    return saved;
  };
  return (
    <SaveForm
      label={label}
      act={act}
      actKind="plain"
      form={form}
      words={words}
      onSave={save}
      onLeave={onLeave}
    >
      {children}
    </SaveForm>
  );
}
