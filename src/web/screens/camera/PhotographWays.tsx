import type { ButtonKind } from '../../parts/Button.tsx';
import { PictureButton } from '../../parts/PictureButton.tsx';
import { say } from '../../words/say.ts';
import type { OnPhotographs } from './CameraDialog.tsx';
import type { PhotographedThing } from './photographedThing.ts';
import { TakeHere } from './TakeHere.tsx';

/** The two ways to a photograph, wherever one is asked for: as a file or by the device's camera, and in the page by the guide. */
export function PhotographWays({
  words,
  kind = 'plain',
  thing,
  share = null,
  askRepeat = false,
  onPhotographs,
}: {
  /** What the first button says. */
  words: string;
  kind?: ButtonKind;
  thing: PhotographedThing;
  /** How much of one is copied in, 0..1; null while none is. */
  share?: number | null;
  /** Whether a second one, set up again, is asked for: it tells σ. */
  askRepeat?: boolean;
  onPhotographs: OnPhotographs;
}) {
  return (
    <>
      <PictureButton kind={kind} disabled={share !== null} onPicture={(file) => onPhotographs(file, null)}>
        {share === null ? words : say('Copying it in, {share} %', { share: Math.round(share * 100) })}
      </PictureButton>
      <TakeHere thing={thing} disabled={share !== null} askRepeat={askRepeat} onPhotographs={onPhotographs} />
    </>
  );
}
