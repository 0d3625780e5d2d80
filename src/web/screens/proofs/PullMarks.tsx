import './AddPull.css';
import { useState } from 'react';
import { useLocation } from 'wouter';
import type { PullPhotograph } from '../../../records/pull.ts';
import type { PullEntry } from '../../../records/pullTones.ts';
import type { Corners } from '../../../science/geometry/point.ts';
import { savePull } from '../../client/pulls.ts';
import { chipsTrouble, type TypedChip } from '../../managers/chipBoxes.ts';
import { cornerTrouble } from '../../managers/cornerMarks.ts';
import { chipsBefore, keptChips, typedChips } from '../../managers/proofs/pullChips.ts';
import { Button, ButtonLink } from '../../parts/Button.tsx';
import { EmptyPage } from '../../parts/EmptyPage.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { Picks } from '../../parts/Picks.tsx';
import { say } from '../../words/say.ts';
import { useSaving } from '../useSaving.ts';
import { ChipMarks } from './ChipMarks.tsx';
import { PrintMarks } from './PrintMarks.tsx';
import { ProofsStamp } from './ProofsStamp.tsx';
import { type ProofsPageParts, useProofsChanged } from './useProofs.ts';

interface Marked extends Omit<PullPhotograph, 'chips'> {
  readonly chips: readonly TypedChip[];
}

/** The photographs of a kept pull: where the print's corners lie on each, and its grey chips. Saved, it is read again. */
export function PullMarks({ work, proofs, pull }: ProofsPageParts & { pull: PullEntry }) {
  const [, go] = useLocation();
  const changed = useProofsChanged(work.id);
  const saving = useSaving<PullEntry>();
  const [photographs, setPhotographs] = useState<readonly Marked[]>(() =>
    pull.photographs.map(({ photograph, takenAt, ageMinutes, corners, chips }) => ({
      photograph,
      takenAt,
      ageMinutes,
      corners,
      chips: typedChips(chips),
    })),
  );
  const markable = work.rectangle !== null;
  const refused = pull.photographs.findIndex(({ measuring }) => measuring?.state === 'refused');
  const [index, setIndex] = useState(String(Math.max(0, refused)));
  const [what, setWhat] = useState<'corners' | 'chips'>(markable ? 'corners' : 'chips');
  const at = Number(index);
  const shown = photographs[at];
  const edition = pull.impression?.edition;
  const back = edition ? `/editions/${edition}/curate` : `/works/${work.id}/proofs/${pull.id}`;
  const { number } = pull;
  const called = edition ? say('Print {number}', { number }) : say('Pull {number}', { number });
  const stamp = <ProofsStamp work={work} here={called} />;
  if (!shown)
    return (
      <>
        <PageHead stamp={stamp} headline={say('Pull {number} has no photograph', { number: pull.number })} />
        <EmptyPage
          title={say('Photograph it first')}
          act={
            <p>
              <ButtonLink kind="act" href={edition ? back : `${back}/again`}>
                {say('Photograph pull {number}', { number: pull.number })}
              </ButtonLink>
            </p>
          }
        >
          <p>{say('Corners and chips are set on a photograph of the print.')}</p>
        </EmptyPage>
      </>
    );
  const set = (changes: { readonly corners?: Corners | null; readonly chips?: readonly TypedChip[] }) =>
    setPhotographs((now) => now.map((each, one) => (one === at ? { ...each, ...changes } : each)));
  const before = chipsBefore(proofs.pulls.filter(({ number }) => number < pull.number));
  const other = photographs.find(({ chips }, one) => one !== at && chips.length > 0)?.chips ?? [];
  const bad =
    photographs.some(({ corners }) => corners !== null && cornerTrouble(corners) !== null) ||
    photographs.some(({ chips }) => chipsTrouble(chips) !== null);
  const note = chipsTrouble(shown.chips);
  const save = async () => {
    const kept = photographs.map((each) => ({ ...each, chips: keptChips(each.chips) }));
    if (!(await saving.send(() => savePull(work.id, pull.id, pull.version, { photographs: kept })))) return;
    await changed();
    go(edition ? back : `${back}/answer`);
  };
  return (
    <div className="add-pull">
      <PageHead
        stamp={stamp}
        headline={
          what === 'corners' ? say('Do the four marks sit right?') : say('Where do the grey chips lie?')
        }
      />
      <div className="add-pull-step">
        <div className="pull-marks-picks">
          {photographs.length > 1 && (
            <Picks
              label={say('Photograph')}
              value={index}
              options={photographs.map((_, one) => [String(one), String(one + 1)] as const)}
              onPick={setIndex}
            />
          )}
          {markable && (
            <Picks
              label={say('What to set')}
              shownLabel={false}
              value={what}
              options={[
                ['corners', say('the four corners')],
                ['chips', say('grey chips')],
              ]}
              onPick={setWhat}
            />
          )}
        </div>
        {what === 'corners' ? (
          <PrintMarks
            key={shown.photograph}
            taken={{ ...shown, takenAt: shown.takenAt ?? '' }}
            onMarks={(corners) => set({ corners })}
          />
        ) : (
          <ChipMarks
            key={shown.photograph}
            photograph={shown.photograph}
            chips={shown.chips}
            before={other.length > 0 ? other : before}
            onChips={(chips) => set({ chips })}
          />
        )}
        {saving.trouble && <FailureNotice failure={saving.trouble} />}
        <div className="add-pull-acts">
          <Button kind="act" disabled={saving.pending || bad} onClick={() => void save()}>
            {saving.pending ? say('Keeping it …') : say('Keep and read it again')}
          </Button>
          <ButtonLink kind="quiet" href={back}>
            {say('Back')}
          </ButtonLink>
          {note && <p className="add-pull-note">{note}</p>}
        </div>
      </div>
    </div>
  );
}
