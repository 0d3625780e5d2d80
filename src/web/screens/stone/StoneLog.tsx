import './StoneLog.css';
import { useState } from 'react';
import type { StoneEntry } from '../../../records/stoneEntry.ts';
import { saveStone } from '../../client/stones.ts';
import { dayText } from '../../managers/localMoment.ts';
import type { Typed } from '../../managers/typedMerge.ts';
import { Button } from '../../parts/Button.tsx';
import { Field } from '../../parts/Field.tsx';
import { say } from '../../words/say.ts';
import { useReturnFocus } from '../useReturnFocus.ts';
import { useTypedForm } from '../useTypedForm.ts';
import { StoneForm } from './StoneForm.tsx';
import { type LogField, type StoneLogKind, withLine } from './stoneLogs.ts';

/** One log of a stone: its lines, newest first, and a form for one more or for correcting one. */
export function StoneLog<Row extends { readonly at: string }>({
  kind,
  stone,
}: {
  kind: StoneLogKind<Row>;
  stone: StoneEntry;
}) {
  const [open, setOpen] = useState<{ readonly row: Row | null } | null>(null);
  const rows = kind.rowsOf(stone);
  const opener = useReturnFocus(open !== null);
  return (
    <section className="stone-log" aria-label={kind.title}>
      <h2 className="big">{kind.title}</h2>
      {rows.length === 0 && !open && <p className="soft">{kind.nothing}</p>}
      {open && <LineForm kind={kind} stone={stone} row={open.row} onLeave={() => setOpen(null)} />}
      <ol>
        {rows.toReversed().map((row) => {
          const [main, beside] = kind.words(row);
          return (
            <li key={JSON.stringify(row)}>
              <b>{main}</b>
              <span>{beside}</span>
              <span className="soft">{dayText(row.at)}</span>
              {!stone.putBy && (
                <Button
                  kind="quiet"
                  onClick={() => setOpen({ row })}
                  aria-label={say('Correct {main}, {day}', { main, day: dayText(row.at) })}
                >
                  {say('Correct')}
                </Button>
              )}
            </li>
          );
        })}
      </ol>
      {!open && !stone.putBy && (
        <Button ref={opener} onClick={() => setOpen({ row: null })}>
          {kind.add}
        </Button>
      )}
    </section>
  );
}

function LineForm<Row extends { readonly at: string }>({
  kind,
  stone,
  row,
  onLeave,
}: {
  kind: StoneLogKind<Row>;
  stone: StoneEntry;
  row: Row | null;
  onLeave: () => void;
}) {
  const [takingOut, setTakingOut] = useState(false);
  const form = useTypedForm<StoneEntry, Typed>({
    entry: stone,
    typedOf: () => kind.typedOf(row),
    check: (typed) => (takingOut ? {} : kind.check(typed)),
    send: (typed, entry) => {
      const now = entry ?? stone;
      const rows = withLine(kind.rowsOf(now), row, takingOut ? null : kind.rowOf(typed));
      return saveStone(now.id, now.version, kind.changes(rows));
    },
  });
  const line = ({ name, label, unit, hint, kind: holds }: LogField) => (
    <Field
      key={name}
      label={label}
      {...(unit && { unit })}
      {...(hint && { hint })}
      {...(holds === 'moment' && { type: 'datetime-local' })}
      {...(holds === 'number' && { inputMode: 'decimal' as const })}
      // The form opens because it was asked for: the hand goes on where it is.
      autoFocus={name === kind.fields[0]?.name}
      autoComplete="off"
      value={form.values[name] ?? ''}
      trouble={form.troubleOf(name)}
      onChange={(event) => form.set({ [name]: event.target.value })}
    />
  );
  return (
    <StoneForm
      label={row ? say('{title}: correct a line', { title: kind.title }) : kind.add}
      act={takingOut ? say('Take this line out') : row ? say('Save the line') : say('Add the line')}
      form={form}
      words={Object.fromEntries(kind.fields.map(({ name, label }) => [name, label]))}
      onLeave={onLeave}
    >
      {row && (
        <label className="stone-log-out">
          <input
            type="checkbox"
            checked={takingOut}
            onChange={(event) => setTakingOut(event.target.checked)}
          />
          {say('It was never so: take this line out')}
        </label>
      )}
      {!takingOut && (
        <>
          <div className="fields">{kind.fields.filter(({ kind: is }) => is === 'number').map(line)}</div>
          <div className="fields stone-log-words">
            {kind.fields.filter(({ kind: is }) => is !== 'number').map(line)}
          </div>
        </>
      )}
    </StoneForm>
  );
}
