import type { AttachedPhotograph, PhotographState } from '../../../records/attachedPhotograph.ts';
import { previewAddress } from '../../client/photographs.ts';
import { Button } from '../../parts/Button.tsx';
import { Choice } from '../../parts/Choice.tsx';
import { photographStateWords } from '../../parts/photographStateWords.ts';

const states = Object.entries(photographStateWords) as [PhotographState, string][];

/** One photograph of the work: what it shows, and whether its four marks are set. */
export function PhotographEntryLine({
  attached: { photograph, state, corners },
  number,
  shown,
  onShow,
  onState,
  onMark,
  onDrop,
}: {
  attached: AttachedPhotograph;
  number: number;
  shown: boolean;
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
        aria-label={`Lay photograph ${number} on the stone`}
        onClick={onShow}
      >
        <img src={previewAddress(photograph, 300)} alt="" loading="lazy" />
      </button>
      <div>
        <Choice
          label={`Photograph ${number} shows the stone`}
          value={state}
          options={states}
          onChoose={onState}
        />
        <p className="soft">
          {corners
            ? `Four marks on the corners of the ${corners.of === 'stone' ? 'stone' : 'work rectangle'}.`
            : 'No marks yet: it cannot lie under the drawing.'}
        </p>
        <div>
          <Button kind={corners ? 'quiet' : 'plain'} onClick={onMark}>
            {corners ? 'Mend its marks' : 'Set its four marks'}
          </Button>
          <Button kind="quiet" aria-label={`Take photograph ${number} away`} onClick={onDrop}>
            Take away
          </Button>
        </div>
      </div>
    </li>
  );
}
