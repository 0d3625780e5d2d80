import type { AttachedPhotograph, PhotographState } from '../../../records/attachedPhotograph.ts';
import { previewAddress } from '../../client/photographs.ts';
import { Button } from '../../parts/Button.tsx';
import { Choice } from '../../parts/Choice.tsx';
import { photographStateWords } from '../../parts/photographStateWords.ts';
import { say } from '../../words/say.ts';

const states = Object.entries(photographStateWords) as [PhotographState, string][];

/** One photograph of the work: what it shows, and whether its four marks are set. */
export function PhotographEntryLine({
  attached: { photograph, state, corners },
  number,
  shown,
  askedBelow,
  onShow,
  onState,
  onMark,
  onDrop,
}: {
  attached: AttachedPhotograph;
  number: number;
  shown: boolean;
  /** Whether the page asks for its marks already. */
  askedBelow: boolean;
  onShow: () => void;
  onState: (state: PhotographState) => void;
  onMark: () => void;
  onDrop: () => void;
}) {
  return (
    <li className={shown ? 'shown' : undefined}>
      <button
        type="button"
        aria-pressed={shown}
        aria-label={say('Lay photograph {number} on the stone', { number })}
        onClick={onShow}
      >
        <img src={previewAddress(photograph, 300)} alt="" loading="lazy" />
      </button>
      <div>
        <Choice
          label={say('Photograph {number} shows the stone', { number })}
          value={state}
          options={states}
          onChoose={onState}
        />
        <p className="soft">
          {corners
            ? corners.of === 'stone'
              ? say('Four marks on the corners of the stone.')
              : say('Four marks on the corners of the work rectangle.')
            : say('No marks yet: it cannot lie under the drawing.')}
        </p>
        <div>
          {!askedBelow && (
            <Button kind={corners ? 'quiet' : 'plain'} onClick={onMark}>
              {corners ? say('Mend its marks') : say('Set its four marks')}
            </Button>
          )}
          <Button kind="quiet" aria-label={say('Take photograph {number} away', { number })} onClick={onDrop}>
            {say('Take away')}
          </Button>
        </div>
      </div>
    </li>
  );
}
