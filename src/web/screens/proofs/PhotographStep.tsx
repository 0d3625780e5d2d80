import { useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { Link } from 'wouter';
import type { WorkEntry } from '../../../records/workEntry.ts';
import type { ShownFailure } from '../../client/shownFailure.ts';
import { heldIdOf, heldName } from '../../managers/held/heldName.ts';
import type { PhotographBelongs } from '../../managers/held/heldPhotograph.ts';
import type { PullTyped } from '../../managers/proofs/pullDraft.ts';
import { Button } from '../../parts/Button.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { Notice } from '../../parts/Notice.tsx';
import { say } from '../../words/say.ts';
import { sayRich } from '../../words/sayRich.ts';
import { PhotographWays } from '../camera/PhotographWays.tsx';
import { heldPhotographs, holdPhotograph } from '../held/heldPhotographs.ts';
import { TakenPicture } from '../held/TakenPicture.tsx';
import { UnsentPhotographs } from '../held/UnsentPhotographs.tsx';
import { useCopiedIn } from '../held/useCopiedIn.ts';
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
  const [trouble, setTrouble] = useState<ShownFailure | null>(null);
  const index = again ? 1 : 0;
  const shown = typed.photographs[index];
  const use = (photograph: string, takenAt: string) => {
    if (typed.photographs.some((one, at) => one.photograph === photograph && at !== index)) {
      setTrouble({
        code: 'same-photograph',
        message: say('This is the same photograph once more.'),
        remedy: say('Take the sheet away, set it down afresh, and take another.'),
      });
      return;
    }
    const before = shown ? heldIdOf(shown.photograph) : null;
    if (before !== null) void heldPhotographs(queries).drop(before);
    const taken = { photograph, takenAt, corners: null };
    const photographs = again ? [typed.photographs[0]!, taken] : [taken, ...typed.photographs.slice(1)];
    onGoOn({ way: 'camera', photographs });
  };
  const copying = useCopiedIn({
    onKept: use,
    onLater: async (file, takenAt) => {
      const belongs = { to: 'pull-draft', workId: work.id, pull: typed.id } as const;
      const shows = say('pull {n} of {title}', { n: typed.number, title: work.title });
      use(heldName(await holdPhotograph(queries, file, shows, belongs)), takenAt);
    },
    onTrouble: setTrouble,
  });
  const isMine = (belongs: PhotographBelongs) => belongs.to === 'pull-draft' && belongs.pull === typed.id;
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
        <TakenPicture
          className="add-pull-seen"
          photograph={shown.photograph}
          widthPx={600}
          alt={again ? say('The second photograph of the print') : say('The photograph of the print')}
        />
      )}
      <UnsentPhotographs of={isMine} />
      {trouble && <FailureNotice failure={trouble} />}
      <div className="add-pull-ways">
        <PhotographWays
          words={
            shown
              ? say('Take it anew')
              : again
                ? say('Take the second photograph')
                : say('Take or choose the photograph')
          }
          kind={shown ? 'plain' : 'act'}
          thing={{
            name: say('pull {number}', { number: typed.number }),
            sizeMm: work.rectangle?.sizeMm ?? [work.stone.widthMm, work.stone.heightMm],
            sizeOf: work.rectangle ? 'rectangle' : 'stone',
          }}
          share={copying.share}
          onPhotographs={(file) => void copying.take(file)}
        />
        {copying.share !== null && (
          <Button kind="act" onClick={copying.later}>
            {say('Go on: send it later')}
          </Button>
        )}
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
