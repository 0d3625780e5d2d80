import './AddPull.css';
import { useState } from 'react';
import { useLocation } from 'wouter';
import type { PullPhotograph } from '../../../records/pull.ts';
import type { PullEntry } from '../../../records/pullTones.ts';
import { addPhotograph } from '../../client/photographs.ts';
import { savePull } from '../../client/pulls.ts';
import { type ShownFailure, shownFailure } from '../../client/shownFailure.ts';
import { chipsBefore, keptChips } from '../../managers/proofs/pullChips.ts';
import type { TakenPhotograph } from '../../managers/proofs/pullDraft.ts';
import { pullAgeWords } from '../../managers/proofs/pullWords.ts';
import { Button } from '../../parts/Button.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { Fold } from '../../parts/Fold.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { PictureButton } from '../../parts/PictureButton.tsx';
import { say } from '../../words/say.ts';
import { useSaving } from '../useSaving.ts';
import { ChipMarks } from './ChipMarks.tsx';
import { PrintMarks } from './PrintMarks.tsx';
import { ProofsStamp } from './ProofsStamp.tsx';
import { Touches } from './Touches.tsx';
import { type ProofsPageParts, useProofsChanged } from './useProofs.ts';

const laterAges = [
  ['120', say('2 hours')],
  ['1440', say('a day')],
  ['2880', say('two days or more')],
] as const;

/** Another photograph of a pull that is kept: is it the photograph, before anything else is blamed? */
export function AddReading({ work, pull }: ProofsPageParts & { pull: PullEntry }) {
  const [, go] = useLocation();
  const changed = useProofsChanged(work.id);
  const saving = useSaving<PullEntry>();
  const [taken, setTaken] = useState<TakenPhotograph | null>(null);
  const [share, setShare] = useState<number | null>(null);
  const [trouble, setTrouble] = useState<ShownFailure | null>(null);
  const before = pull.photographs[0]?.age?.minutes ?? null;
  const [age, setAge] = useState('same');
  const take = async (file: File) => {
    setTrouble(null);
    setShare(0);
    try {
      const { id } = await addPhotograph(file, setShare);
      if (pull.photographs.some(({ photograph }) => photograph === id))
        setTrouble({
          code: 'same-photograph',
          message: say('This photograph was read already.'),
          remedy: say('Take the sheet away, set it down afresh, and take another.'),
        });
      else setTaken({ photograph: id, takenAt: new Date().toISOString(), corners: null });
    } catch (thrown) {
      setTrouble(shownFailure(thrown));
    } finally {
      setShare(null);
    }
  };
  const keep = async () => {
    if (!taken) return;
    const kept = pull.photographs.map(
      ({ photograph, takenAt, ageMinutes, corners, chips }): PullPhotograph => ({
        photograph,
        takenAt,
        ageMinutes,
        corners,
        chips,
      }),
    );
    const ageMinutes = age === 'same' ? before : Number(age);
    const { photograph, takenAt, corners, chips = [] } = taken;
    const shown: PullPhotograph = { photograph, takenAt, corners, ageMinutes, chips: keptChips(chips) };
    const photographs = [...kept, shown];
    if (!(await saving.send(() => savePull(work.id, pull.id, pull.version, { photographs })))) return;
    await changed();
    go(`/works/${work.id}/proofs/${pull.id}/answer`);
  };
  const shownTrouble = trouble ?? saving.trouble;
  return (
    <div className="add-pull">
      <PageHead
        stamp={<ProofsStamp work={work} here={say('Pull {number}', { number: pull.number })} />}
        headline={
          taken && work.rectangle ? say('Do the four marks sit right?') : say('Is it the photograph?')
        }
      />
      <div className="add-pull-step">
        {taken ? (
          work.rectangle && (
            <PrintMarks taken={taken} onMarks={(corners) => setTaken({ ...taken, corners })} />
          )
        ) : (
          <p className="add-pull-why">
            {say(
              'Take pull {number} away, set it down afresh in the same light, and photograph it once more. Where the two readings differ as much as the pulls do, nothing has changed but the photograph.',
              { number: pull.number },
            )}
          </p>
        )}
        {taken && (
          <Touches
            label={say('How old was the print on this photograph?')}
            value={age}
            options={[
              [
                'same',
                before === null
                  ? say('as on the first photograph')
                  : say('as on the first, {pullAge}', { pullAge: pullAgeWords(before) }),
              ],
              ...laterAges,
            ]}
            onPick={setAge}
          />
        )}
        {taken && (
          <Fold title={say('Grey chips on this photograph')}>
            <ChipMarks
              photograph={taken.photograph}
              chips={taken.chips ?? []}
              before={chipsBefore([pull])}
              onChips={(chips) => setTaken({ ...taken, chips })}
            />
          </Fold>
        )}
        {shownTrouble && <FailureNotice failure={shownTrouble} />}
        <div className="add-pull-acts">
          {taken ? (
            <Button kind="act" disabled={saving.pending} onClick={() => void keep()}>
              {saving.pending ? say('Keeping it …') : say('Keep and read it')}
            </Button>
          ) : (
            <PictureButton kind="act" disabled={share !== null} onPicture={(file) => void take(file)}>
              {share === null
                ? say('Take or choose the photograph')
                : say('Copying it in, {share} %', { share: Math.round(share * 100) })}
            </PictureButton>
          )}
        </div>
      </div>
    </div>
  );
}
