import type { TestStone } from '../../../records/testStone.ts';
import { tracingScale, wrongScaleSentence } from '../../../studio/trials/reading/tracingScale.ts';
import { Button } from '../../parts/Button.tsx';
import { Notice } from '../../parts/Notice.tsx';
import { lengthWords } from '../../words/lengths.ts';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';

/** Whether a ruler in the stone's photograph agrees with its corners, and the way to set one. */
export function RulerLine({
  stone,
  onSet,
}: {
  stone: Pick<TestStone, 'drawn' | 'ruler' | 'sizeMm'>;
  onSet: () => void;
}) {
  const { ruler } = stone;
  const scale = tracingScale(stone);
  const wrong = wrongScaleSentence(stone);
  return (
    <>
      {wrong && (
        <Notice kind="caution" title="">
          {told(wrong)}
        </Notice>
      )}
      {ruler && scale !== null && !wrong && (
        <p>
          {say('The ruler’s {length} measure {measured} between the corners: they agree to 1 %.', {
            length: lengthWords(ruler.lengthMm, 1),
            measured: lengthWords(ruler.lengthMm * scale, 1),
          })}
        </p>
      )}
      <Button kind="quiet" onClick={onSet}>
        {ruler ? say('Set the ruler anew') : say('A ruler in the picture? Set its length')}
      </Button>
    </>
  );
}
