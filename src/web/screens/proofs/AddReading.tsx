import './AddPull.css';
import { useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { useLocation } from 'wouter';
import type { PullPhotograph } from '../../../records/pull.ts';
import type { PullEntry } from '../../../records/pullTones.ts';
import { savePull } from '../../client/pulls.ts';
import type { ShownFailure } from '../../client/shownFailure.ts';
import type { PhotographBelongs } from '../../managers/held/heldPhotograph.ts';
import { chipsBefore, keptChips } from '../../managers/proofs/pullChips.ts';
import type { TakenPhotograph } from '../../managers/proofs/pullDraft.ts';
import { pullAgeWords } from '../../managers/proofs/pullWords.ts';
import { type ReadingTyped, shelvedReading, shelveReading } from '../../managers/proofs/readingShelf.ts';
import { Button } from '../../parts/Button.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { Fold } from '../../parts/Fold.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { say } from '../../words/say.ts';
import { PhotographWays } from '../camera/PhotographWays.tsx';
import { holdPhotograph } from '../held/heldPhotographs.ts';
import { UnsentPhotographs } from '../held/UnsentPhotographs.tsx';
import { useCopiedIn } from '../held/useCopiedIn.ts';
import { useSentPhotograph } from '../held/useSentPhotograph.ts';
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
  const queries = useQueryClient();
  const [typed, setTyped] = useState<ReadingTyped>(
    () => shelvedReading(window.localStorage, pull.id) ?? { taken: null, age: 'same' },
  );
  // Marks that are found late must not put back what was said meanwhile.
  const hold = (changes: Partial<ReadingTyped>) =>
    setTyped((now) => {
      const next = { ...now, ...changes };
      shelveReading(window.localStorage, pull.id, next);
      return next;
    });
  const { taken, age } = typed;
  const setTaken = (next: TakenPhotograph | null) => hold({ taken: next });
  const [trouble, setTrouble] = useState<ShownFailure | null>(null);
  const before = pull.photographs[0]?.age?.minutes ?? null;
  const isMine = (belongs: PhotographBelongs) => belongs.to === 'reading' && belongs.pull === pull.id;
  const use = (photograph: string, takenAt: string) => {
    if (pull.photographs.some((one) => one.photograph === photograph)) {
      setTaken(null);
      setTrouble({
        code: 'same-photograph',
        message: say('This photograph was read already.'),
        remedy: say('Take the sheet away, set it down afresh, and take another.'),
      });
    } else setTaken({ photograph, takenAt, corners: null });
  };
  const copying = useCopiedIn({
    onKept: use,
    onLater: async (file) => {
      const shows = say('pull {n} of {title}', { n: pull.number, title: work.title });
      await holdPhotograph(queries, file, shows, { to: 'reading', workId: work.id, pull: pull.id });
    },
    onTrouble: setTrouble,
  });
  useSentPhotograph(isMine, async ({ takenAt }, kept) => use(kept, takenAt));
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
    shelveReading(window.localStorage, pull.id, null);
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
            onPick={(next) => hold({ age: next })}
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
        <UnsentPhotographs of={isMine} />
        {shownTrouble && <FailureNotice failure={shownTrouble} />}
        <div className="add-pull-acts">
          {taken ? (
            <Button kind="act" disabled={saving.pending} onClick={() => void keep()}>
              {saving.pending ? say('Keeping it …') : say('Keep and read it')}
            </Button>
          ) : (
            <PhotographWays
              kind="act"
              words={say('Take or choose the photograph')}
              thing={{
                name: say('pull {number}', { number: pull.number }),
                sizeMm: work.rectangle?.sizeMm ?? [work.stone.widthMm, work.stone.heightMm],
                sizeOf: work.rectangle ? 'rectangle' : 'stone',
              }}
              share={copying.share}
              onPhotographs={(file) => void copying.take(file)}
            />
          )}
        </div>
      </div>
    </div>
  );
}
