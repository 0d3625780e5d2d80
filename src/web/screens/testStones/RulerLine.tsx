import type { TestStone } from '../../../records/testStone.ts';
import { templateScale, wrongScaleSentence } from '../../../studio/trials/reading/templateScale.ts';
import { Button } from '../../parts/Button.tsx';
import { Notice } from '../../parts/Notice.tsx';

/** Whether a ruler in the stone's photograph agrees with its corners, and the way to set one. */
export function RulerLine({
  stone,
  onSet,
}: {
  stone: Pick<TestStone, 'drawn' | 'ruler' | 'sizeMm'>;
  onSet: () => void;
}) {
  const { ruler } = stone;
  const scale = templateScale(stone);
  const wrong = wrongScaleSentence(stone);
  return (
    <>
      {wrong && (
        <Notice kind="caution" title="">
          {wrong}
        </Notice>
      )}
      {ruler && scale !== null && !wrong && (
        <p>
          The ruler’s {ruler.lengthMm} mm measure {(ruler.lengthMm * scale).toFixed(1)} mm between the
          corners: they agree to 1 %.
        </p>
      )}
      <Button kind="quiet" onClick={onSet}>
        {ruler ? 'Set the ruler anew' : 'A ruler in the picture? Set its length'}
      </Button>
    </>
  );
}
