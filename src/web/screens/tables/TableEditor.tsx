import { told } from '../../words/told.ts';
import './TableEditor.css';
import { useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import type { EtchTable } from '../../../records/etch.ts';
import type { EtchTableIssue } from '../../../records/etchTableEntry.ts';
import { tableChanges } from '../../../studio/etch/tableChanges.ts';
import { saveTable, tableKey, tablesKey } from '../../client/etchTables.ts';
import {
  type EtchRowTyped,
  emptyEtchRow,
  etchRowOf,
  etchRowTroubles,
  etchRowTyped,
  mergedRules,
} from '../../managers/etchRowTyped.ts';
import { Button } from '../../parts/Button.tsx';
import { Field } from '../../parts/Field.tsx';
import { SaveForm } from '../../parts/SaveForm.tsx';
import { etchStrengths } from '../../parts/strengthWords.ts';
import { say } from '../../words/say.ts';
import { useSaving } from '../useSaving.ts';
import { RuleFields } from './RuleFields.tsx';

/** Changes the studio's own table; a save becomes its next version. */
export function TableEditor({ kept, onLeave }: { kept: EtchTableIssue; onLeave: () => void }) {
  const queries = useQueryClient();
  const [base, setBase] = useState({ opened: kept.table, now: kept.table });
  const [name, setName] = useState(kept.table.name);
  const [rows, setRows] = useState<readonly EtchRowTyped[]>(() => kept.table.rows.map(etchRowTyped));
  const [tried, setTried] = useState(false);
  const saving = useSaving<EtchTableIssue>();
  const stale = base.opened !== base.now;
  const troubles = rows.map(etchRowTroubles);
  const nameTrouble = name.trim() === '' ? say('A name is needed.') : null;
  const faulty = nameTrouble !== null || troubles.some((each) => Object.keys(each).length > 0);
  const missing = etchStrengths.filter((strength) => !rows.some((row) => row.strength === strength));

  const settle = (version: EtchTableIssue) => {
    queries.setQueryData(tableKey(version.table.id), version);
    void queries.invalidateQueries({ queryKey: tablesKey });
  };
  const typedTable = (): Pick<EtchTable, 'name' | 'rows'> => ({
    name: name.trim(),
    rows: etchStrengths.flatMap((strength) => rows.filter((row) => row.strength === strength).map(etchRowOf)),
  });
  const save = async () => {
    setTried(true);
    if (faulty) return null;
    const saved = await saving.send(
      () => saveTable(base.now.id, base.now.version, typedTable()),
      (current) => {
        const { opened } = base;
        setRows((typed) => mergedRules(base.now.rows, typed, current.table.rows));
        setName((typed) => (typed === base.now.name ? current.table.name : typed));
        setBase({ opened, now: current.table });
        queries.setQueryData(tableKey(current.table.id), current);
      },
    );
    if (saved) {
      settle(saved);
      onLeave();
    }
    return saved;
  };
  const change = (index: number, changes: Partial<EtchRowTyped>) =>
    setRows((now) => now.map((row, each) => (each === index ? { ...row, ...changes } : row)));

  return (
    <div className="table-editor">
      <SaveForm
        label={say('Change {table}', { table: kept.table.name })}
        act={say('Etch by these rows from now on')}
        form={{
          pending: saving.pending,
          trouble: saving.trouble,
          stale: stale ? { clashes: [], taken: [] } : null,
          takeKept: () => {
            setName(base.now.name);
            setRows(base.now.rows.map(etchRowTyped));
            setBase({ opened: base.now, now: base.now });
            saving.forget();
          },
        }}
        words={{}}
        beside={
          stale && (
            <TheirTable
              theirs={tableChanges(base.opened, base.now)}
              mine={faulty ? null : tableChanges(base.now, { ...base.now, ...typedTable() })}
            />
          )
        }
        onSave={save}
        onLeave={onLeave}
      >
        <Field
          label={say('Name of the table')}
          autoComplete="off"
          autoFocus
          maxLength={200}
          value={name}
          trouble={tried ? nameTrouble : null}
          onChange={(event) => setName(event.target.value)}
        />
        {rows
          .map((row, index) => ({ row, index }))
          .toSorted((a, b) => etchStrengths.indexOf(a.row.strength) - etchStrengths.indexOf(b.row.strength))
          .map(({ row, index }) => (
            <RuleFields
              key={row.strength}
              row={row}
              troubles={tried ? troubles[index]! : {}}
              onChange={(changes) => change(index, changes)}
              onTakeOut={() => setRows((now) => now.filter((_, each) => each !== index))}
            />
          ))}
        {missing.length > 0 && (
          <div className="table-editor-more">
            {missing.map((strength) => (
              <Button key={strength} onClick={() => setRows((now) => [...now, emptyEtchRow(strength)])}>
                {say('Add a rule for {strength}', { strength: told(strength) })}
              </Button>
            ))}
          </div>
        )}
      </SaveForm>
    </div>
  );
}

/** What somebody else saved meanwhile, and what saving would do to it. */
function TheirTable({ theirs, mine }: { theirs: readonly string[]; mine: readonly string[] | null }) {
  return (
    <div className="save-form-stale">
      <p className="stamp">{say('What they changed; rules that you left alone are taken over')}</p>
      <ul>
        {theirs.length === 0 ? (
          <li>{say('Nothing in the rules.')}</li>
        ) : (
          theirs.map((each) => <li key={each}>{told(each)}</li>)
        )}
      </ul>
      {mine !== null && (
        <>
          <p className="stamp">{say('What your rows would change in what stands now')}</p>
          <ul>
            {mine.length === 0 ? (
              <li>{say('Nothing.')}</li>
            ) : (
              mine.map((each) => <li key={each}>{told(each)}</li>)
            )}
          </ul>
        </>
      )}
    </div>
  );
}
