import { useQuery } from '@tanstack/react-query';
import { type FormEvent, useState } from 'react';
import type { KeptPlan } from '../../../records/keptPlan.ts';
import type { StoneSummary } from '../../../records/stoneEntry.ts';
import type { TestStone } from '../../../records/testStone.ts';
import { batchesKey, listBatches } from '../../client/batches.ts';
import { addStone, listStones, stonesKey } from '../../client/stones.ts';
import { putAtBench } from '../../client/testBench.ts';
import { Button } from '../../parts/Button.tsx';
import { Choice } from '../../parts/Choice.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { Field } from '../../parts/Field.tsx';
import { Notice } from '../../parts/Notice.tsx';
import { Picks } from '../../parts/Picks.tsx';
import { sizeWords } from '../../words/lengths.ts';
import { say } from '../../words/say.ts';
import { useSaving } from '../useSaving.ts';

/** As many stones as a choice shows. */
const mostStones = 200;
const allInUse = { search: '', putBy: 'no' } as const;

/** Says on which stone a test stone is drawn and how many hands etch it; a stone that is not on the rack yet is entered. */
export function PutAtBench({
  stone,
  words,
  onReady,
}: {
  stone: TestStone;
  words: string;
  onReady: (stone: TestStone) => void;
}) {
  const saving = useSaving<{ readonly testStone: TestStone; readonly plan: KeptPlan }>();
  const [chosen, setChosen] = useState(stone.stoneId ?? '');
  const [name, setName] = useState('');
  const [over, setOver] = useState(false);
  const [people, setPeople] = useState<'1' | '2'>('2');
  const [tannic, setTannic] = useState('');
  const batches = useQuery({
    queryKey: [...batchesKey, 'tannic for tests'],
    queryFn: () => listBatches({ ...allInUse, kind: 'tannic' }, null),
  });
  const settled = stone.workId !== null && stone.stoneId !== null;
  const rack = useQuery({
    queryKey: [...stonesKey, 'for tests'],
    queryFn: () => listStones(allInUse, null, undefined, mostStones),
    enabled: !settled,
  });
  const [width, height] = stone.planned?.stoneMm ?? stone.sizeMm;
  const fitting = (rack.data?.stones ?? []).filter(
    ({ widthMm, heightMm }) => widthMm >= width && heightMm >= height,
  );
  const carried = liveWork(fitting.find(({ id }) => id === chosen));
  const waitsFor = settled
    ? null
    : chosen === '' && name.trim() === ''
      ? say('Choose a stone, or name the new one.')
      : carried !== null && !over
        ? say('Say first whether the work that it carries is over.')
        : null;
  const ready = async (event: FormEvent) => {
    event.preventDefault();
    if (waitsFor !== null) return;
    const put = await saving.send(async () => {
      const id =
        chosen === '' ? (await addStone({ name: name.trim(), widthMm: width, heightMm: height })).id : chosen;
      // the stone is there now: what fails after it is tried again on the same one
      setChosen(id);
      return putAtBench(
        stone,
        id,
        people === '1' ? 1 : 2,
        tannic === '' ? null : tannic,
        carried !== null && over,
      );
    });
    if (put) onReady(put.testStone);
  };
  return (
    <form className="test-stone-form" aria-label={words} onSubmit={(event) => void ready(event)}>
      {!settled && (
        <Choice
          label={say('The stone that it is drawn on')}
          hint={say('At least {size}.', { size: sizeWords(width, height) })}
          value={chosen}
          options={[
            ['', say('a stone that is not here yet')],
            ...fitting.map((one) => [one.id, offered(one)] as const),
          ]}
          onChoose={(next) => {
            setChosen(next);
            setOver(false);
          }}
        />
      )}
      {!settled && carried !== null && (
        <Notice kind="caution" title={say('It carries {work}.', { work: carried })}>
          <p>{say('Choose it only where that work is over: the test stone is drawn on a fresh grain.')}</p>
          <Picks<'no' | 'yes'>
            label={say('Is that work over?')}
            value={over ? 'yes' : 'no'}
            options={[
              ['no', say('no')],
              ['yes', say('yes, the stone is grained')],
            ]}
            onPick={(picked) => setOver(picked === 'yes')}
          />
        </Notice>
      )}
      {!settled && chosen === '' && (
        <Field
          label={say('Its name')}
          hint={say('It is entered as a stone of {size}.', { size: sizeWords(width, height) })}
          value={name}
          maxLength={200}
          onChange={(event) => setName(event.target.value)}
        />
      )}
      <Picks<'1' | '2'>
        label={say('Hands at the stone')}
        value={people}
        options={[
          ['1', say('one person')],
          ['2', say('two people')],
        ]}
        onPick={setPeople}
      />
      <Choice
        label={say('The tannic solution')}
        hint={say(
          'By its batch, so that the test can be repeated; where no etch takes any, it does not matter.',
        )}
        value={tannic}
        options={[
          ['', say('not described')],
          ...(batches.data?.batches ?? []).map(({ id, name: own }) => [id, own] as const),
        ]}
        onChoose={setTannic}
      />
      {saving.trouble && <FailureNotice failure={saving.trouble} />}
      <Button kind={settled ? 'plain' : 'act'} type="submit" disabled={saving.pending || waitsFor !== null}>
        {saving.pending ? say('Finding an order that can be kept …') : words}
      </Button>
      {waitsFor !== null && <p className="soft">{waitsFor}</p>}
    </form>
  );
}

/** The title of the work that a stone still carries; null where it is free. */
function liveWork(stone: StoneSummary | undefined): string | null {
  const work = stone?.work ?? null;
  return work === null || work.stage === 'regrained' ? null : work.title;
}

function offered(stone: StoneSummary): string {
  const words = { name: stone.name, size: sizeWords(stone.widthMm, stone.heightMm), work: liveWork(stone) };
  return words.work === null ? say('{name}, {size}', words) : say('{name}, {size}, carries {work}', words);
}
