import { useState } from 'react';
import { patchMark } from '../../../paper/charts/patchMark.ts';
import type { TestStone } from '../../../records/testStone.ts';
import { logTestStone, openTestStone } from '../../client/testStones.ts';
import { newClientId } from '../../managers/bench/clientIds.ts';
import { Button, ButtonLink } from '../../parts/Button.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { Field } from '../../parts/Field.tsx';
import { Fold } from '../../parts/Fold.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { PatchPicture } from '../../parts/PatchPicture.tsx';
import { say } from '../../words/say.ts';
import { useSaving } from '../useSaving.ts';
import type { TestStonePageParts } from './testStonePageParts.ts';

/** A planned test stone whose list is sealed: its patches by row and place, and the act that opens the list. */
export function SealedPage({ stone, keep }: Pick<TestStonePageParts, 'stone' | 'keep'>) {
  const saving = useSaving<TestStone>();
  const [who, setWho] = useState('');
  const [why, setWhy] = useState('');
  const untold = stone.list?.untold ?? 0;
  const open = async () => {
    const opened = await saving.send(async () => {
      const event = { clientId: newClientId(), actor: who.trim(), kind: 'list-opened' } as const;
      await logTestStone(stone.id, { ...event, payload: { why: why.trim() } });
      return openTestStone(stone.id);
    });
    if (opened) keep(opened);
  };
  return (
    <>
      <PageHead
        stamp={say('{stone}, {count} patches', { stone: stone.name, count: stone.patches.length })}
        headline={say('Who got what is sealed until it is read')}
      >
        <ButtonLink kind="act" href={`/test-stones/${stone.id}/photographs`}>
          {say('To the photographs')}
        </ButtonLink>
      </PageHead>
      <div className="test-stone-two">
        <div className="test-stone-form">
          <p>
            {say(
              '{untold, plural, one {One patch has no verdict yet.} other {{untold} patches have no verdict yet.}} Whoever knows what a patch got reads it kindlier. The list opens by itself once every patch has its verdict: by the camera, by hand, or by eye.',
              { untold },
            )}
          </p>
          <p className="soft">
            {say('Whoever draws and whoever etches have a sheet of their own, on the page of steps.')}{' '}
            {say(
              'The seal guards against a glance. Who got what can still be seen in three places: on those two sheets, on the zones of the stone’s work, and in the tables that the records are taken out as. Whoever reads leaves those alone.',
            )}
          </p>
          <Fold title={say('Open the list before it is read')}>
            <form
              className="test-stone-form"
              aria-label={say('Open the list')}
              onSubmit={(event) => {
                event.preventDefault();
                if (who.trim() !== '' && why.trim() !== '') void open();
              }}
            >
              <p>
                {say(
                  'It can’t be sealed again, and the answer will say first of all who opened it, when and why.',
                )}
              </p>
              <Field
                label={say('Who opens it')}
                value={who}
                maxLength={100}
                onChange={(event) => setWho(event.target.value)}
              />
              <Field
                label={say('Why')}
                value={why}
                maxLength={1000}
                onChange={(event) => setWhy(event.target.value)}
              />
              {saving.trouble && <FailureNotice failure={saving.trouble} />}
              <Button type="submit" disabled={who.trim() === '' || why.trim() === '' || saving.pending}>
                {say('Open the list, and have it said')}
              </Button>
            </form>
          </Fold>
        </div>
        <PatchPicture
          label={say('Patches by row and place')}
          sizeMm={stone.sizeMm}
          patches={stone.patches.map((patch) => ({
            ...patch,
            letter: patchMark(patch) === null ? patch.id : '',
            words: say('sealed'),
          }))}
          picked={new Set()}
          onPick={null}
        />
      </div>
    </>
  );
}
