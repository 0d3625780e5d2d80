import type { Corners } from '../../science/geometry/point.ts';
import { cornerTrouble } from '../managers/cornerMarks.ts';
import { say } from '../words/say.ts';
import { Notice } from './Notice.tsx';

/** What is wrong with four marks and how to set them; nothing where they are sound. */
export function CornerTrouble({ corners }: { corners: Corners }) {
  const trouble = cornerTrouble(corners);
  if (trouble === null) return null;
  return (
    <Notice
      kind="trouble"
      title={trouble === 'crossed' ? say('The sides cross.') : say('The marks lie almost on one line.')}
    >
      {say('Set them one after the other round the rectangle, in the order of their numbers.')}
    </Notice>
  );
}
