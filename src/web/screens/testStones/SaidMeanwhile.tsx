import { Button } from '../../parts/Button.tsx';
import { say } from '../../words/say.ts';
import type { PatchDesk } from './usePatchDesk.ts';

/** Somebody saved other patches first: the choice between theirs and one's own. */
export function SaidMeanwhile({ desk }: { desk: PatchDesk }) {
  return (
    <section className="test-stone-picked" role="alert">
      <h2 className="big">{say('Somebody saved these patches meanwhile')}</h2>
      <p>{say('What you drew and typed is still here; nothing of it is lost.')}</p>
      <Button kind="danger" onClick={desk.keepMine}>
        {say('Let mine stand, to be saved in its place')}
      </Button>
      <Button onClick={desk.takeTheirs}>{say('Let theirs stand')}</Button>
    </section>
  );
}
