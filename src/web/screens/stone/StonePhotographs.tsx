import './StonePhotographs.css';
import { useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import type { AttachedPhotograph, PhotographState } from '../../../records/attachedPhotograph.ts';
import type { StoneEntry } from '../../../records/stoneEntry.ts';
import { addPhotograph, previewAddress } from '../../client/photographs.ts';
import { FailedRequest, type ShownFailure, shownFailure } from '../../client/shownFailure.ts';
import { saveStone } from '../../client/stones.ts';
import { Button } from '../../parts/Button.tsx';
import { Choice } from '../../parts/Choice.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { photographStateWords } from '../../parts/photographStateWords.ts';
import { say } from '../../words/say.ts';
import { PhotographWays } from '../camera/PhotographWays.tsx';
import { holdPhotograph } from '../held/heldPhotographs.ts';
import { UnsentPhotographs } from '../held/UnsentPhotographs.tsx';
import { useKeptStone } from './useKeptStone.ts';

const states = Object.entries(photographStateWords) as [PhotographState, string][];

/** The photographs of a stone with what each shows; adding one or saying what it shows is saved at once. */
export function StonePhotographs({ stone }: { stone: StoneEntry }) {
  const keep = useKeptStone();
  const queries = useQueryClient();
  const [share, setShare] = useState<number | null>(null);
  const [trouble, setTrouble] = useState<ShownFailure | null>(null);

  /** One step on the list of photographs; it is put to what is kept now, so that another's step stays. */
  const change = async (step: (list: readonly AttachedPhotograph[]) => readonly AttachedPhotograph[]) => {
    const save = (on: StoneEntry) => saveStone(on.id, on.version, { photographs: step(on.photographs) });
    try {
      keep(await save(stone));
    } catch (thrown) {
      const stale = thrown instanceof FailedRequest && thrown.failure.code === 'stale-save' && thrown.current;
      if (!stale) throw thrown;
      keep(await save(stale as StoneEntry));
    }
  };
  const run = async (task: () => Promise<void>) => {
    setTrouble(null);
    try {
      await task();
    } catch (thrown) {
      setTrouble(shownFailure(thrown));
    }
    setShare(null);
  };
  const add = (file: File) =>
    run(async () => {
      setShare(0);
      const { id } = await addPhotograph(file, setShare, { tries: 3 }).catch(async (thrown: unknown) => {
        if (thrown instanceof FailedRequest) throw thrown;
        const belongs = { to: 'stone', stoneId: stone.id, state: 'grained' } as const;
        await holdPhotograph(queries, file, stone.name, belongs);
        return { id: null };
      });
      if (id === null) return;
      const added = { photograph: id, state: 'grained', takenAt: null, corners: null, note: '' } as const;
      await change((list) => (list.some((each) => each.photograph === id) ? list : [...list, added]));
    });
  const changeOne = (id: string, changed: Partial<AttachedPhotograph>) =>
    run(() =>
      change((list) => list.map((each) => (each.photograph === id ? { ...each, ...changed } : each))),
    );

  return (
    <section className="stone-photographs" aria-label={say('Photographs')}>
      <h2 className="big">{say('Photographs')}</h2>
      {stone.photographs.length === 0 && (
        <p className="soft">
          {say('None yet. Square on, in even light; one in raking light shows the level.')}
        </p>
      )}
      <ul>
        {stone.photographs.map(({ photograph, state }, index) => (
          <li key={photograph}>
            <a href={previewAddress(photograph, 2000)} target="_blank" rel="noreferrer">
              <img
                src={previewAddress(photograph, 400)}
                alt={say('Photograph {index}: {photographStateWords}. Opens large.', {
                  index: index + 1,
                  photographStateWords: photographStateWords[state],
                })}
                loading="lazy"
              />
            </a>
            <div>
              {stone.putBy ? (
                <p>{photographStateWords[state]}</p>
              ) : (
                <>
                  <Choice
                    label={say('Photograph {index} shows the stone', { index: index + 1 })}
                    value={state}
                    options={states}
                    onChoose={(chosen) => void changeOne(photograph, { state: chosen })}
                  />
                  <Button
                    kind="quiet"
                    aria-label={say('Take away photograph {index}', { index: index + 1 })}
                    onClick={() =>
                      void run(() => change((list) => list.filter((each) => each.photograph !== photograph)))
                    }
                  >
                    {say('Take away')}
                  </Button>
                </>
              )}
            </div>
          </li>
        ))}
      </ul>
      <UnsentPhotographs of={(belongs) => belongs.to === 'stone' && belongs.stoneId === stone.id} />
      {trouble && <FailureNotice failure={trouble} />}
      {!stone.putBy && (
        <div className="stone-photographs-add">
          <PhotographWays
            words={say('Add a photograph')}
            share={share}
            thing={{ name: stone.name, sizeMm: [stone.widthMm, stone.heightMm], sizeOf: 'stone' }}
            onPhotographs={(file) => void add(file)}
          />
        </div>
      )}
    </section>
  );
}
