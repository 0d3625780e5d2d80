import { useQuery, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import type { BlindSitting, Hold, TestStoneReading } from '../../../records/patchReading.ts';
import {
  logTestStone,
  readSittings,
  readTestStone,
  testStoneReadingKey,
  testStoneSittingsKey,
} from '../../client/testStones.ts';
import { agreementWords } from '../../managers/testStones/agreement.ts';
import { Button, ButtonLink } from '../../parts/Button.tsx';
import { EmptyPage } from '../../parts/EmptyPage.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { Field } from '../../parts/Field.tsx';
import { Fold } from '../../parts/Fold.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { say } from '../../words/say.ts';
import { useSaving } from '../useSaving.ts';
import { BlindPatch } from './BlindPatch.tsx';
import type { TestStonePageParts } from './testStonePageParts.ts';

/** Reading by eye, one patch after the other, shuffled and without labels; then how well eyes and camera agree. */
export function BlindPage({ stone }: TestStonePageParts) {
  const queries = useQueryClient();
  const saving = useSaving<unknown>();
  const [reader, setReader] = useState('');
  const [sitting, setSitting] = useState<string | null>(null);
  const reading = useQuery({
    queryKey: testStoneReadingKey(stone.id),
    queryFn: () => readTestStone(stone.id),
  });
  const sittings = useQuery({
    queryKey: testStoneSittingsKey(stone.id),
    queryFn: () => readSittings(stone.id),
  });
  if (!reading.data || !sittings.data) return <p className="unseen">{say('Opening …')}</p>;
  const print = reading.data.judgedBy;
  if (print === null) return <NothingToSee id={stone.id} name={stone.name} />;
  const refresh = () => queries.invalidateQueries({ queryKey: testStoneSittingsKey(stone.id) });
  const begin = async () => {
    const clientId = `sitting-${Date.now().toString(36)}`;
    const seed = crypto.getRandomValues(new Uint32Array(1))[0]!;
    const kept = await saving.send(() =>
      logTestStone(stone.id, {
        clientId,
        actor: reader.trim(),
        kind: 'sitting-begun',
        payload: { print, seed },
      }),
    );
    if (kept === null) return;
    await refresh();
    setSitting(clientId);
  };
  const open = sittings.data.find(({ id }) => id === sitting) ?? null;
  const next = open && nextPatch(open);
  if (open && next) {
    const tell = async (hold: Hold | null) => {
      const payload = { sitting: open.id, patch: next, hold };
      const clientId = `${open.id}-${next}-${open.answers.length}`;
      const kept = await saving.send(() =>
        logTestStone(stone.id, { clientId, actor: open.reader, kind: 'seen', payload }),
      );
      if (kept !== null) await refresh();
    };
    return (
      <BlindPatch
        key={next}
        stone={stone}
        print={open.print}
        patch={next}
        told={open.order.filter((patch) => answered(open).has(patch)).length}
        of={open.order.length}
        pending={saving.pending}
        trouble={saving.trouble}
        onTell={(hold) => void tell(hold)}
        onLeave={() => setSitting(null)}
      />
    );
  }
  return (
    <>
      <PageHead
        stamp={say('{stone}, read by eye', { stone: stone.name })}
        headline={open ? say('Every patch is told') : say('What does an eye say?')}
      />
      <div className="test-stone-two">
        <form
          className="test-stone-form"
          aria-label={say('A blind reading')}
          onSubmit={(event) => {
            event.preventDefault();
            if (reader.trim() !== '') void begin();
          }}
        >
          <p>
            {say(
              'Patches come one at a time, shuffled, without a word of what they got: as drawn, and as printed. Say what became of each. Two people make two readings.',
            )}
          </p>
          <Field
            label={say('Who reads')}
            value={reader}
            maxLength={100}
            onChange={(event) => setReader(event.target.value)}
          />
          {saving.trouble && <FailureNotice failure={saving.trouble} />}
          <Button kind="act" type="submit" disabled={reader.trim() === '' || saving.pending}>
            {say('Begin a blind reading')}
          </Button>
        </form>
        <Sittings sittings={sittings.data} reading={reading.data} onGoOn={setSitting} />
      </div>
    </>
  );
}

function answered({ answers }: BlindSitting): ReadonlySet<string> {
  return new Set(answers.map(({ patch }) => patch));
}

function nextPatch(sitting: BlindSitting): string | null {
  const done = answered(sitting);
  return sitting.order.find((patch) => !done.has(patch)) ?? null;
}

function Sittings({
  sittings,
  reading,
  onGoOn,
}: {
  sittings: readonly BlindSitting[];
  reading: TestStoneReading;
  onGoOn: (id: string) => void;
}) {
  if (sittings.length === 0) return <p className="soft">{say('Nobody has read it by eye yet.')}</p>;
  return (
    <section className="test-stone-form" aria-label={say('Readings by eye')}>
      <h2 className="big">{say('Readings so far')}</h2>
      <ul>
        {sittings.map((sitting) => (
          <li key={sitting.id}>
            {say('{reader}, {startedAt}: {size} of {count}', {
              reader: sitting.reader,
              startedAt: sitting.startedAt.slice(0, 10),
              size: answered(sitting).size,
              count: sitting.order.length,
            })}{' '}
            {nextPatch(sitting) !== null && (
              <Button kind="quiet" onClick={() => onGoOn(sitting.id)}>
                {say('Go on')}
              </Button>
            )}
          </li>
        ))}
      </ul>
      <h2 className="big">{say('How well they agree')}</h2>
      <ul>
        {agreementWords(sittings, reading).map((words) => (
          <li key={words}>{words}</li>
        ))}
      </ul>
      <Fold title={say('How this is reckoned')}>
        <p>
          {say(
            'Weighted kappa; the truth lies within the figures in brackets, 19 times of 20. Neighbours such as weak and held count less against it than lost and held.',
          )}
        </p>
      </Fold>
    </section>
  );
}

function NothingToSee({ id, name }: { id: string; name: string }) {
  return (
    <>
      <PageHead stamp={say('{name}, read by eye', { name })} headline={say('Nothing to look at yet')} />
      <EmptyPage
        title={say('The print must be straightened first')}
        act={
          <ButtonLink kind="act" href={`/test-stones/${id}/photographs`}>
            {say('To the photographs')}
          </ButtonLink>
        }
      >
        <p>{say('What is shown one by one is cut from the straightened photographs of stone and print.')}</p>
      </EmptyPage>
    </>
  );
}
