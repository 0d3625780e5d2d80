import { Button } from '../../parts/Button.tsx';
import { say } from '../../words/say.ts';

/** Between the two photographs: why a second one, and how. It can be left out. */
export function AgainForSigma({ onTake, onEnough }: { onTake: () => void; onEnough: () => void }) {
  return (
    <div className="camera-file-way">
      <p className="camera-advice big">{say('The first one is kept. Now once more.')}</p>
      <p>
        {say(
          'Put the phone down, set up again, take it once more: the difference tells how far one reading strays in this room, and whether a change is only the photograph.',
        )}
      </p>
      <div className="camera-acts">
        <Button kind="act" onClick={onTake}>
          {say('Take the second photograph')}
        </Button>
        <Button onClick={onEnough}>{say('Once is enough')}</Button>
      </div>
    </div>
  );
}
