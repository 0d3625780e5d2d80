import './PhotographPlaceholder.css';
import { type DragEvent, type ReactNode, useId, useState } from 'react';
import type { PhotographEntry } from '../../records/comparisonEntry.ts';
import { previewAddress } from '../client/photographs.ts';
import type { ShownFailure } from '../client/shownFailure.ts';
import { say } from '../words/say.ts';
import { FailureNotice } from './FailureNotice.tsx';
import { PictureButton } from './PictureButton.tsx';

/** What the place is told about a photograph that is being copied in. */
interface Upload {
  readonly share: number | null;
  readonly trouble: ShownFailure | null;
  readonly take: (file: File) => void;
}

/** A place where a photograph is to lie: a bare stone or an empty sheet until one is dropped or chosen. */
export function PhotographPlaceholder({
  kind,
  title,
  advice,
  photograph,
  upload,
  onSecond,
  children,
}: {
  kind: 'stone' | 'print';
  title: string;
  advice: string;
  photograph: PhotographEntry | null;
  upload: Upload;
  /** Takes the second of two files dropped together. */
  onSecond: (file: File) => void;
  /** Another way to the photograph. */
  children?: ReactNode;
}) {
  const id = useId();
  const [over, setOver] = useState(false);
  const drop = (event: DragEvent) => {
    event.preventDefault();
    setOver(false);
    const [first, second] = event.dataTransfer.files;
    if (first) upload.take(first);
    if (second) onSecond(second);
  };
  return (
    <section
      aria-labelledby={`${id}-title`}
      className={`photograph-place ${kind}${over ? ' over' : ''}`}
      onDragOver={(event) => {
        event.preventDefault();
        setOver(true);
      }}
      onDragLeave={() => setOver(false)}
      onDrop={drop}
    >
      <div className="photograph-bed">
        {photograph ? (
          <img src={previewAddress(photograph.id, 900)} alt={`${title}: ${photograph.fileName}`} />
        ) : (
          <label htmlFor={`${id}-file`} className="photograph-bare">
            {over ? (
              say('Let go')
            ) : (
              <>
                <span className="with-keys">{say('Lay the photograph here, or press to choose it')}</span>
                <span className="with-fingers">{say('Press to take or choose the photograph')}</span>
              </>
            )}
          </label>
        )}
        {upload.share !== null && (
          <p className="photograph-copying" role="status">
            {say('Copying it in, {share}', { share: Math.round(upload.share * 100) })} %
          </p>
        )}
      </div>
      <div className="photograph-words">
        <div>
          <h2 id={`${id}-title`} className="big">
            {title}
          </h2>
          <p className="soft">
            {photograph
              ? say('{fileName}, {widthPx} × {heightPx} px', {
                  fileName: photograph.fileName,
                  widthPx: photograph.widthPx,
                  heightPx: photograph.heightPx,
                })
              : advice}
          </p>
        </div>
        <PictureButton
          id={`${id}-file`}
          aria-label={
            photograph
              ? say('Choose another photograph: {title}', { title })
              : say('Choose a photograph: {title}', { title })
          }
          onPicture={upload.take}
        >
          {photograph ? say('Choose another') : say('Choose a photograph')}
        </PictureButton>
        {children}
      </div>
      {upload.trouble && <FailureNotice failure={upload.trouble} />}
    </section>
  );
}
