import { pictureKinds } from '../../parts/PictureButton.tsx';
import type { PhotographedThing } from './photographedThing.ts';
import { TakeHere } from './TakeHere.tsx';

/** The two ways to a photograph as targets of bench and press: by the device's own camera, and in the page by the guide. */
export function PhotographTarget({
  words,
  className,
  mark,
  thing,
  onPhotograph,
}: {
  /** What the first target says. */
  words: string;
  /** How both look, such as `bench-target`. */
  className: string;
  /** By what the first is known among the targets. */
  mark: string;
  thing: PhotographedThing;
  onPhotograph: (file: File) => void;
}) {
  return (
    <>
      <label className={`${className} ${mark}`}>
        {words}
        <input
          className="unseen"
          type="file"
          accept={pictureKinds}
          capture="environment"
          onChange={(event) => {
            const file = event.target.files?.[0];
            if (file) onPhotograph(file);
            event.target.value = '';
          }}
        />
      </label>
      <TakeHere target={className} thing={thing} onPhotographs={onPhotograph} />
    </>
  );
}
