import { say } from '../words/say.ts';
import type { ButtonKind } from './Button.tsx';
import { PictureButton } from './PictureButton.tsx';

/** Chooses a photograph to be added, and says how far it is copied in. */
export function AddPhotograph({
  kind = 'plain',
  share,
  onPicture,
}: {
  kind?: ButtonKind;
  /** How much of one is copied in, 0..1; null while none is. */
  share: number | null;
  onPicture: (file: File) => void;
}) {
  return (
    <PictureButton kind={kind} disabled={share !== null} onPicture={onPicture}>
      {share === null
        ? say('Add a photograph')
        : say('Copying it in, {share} %', { share: Math.round(share * 100) })}
    </PictureButton>
  );
}
