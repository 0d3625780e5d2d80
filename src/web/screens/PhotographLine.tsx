import type { PhotographPlace, SideName } from '../managers/draft.ts';
import { FileLine } from '../parts/FileLine.tsx';
import { pictureKinds } from '../parts/PictureButton.tsx';
import { midSentence } from '../words/midSentence.ts';
import { TakeHere } from './camera/TakeHere.tsx';
import { usePhotographUpload } from './usePhotographUpload.ts';

/** A further photograph of one side, copied in as it is chosen. */
export function PhotographLine({
  side,
  place,
  title,
  advice,
  held,
  onDrop,
}: {
  side: SideName;
  place: PhotographPlace;
  title: string;
  advice: string;
  held: string | null;
  onDrop: () => void;
}) {
  const upload = usePhotographUpload(side, place);
  return (
    <FileLine
      title={title}
      advice={advice}
      held={held}
      accept={pictureKinds}
      busy={upload.share !== null}
      trouble={upload.trouble}
      onFile={upload.take}
      onDrop={onDrop}
    >
      <TakeHere
        thing={{ name: midSentence(title), sizeMm: null, sizeOf: side === 'stone' ? 'stone' : 'sheet' }}
        disabled={upload.share !== null}
        onPhotographs={upload.take}
      />
    </FileLine>
  );
}
