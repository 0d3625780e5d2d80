import { useState } from 'react';
import { Button, ButtonLink } from '../../parts/Button.tsx';
import { say } from '../../words/say.ts';
import { PatchDrawing } from './PatchDrawing.tsx';
import { PatchTreatments } from './PatchTreatments.tsx';
import { SaidMeanwhile } from './SaidMeanwhile.tsx';
import type { TestStonePageParts } from './testStonePageParts.ts';
import { type PatchDesk, usePatchDesk } from './usePatchDesk.ts';

/** Where the patches lie, and what each got: two sides of one page, saved together. */
export function PatchesPage({ stone, save, saving }: TestStonePageParts) {
  const desk = usePatchDesk(stone);
  const [drawing, setDrawing] = useState(desk.patches.length === 0 || desk.state.drawing.outline !== null);
  const [kept, setKept] = useState(false);
  const sealed = stone.list?.sealed === true;
  const keep = async () => {
    const sent = desk.said;
    const saved = await save(sent);
    if (!saved) return;
    desk.saved(saved, sent);
    setKept(true);
  };
  const saves = (
    <Button
      kind="act"
      disabled={saving.pending || sealed || desk.savedMeanwhile || !isWhole(desk)}
      onClick={() => void keep()}
    >
      {saving.pending ? say('Saving …') : say('Save the patches')}
    </Button>
  );
  const told = (
    <>
      {desk.savedMeanwhile && !saving.pending && <SaidMeanwhile desk={desk} />}
      <p role="status" className="soft">
        {sealed ? sealedWords : savedWords(desk, kept)}{' '}
        {kept && !desk.unsaved && (
          <ButtonLink href={`/test-stones/${stone.id}/photographs`}>
            {say('On to the photographs')}
          </ButtonLink>
        )}
      </p>
    </>
  );
  const parts = { stone, desk, saves, told };
  return drawing ? (
    <PatchDrawing {...parts} onTreatments={() => setDrawing(false)} />
  ) : (
    <PatchTreatments {...parts} onDraw={() => setDrawing(true)} />
  );
}

const sealedWords = say(
  'Who got what is sealed until every patch has its verdict; until then patches stay as they were laid out.',
);

/** Whether what is drawn could be saved as it is. */
function isWhole({ state, faulty }: PatchDesk): boolean {
  return state.drawing.outline === null && faulty.size === 0;
}

function savedWords({ state, faulty, unsaved, broughtBack, patches }: PatchDesk, kept: boolean): string {
  if (state.drawing.outline) return say('Close the outline first; Escape leaves it.');
  if (faulty.size > 0)
    return say('One outline crosses itself or encloses nothing: move a point, or take the patch away.');
  if (unsaved)
    return broughtBack && !kept
      ? say('Not saved yet. What was unsaved at the last visit is here again.')
      : say('Not saved yet; a reload, or another page, keeps it.');
  if (kept) return say('Saved.');
  return patches.length === 0 ? say('No patch is drawn yet.') : '';
}
