import type { PhotographPlace, SideName } from '../managers/draft.ts';
import { FileLine } from '../parts/FileLine.tsx';
import { pictureKinds } from '../parts/PictureButton.tsx';
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
    />
  );
}
