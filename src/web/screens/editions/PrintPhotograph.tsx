import { useState } from 'react';
import { addPhotograph } from '../../client/photographs.ts';
import { type ShownFailure, shownFailure } from '../../client/shownFailure.ts';
import { pictureKinds } from '../../parts/PictureButton.tsx';
import { say } from '../../words/say.ts';

/**
 * Takes a photograph of a print: it is copied to the server first, and only then logged. Printing never waits for it.
 * @param className `bench-target` at the press.
 */
export function PrintPhotograph({
  n,
  className,
  onKept,
}: {
  /** The print's number at the press. */
  n: number;
  className: string;
  onKept: (photograph: string) => void;
}) {
  const [share, setShare] = useState<number | null>(null);
  const [trouble, setTrouble] = useState<ShownFailure | null>(null);
  const take = async (file: File) => {
    setTrouble(null);
    setShare(0);
    try {
      onKept((await addPhotograph(file, setShare)).id);
    } catch (thrown) {
      setTrouble(shownFailure(thrown));
    } finally {
      setShare(null);
    }
  };
  return (
    <>
      <label className={`${className} print-photograph`}>
        {share === null
          ? say('Photograph print {n}', { n })
          : say('Copying it in, {share} %', { share: Math.round(share * 100) })}
        <input
          className="unseen"
          type="file"
          accept={pictureKinds}
          capture="environment"
          disabled={share !== null}
          onChange={(event) => {
            const file = event.target.files?.[0];
            if (file) void take(file);
            event.target.value = '';
          }}
        />
      </label>
      {trouble && (
        <p className="print-trouble" role="alert">
          {say('{message} The print itself is logged; photograph it again later.', {
            message: trouble.message,
          })}
        </p>
      )}
    </>
  );
}
