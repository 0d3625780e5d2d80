import './SecondEtchView.css';
import { useQuery, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import type { Reading, SecondEtchLine } from '../../../records/secondEtch.ts';
import { groundId } from '../../../studio/etch/planAreas.ts';
import { zoneLetter } from '../../../studio/etch/zoneLetters.ts';
import { listTables, tablesKey } from '../../client/etchTables.ts';
import { listSecondEtches, makeSecondEtch, secondEtchesKey } from '../../client/plans.ts';
import { type ShownFailure, shownFailure } from '../../client/shownFailure.ts';
import { Button } from '../../parts/Button.tsx';
import { Choice } from '../../parts/Choice.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { Picks } from '../../parts/Picks.tsx';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';
import { SecondEtchBoard } from './SecondEtchBoard.tsx';
import { SecondEtchPlanned } from './SecondEtchPlanned.tsx';
import { ToTheBench } from './ToTheBench.tsx';
import type { WorkDesk } from './useWorkDesk.ts';
import { WorkPage } from './WorkPage.tsx';

const readings: readonly (readonly [Reading, string])[] = [
  ['not read', say('not read yet')],
  ['as drawn', say('came up as drawn')],
  ['lights lost', say('its lights are lost')],
  ['closing', say('its whites are closing')],
  ['scum', say('it scums')],
];

/** The ground holds no lights that could be lost and no whites that could close. */
const ofGround: readonly Reading[] = ['not read', 'as drawn', 'scum'];

/** The second etch: read from roll-up and proof zone by zone, then planned. Lost lights are never etched stronger. */
export function SecondEtchView({ desk }: { desk: WorkDesk }) {
  const { work } = desk;
  const queries = useQueryClient();
  const found = useQuery({ queryKey: secondEtchesKey(work.id), queryFn: () => listSecondEtches(work.id) });
  const last = found.data?.[0] ?? null;
  const [read, setRead] = useState<Readonly<Record<string, Reading>>>({});
  const [line, setLine] = useState<SecondEtchLine | null>(null);
  const [table, setTable] = useState<string | null>(null);
  const tables = useQuery({ queryKey: tablesKey, queryFn: listTables });
  const [trouble, setTrouble] = useState<ShownFailure | null>(null);
  const [busy, setBusy] = useState(false);
  const zones = [
    ...work.zones.map(({ id, name }, index) => ({ id, name, letter: zoneLetter(index) })),
    { id: groundId, name: say('Ground'), letter: 'G' },
  ];
  const readingOf = (id: string): Reading =>
    read[id] ?? last?.zones.find((zone) => zone.id === id)?.reading ?? 'not read';
  const chosenTable = table ?? last?.table.id ?? 'tannic';
  const chosenLine = line ?? last?.plan.line ?? 'full';
  const make = async () => {
    setBusy(true);
    setTrouble(null);
    try {
      const readings = zones.map(({ id }) => ({ zone: id, reading: readingOf(id) }));
      await makeSecondEtch(work.id, {
        line: chosenLine,
        readings: readings.filter(({ reading }) => reading !== 'not read'),
        tableId: chosenTable,
      });
      await queries.invalidateQueries({ queryKey: secondEtchesKey(work.id) });
      setRead({});
      setLine(null);
      setTable(null);
    } catch (thrown) {
      setTrouble(shownFailure(thrown));
    } finally {
      setBusy(false);
    }
  };
  const changed = Object.keys(read).length > 0 || line !== null || table !== null;
  // once it is planned, what comes next is at the stone
  const ready = last !== null && !changed && work.stage !== 'regrained';
  const failed = trouble ?? (found.isError ? shownFailure(found.error) : null);
  return (
    <WorkPage
      work={work}
      headline={last ? secondHeadline(last.plan.line) : say('How did it roll up and print?')}
      board={<SecondEtchBoard desk={desk} last={last} />}
      side={
        <>
          <section aria-labelledby="read-head">
            <h2 id="read-head" className="big">
              {say('Read from roll-up and proof')}
            </h2>
            <p className="soft second-words">
              {say(
                'Not from the drawing. What was not read gets gum only. A second etch keeps what prints; lights that are lost it cannot bring back.',
              )}
            </p>
            <ul className="second-readings">
              {zones.map(({ id, name, letter }) => (
                <li key={id}>
                  <b className="big" aria-hidden="true">
                    {letter}
                  </b>
                  <Choice<Reading>
                    label={name}
                    value={readingOf(id)}
                    options={
                      id === groundId ? readings.filter(([each]) => ofGround.includes(each)) : readings
                    }
                    onChoose={(reading) => setRead((now) => ({ ...now, [id]: reading }))}
                  />
                </li>
              ))}
            </ul>
          </section>
          <Picks<SecondEtchLine>
            label={say('Line')}
            value={chosenLine}
            options={[
              ['full', say('full: rests 12 to 24 h')],
              ['quick', say('quick: about 5 min')],
            ]}
            onPick={setLine}
          />
          <Choice
            label={say('Etch table')}
            value={chosenTable}
            options={(tables.data ?? []).map(
              ({ id, name, version }) =>
                [id, say('{name}, issue {issue}', { name: told(name), issue: version })] as const,
            )}
            onChoose={setTable}
          />
          {failed && <FailureNotice failure={failed} />}
          <div className="work-act">
            {ready && <ToTheBench work={work} kind="act" />}
            <Button
              kind={ready || work.stage === 'regrained' ? 'plain' : 'act'}
              disabled={busy}
              onClick={() => void make()}
            >
              {busy
                ? say('Planning …')
                : last
                  ? say('Plan the second etch anew')
                  : say('Plan the second etch')}
            </Button>
          </div>
        </>
      }
      below={last && <SecondEtchPlanned last={last} older={found.data?.slice(1) ?? []} />}
    />
  );
}

function secondHeadline(line: SecondEtchLine): string {
  return line === 'full' ? say('A full second etch is planned') : say('A quick second etch is planned');
}
