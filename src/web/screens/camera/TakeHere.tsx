import { lazy, Suspense, useState } from 'react';
import { Button, type ButtonKind } from '../../parts/Button.tsx';
import { say } from '../../words/say.ts';
import type { OnPhotographs } from './CameraDialog.tsx';
import type { PhotographedThing } from './photographedThing.ts';

const CameraDialog = lazy(() => import('./CameraDialog.tsx'));

/** A button that photographs something in the page, with guide, level and checks. */
export function TakeHere({
  thing,
  kind = 'plain',
  target,
  disabled = false,
  askRepeat = false,
  onPhotographs,
}: {
  thing: PhotographedThing;
  kind?: ButtonKind;
  /** How it looks where it is no button among others, such as `bench-target`. */
  target?: string;
  disabled?: boolean;
  /** Whether a second one, set up again, is asked for: it tells σ. */
  askRepeat?: boolean;
  onPhotographs: OnPhotographs;
}) {
  const [open, setOpen] = useState(false);
  return (
    <>
      {target === undefined ? (
        <Button kind={kind} disabled={disabled} onClick={() => setOpen(true)}>
          {say('Photograph it with the guide')}
        </Button>
      ) : (
        <button type="button" className={target} disabled={disabled} onClick={() => setOpen(true)}>
          {say('Photograph it with the guide')}
        </button>
      )}
      {open && (
        <Suspense>
          <CameraDialog
            thing={thing}
            askRepeat={askRepeat}
            onPhotographs={(first, repeat) => {
              setOpen(false);
              onPhotographs(first, repeat);
            }}
            onLeave={() => setOpen(false)}
          />
        </Suspense>
      )}
    </>
  );
}
