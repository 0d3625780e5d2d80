import { Button } from '../../parts/Button.tsx';
import type { PatchDesk } from './usePatchDesk.ts';

/** Somebody saved other patches first: the choice between theirs and one's own. */
export function SaidMeanwhile({ desk }: { desk: PatchDesk }) {
  return (
    <section className="test-stone-picked" role="alert">
      <h2 className="big">Somebody saved these patches meanwhile</h2>
      <p>What you drew and typed is still here; nothing of it is lost.</p>
      <Button kind="danger" onClick={desk.keepMine}>
        Go on with mine, to be saved over theirs
      </Button>
      <Button onClick={desk.takeTheirs}>Take theirs</Button>
    </section>
  );
}
