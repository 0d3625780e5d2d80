import { useQueryClient } from '@tanstack/react-query';
import { useLocation } from 'wouter';
import type { EtchTableIssue } from '../../../records/etchTableEntry.ts';
import { copyTable, tableKey, tablesKey } from '../../client/etchTables.ts';
import type { Typed } from '../../managers/typedMerge.ts';
import { Choice } from '../../parts/Choice.tsx';
import { Field } from '../../parts/Field.tsx';
import { SaveForm } from '../../parts/SaveForm.tsx';
import { say } from '../../words/say.ts';
import { useTypedForm } from '../useTypedForm.ts';

/** Makes the studio's own copy of a table: from one of several, or from the only one given. */
export function CopyTable({
  tables,
  onLeave,
}: {
  tables: readonly { readonly id: string; readonly name: string }[];
  onLeave: () => void;
}) {
  const queries = useQueryClient();
  const [, go] = useLocation();
  const form = useTypedForm<EtchTableIssue, Typed>({
    entry: null,
    typedOf: () => ({ from: tables[0]?.id ?? '', name: '' }),
    check: ({ name = '' }) => ({
      name: name.trim() === '' ? say('A name is needed, such as Saltreach tannic.') : null,
    }),
    send: ({ from = '', name = '' }) => copyTable(from, name.trim()),
  });
  const copy = async () => {
    const made = await form.save();
    if (made) {
      queries.setQueryData(tableKey(made.table.id), made);
      void queries.invalidateQueries({ queryKey: tablesKey });
      go(`/tables/${made.table.id}`);
    }
    return made;
  };
  return (
    <div className="copy-table">
      <SaveForm
        label={say('A table of our own')}
        act={say('Make the copy')}
        form={form}
        words={{ name: say('Name') }}
        onSave={copy}
        onLeave={onLeave}
      >
        {tables.length > 1 && (
          <Choice
            label={say('Copied from')}
            value={form.values.from ?? ''}
            options={tables.map(({ id, name }) => [id, name] as const)}
            onChoose={(from) => form.set({ from })}
          />
        )}
        <Field
          label={say('What it is called here')}
          autoComplete="off"
          autoFocus
          maxLength={200}
          value={form.values.name ?? ''}
          trouble={form.troubleOf('name')}
          onChange={(event) => form.set({ name: event.target.value })}
        />
      </SaveForm>
    </div>
  );
}
