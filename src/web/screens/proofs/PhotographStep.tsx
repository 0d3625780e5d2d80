import { useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { Link } from 'wouter';
import type { WorkEntry } from '../../../records/workEntry.ts';
import { addPhotograph, previewAddress } from '../../client/photographs.ts';
import { FailedRequest, type ShownFailure, shownFailure } from '../../client/shownFailure.ts';
import type { PhotographBelongs } from '../../managers/held/heldPhotograph.ts';
import type { PullTyped } from '../../managers/proofs/pullDraft.ts';
import { Button } from '../../parts/Button.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { Notice } from '../../parts/Notice.tsx';
import { PictureButton } from '../../parts/PictureButton.tsx';
import { say } from '../../words/say.ts';
import { sayRich } from '../../words/sayRich.ts';
import { TakeHere } from '../camera/TakeHere.tsx';
import { holdPhotograph } from '../held/heldPhotographs.ts';
import { UnsentPhotographs } from '../held/UnsentPhotographs.tsx';
import { useSentPhotograph } from '../held/useSentPhotograph.ts';
import { stonePicture } from './stonePhotograph.ts';

/** Takes a photograph of the print, or the second one of the same sheet. */
export function PhotographStep({
  again,
  typed,
  work,
  onGoOn,
}: {
  again: boolean;
  typed: PullTyped;
  work: WorkEntry;
  onGoOn: (changes?: Partial<PullTyped>) => void;
}) {
  const queries = useQueryClient();
  const [share, setShare] = useState<number | null>(null);
  const [trouble, setTrouble] = useState<ShownFailure | null>(null);
  const index = again ? 1 : 0;
  const shown = typed.photographs[index];
  const use = (id: string, takenAt: string) => {
    if (typed.photographs.some(({ photograph }, at) => photograph === id && at !== index)) {
      setTrouble({
        code: 'same-photograph',
        message: say('This is the same photograph once more.'),
        remedy: say('Take the sheet away, set it down afresh, and take another.'),
      });
      return;
    }
    const taken = { photograph: id, takenAt, corners: null };
    const photographs = again ? [typed.photographs[0]!, taken] : [taken, ...typed.photographs.slice(1)];
    onGoOn({ way: 'camera', photographs });
  };
  const isMine = (belongs: PhotographBelongs) =>
    belongs.to === 'pull-draft' && belongs.workId === work.id && belongs.index === index;
  useSentPhotograph(isMine, use);
  const take = async (file: File) => {
    setTrouble(null);
    setShare(0);
    try {
      const { id } = await addPhotograph(file, setShare, { tries: 3 });
      use(id, new Date().toISOString());
    } catch (thrown) {
      if (!(thrown instanceof FailedRequest)) {
        const belongs = { to: 'pull-draft', workId: work.id, index } as const;
        await holdPhotograph(
          queries,
          file,
          say('pull {n} of {title}', { n: typed.number, title: work.title }),
          belongs,
        );
      } else setTrouble(shownFailure(thrown));
    } finally {
      setShare(null);
    }
  };
  return (
    <>
      {!again && stonePicture(work, 'drawn') === null && (
        <Notice kind="caution" title={say('The drawn stone has no photograph with four marks yet.')}>
          {sayRich('Until <link>it has one</link>, a photograph of the print is kept but can’t be read.', {
            link: (words) => <Link href={`/works/${work.id}/photographs`}>{words}</Link>,
          })}
        </Notice>
      )}
      {shown && (
        <img
          className="add-pull-seen"
          src={previewAddress(shown.photograph, 600)}
          alt={again ? say('The second photograph of the print') : say('The photograph of the print')}
        />
      )}
      <UnsentPhotographs of={isMine} />
      {trouble && <FailureNotice failure={trouble} />}
      <div className="add-pull-ways">
        <PictureButton
          kind={shown ? 'plain' : 'act'}
          disabled={share !== null}
          onPicture={(file) => void take(file)}
        >
          {share !== null
            ? say('Copying it in, {share} %', { share: Math.round(share * 100) })
            : shown
              ? say('Take it anew')
              : again
                ? say('Take the second photograph')
                : say('Take or choose the photograph')}
        </PictureButton>
        <TakeHere
          thing={{
            name: say('pull {number}', { number: typed.number }),
            sizeMm: work.rectangle?.sizeMm ?? [work.stone.widthMm, work.stone.heightMm],
            sizeOf: work.rectangle ? 'rectangle' : 'stone',
          }}
          disabled={share !== null}
          onPhotographs={(file) => void take(file)}
        />
        {!again && shown && (
          <Button kind="act" onClick={() => onGoOn({ way: 'camera' })}>
            {say('Next')}
          </Button>
        )}
        {!again && (
          <>
            <Button onClick={() => onGoOn({ way: 'eye' })}>
              {say('No photograph: tell the tones by eye')}
            </Button>
            <Button kind="quiet" onClick={() => onGoOn({ way: 'none' })}>
              {say('Enter it without a reading')}
            </Button>
          </>
        )}
        {again && shown && (
          <Button kind="quiet" onClick={() => onGoOn({ photographs: typed.photographs.slice(0, 1) })}>
            {say('Leave the second one out')}
          </Button>
        )}
      </div>
    </>
  );
}
