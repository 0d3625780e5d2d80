import { useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { useLocation } from 'wouter';
import type { PhotographEntry } from '../../../records/comparisonEntry.ts';
import type { SeenRuler, TestPhotograph, TestPrint } from '../../../records/testStone.ts';
import type { Corners } from '../../../science/geometry/point.ts';
import { addPhotograph, previewAddress } from '../../client/photographs.ts';
import { FailedRequest, type ShownFailure, shownFailure } from '../../client/shownFailure.ts';
import { measureTestStone } from '../../client/testStones.ts';
import { Button } from '../../parts/Button.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { sizeWords } from '../../words/lengths.ts';
import { say } from '../../words/say.ts';
import { PhotographWays } from '../camera/PhotographWays.tsx';
import { holdPhotograph } from '../held/heldPhotographs.ts';
import { UnsentPhotographs } from '../held/UnsentPhotographs.tsx';
import { CornersPanel } from './CornersPanel.tsx';
import { PrintsBeingRead } from './PrintsBeingRead.tsx';
import { RulerLine } from './RulerLine.tsx';
import { RulerPanel } from './RulerPanel.tsx';
import type { TestStonePageParts } from './testStonePageParts.ts';
import { isBeingRead, useTestStoneReading } from './useTestStoneReading.ts';

/** What is being set: corners on the stone's photograph or a print's, or the ruler on the stone's. */
type Setting =
  | { readonly of: 'stone' }
  | { readonly of: 'ruler' }
  | { readonly of: 'print'; readonly id: string }
  | null;

/** The drawn stone and its prints, with the same four corners on each. */
export function PhotographsPage({ stone, save, saving, keep }: TestStonePageParts) {
  const [, go] = useLocation();
  const [setting, setSetting] = useState<Setting>(null);
  const [share, setShare] = useState<number | null>(null);
  const [trouble, setTrouble] = useState<ShownFailure | null>(null);
  const { drawn, prints } = stone;
  const reading = useTestStoneReading(stone.id);
  const running = reading !== null && isBeingRead(reading);
  const queries = useQueryClient();
  const hold = async (as: 'stone' | 'print', file: File, again: File | null) => {
    const of = { to: 'test-stone', testStoneId: stone.id, as, over: drawn?.photograph ?? null } as const;
    const shows =
      as === 'stone'
        ? say('the drawn stone {stone}', { stone: stone.name })
        : say('a print of {stone}', { stone: stone.name });
    const first = await holdPhotograph(queries, file, shows, { ...of, repeatOf: null });
    if (again) await holdPhotograph(queries, again, shows, { ...of, repeatOf: first });
  };
  const take = async (
    as: 'stone' | 'print',
    file: File,
    again: File | null,
    keepIt: (photograph: PhotographEntry, repeat: string | null) => Promise<unknown>,
  ) => {
    setTrouble(null);
    setShare(0);
    try {
      const photograph = await addPhotograph(file, setShare, { tries: 3 });
      const repeat = again && (await addPhotograph(again, setShare, { tries: 3 })).id;
      // One and the same file tells nothing of how far a reading strays.
      await keepIt(photograph, repeat === photograph.id ? null : repeat);
    } catch (thrown) {
      if (thrown instanceof FailedRequest) setTrouble(shownFailure(thrown));
      else await hold(as, file, again);
    } finally {
      setShare(null);
    }
  };
  const bare = (photograph: PhotographEntry, repeat: string | null): TestPhotograph => ({
    photograph: photograph.id,
    corners: null,
    repeat,
    flat: null,
  });
  const addStone = (file: File, again: File | null = null) =>
    void take('stone', file, again, async (photograph, repeat) => {
      if (await save({ drawn: bare(photograph, repeat), ruler: null })) setSetting({ of: 'stone' });
    });
  const addPrint = (file: File, again: File | null = null) =>
    void take('print', file, again, async (photograph, repeat) => {
      const id = `print-${Date.now().toString(36)}`;
      const print: TestPrint = {
        ...bare(photograph, repeat),
        id,
        name: say('Print {count}', { count: prints.length + 1 }),
        comparisonId: null,
      };
      if (await save({ prints: [...prints, print] })) setSetting({ of: 'print', id });
    });
  const setCorners = async (corners: Corners) => {
    const saved =
      setting?.of === 'stone'
        ? await save({ drawn: { ...drawn!, corners } })
        : await save({
            prints: prints.map((print) =>
              setting?.of === 'print' && print.id === setting.id ? { ...print, corners } : print,
            ),
          });
    if (saved) setSetting(null);
  };
  const setRuler = async (ruler: SeenRuler | null) => {
    if (await save({ ruler })) setSetting(null);
  };
  const read = async () => {
    const asked = await saving.send(() => measureTestStone(stone.id));
    if (!asked) return;
    keep(asked);
    go(`/test-stones/${stone.id}`);
  };
  if (setting?.of === 'ruler' && drawn)
    return (
      <RulerPanel
        key={drawn.photograph}
        shown={drawn}
        ruler={stone.ruler}
        pending={saving.pending}
        onRuler={(ruler) => void setRuler(ruler)}
        onLeave={() => setSetting(null)}
      />
    );
  const shown =
    setting === null || setting.of === 'ruler'
      ? null
      : setting.of === 'stone'
        ? drawn
        : (prints.find(({ id }) => id === setting.id) ?? null);
  if (setting !== null && setting.of !== 'ruler' && shown)
    return (
      <CornersPanel
        key={shown.photograph}
        side={setting.of === 'stone' ? 'stone' : 'proof'}
        shown={shown}
        pending={saving.pending}
        onCorners={(corners) => void setCorners(corners)}
        onLeave={() => setSetting(null)}
      />
    );
  // one thing is lit: whose corners are next
  const unset = [drawn, ...prints].find((one) => one?.corners === null);
  const ready =
    drawn?.corners != null && prints.length > 0 && prints.every(({ corners }) => corners !== null);
  return (
    <>
      <PageHead
        stamp={say('{stone}, {size} between its corners', {
          stone: stone.name,
          size: sizeWords(...stone.sizeMm),
        })}
        headline={say('The drawn stone and its prints')}
      >
        {ready && !running && (
          <Button kind="act" disabled={saving.pending} onClick={() => void read()}>
            {say('Read the patches')}
          </Button>
        )}
      </PageHead>
      {reading && <PrintsBeingRead reading={reading} />}
      {trouble && (
        <div className="list-foot">
          <FailureNotice failure={trouble} />
        </div>
      )}
      <div className="list-foot">
        <UnsentPhotographs
          of={(belongs) => belongs.to === 'test-stone' && belongs.testStoneId === stone.id}
        />
      </div>
      <ul className="test-stone-photographs">
        <li>
          <h2 className="big">{say('The drawn stone')}</h2>
          {drawn ? (
            <>
              <Shown
                shown={drawn}
                lit={drawn === unset}
                label={say('The drawn stone')}
                onSet={() => setSetting({ of: 'stone' })}
              />
              {drawn.corners && <RulerLine stone={stone} onSet={() => setSetting({ of: 'ruler' })} />}
            </>
          ) : (
            <p className="soft">
              {say(
                'Photograph it before it is etched, square on, with all four corners and a grey card in the picture.',
              )}
            </p>
          )}
          <PhotographWays
            kind={drawn ? 'quiet' : 'act'}
            words={drawn ? say('Take another photograph') : say('Add the stone’s photograph')}
            thing={{ name: stone.name, sizeMm: stone.sizeMm, sizeOf: 'rectangle' }}
            share={share}
            askRepeat
            onPhotographs={addStone}
          />
        </li>
        {prints.map((print) => (
          <li key={print.id}>
            <h2 className="big">{print.name}</h2>
            <Shown
              shown={print}
              lit={print === unset}
              label={print.name}
              onSet={() => setSetting({ of: 'print', id: print.id })}
            />
            <Button
              kind="quiet"
              disabled={saving.pending}
              onClick={() =>
                void save({
                  prints: prints.filter(({ id }) => id !== print.id),
                  ...(stone.judgedBy === print.id && { judgedBy: null }),
                })
              }
            >
              {say('Take {print} off', { print: print.name })}
            </Button>
          </li>
        ))}
        {drawn && (
          <li>
            <h2 className="big">{prints.length === 0 ? say('A print of it') : say('Another print')}</h2>
            <p className="soft">
              {prints.length === 0
                ? say('Photograph it the same way. What is judged is what came onto good paper, dry.')
                : say('More prints show how steady a patch is. They do not count as more stones.')}
            </p>
            <PhotographWays
              kind={prints.length === 0 && !unset ? 'act' : 'plain'}
              words={say('Add a print’s photograph')}
              thing={{
                name: say('print {count} of {stone}', { count: prints.length + 1, stone: stone.name }),
                sizeMm: stone.sizeMm,
                sizeOf: 'rectangle',
              }}
              share={share}
              askRepeat
              onPhotographs={addPrint}
            />
          </li>
        )}
      </ul>
    </>
  );
}

interface ShownGiven {
  readonly shown: TestPhotograph;
  readonly lit: boolean;
  readonly label: string;
  readonly onSet: () => void;
}

function Shown({ shown, lit, label, onSet }: ShownGiven) {
  return (
    <>
      <img src={previewAddress(shown.photograph, 400)} alt={label} />
      <p>{shown.corners ? say('Its four corners are set.') : say('Its four corners are not set yet.')}</p>
      {shown.repeat !== null && (
        <p className="soft">
          {say('Its second photograph is kept too: it tells how far one reading strays.')}
        </p>
      )}
      <Button kind={lit ? 'act' : 'plain'} onClick={onSet}>
        {shown.corners ? say('Set the corners anew') : say('Set the four corners')}
      </Button>
    </>
  );
}
