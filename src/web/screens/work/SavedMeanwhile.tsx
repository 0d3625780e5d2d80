import './SavedMeanwhile.css';
import type { WorkEntry } from '../../../records/workEntry.ts';
import { drawingDifferences } from '../../managers/drawingDifferences.ts';
import { Button } from '../../parts/Button.tsx';
import { say } from '../../words/say.ts';
import type { WorkDesk } from './useWorkDesk.ts';

/** Somebody saved first: what differs, theirs on the stone beside one's own, and the choice between the two. */
export function SavedMeanwhile({
  desk,
  theirs,
  compared,
  onCompare,
}: {
  desk: WorkDesk;
  theirs: WorkEntry;
  compared: boolean;
  onCompare: (compared: boolean) => void;
}) {
  const differences = drawingDifferences(desk.state.drawing, theirs);
  return (
    <section className="saved-meanwhile hatched-head" role="alert">
      <h2 className="big">{say('Somebody saved this work meanwhile')}</h2>
      <p>{say('What you drew is still on the desk, nothing of it is lost. What is kept now is newer.')}</p>
      {differences.length === 0 ? (
        <p>{say('It is drawn as here.')}</p>
      ) : (
        <ul>
          {differences.slice(0, 12).map((words) => (
            <li key={words}>{words}</li>
          ))}
          {differences.length > 12 && <li>{say('And {count} more.', { count: differences.length - 12 })}</li>}
        </ul>
      )}
      <Button aria-pressed={compared} onClick={() => onCompare(!compared)}>
        {compared ? say('Hide the other drawing') : say('Show the other drawing on the stone, in red dashes')}
      </Button>
      <p>
        <b>{say('Whose line stays?')}</b>
      </p>
      <div>
        <Button kind="danger" disabled={desk.saving} onClick={() => void desk.keepMine()}>
          {say('Let mine stand')}
        </Button>
        <Button onClick={desk.takeTheirs}>{say('Let theirs stand; “Take back” brings mine again')}</Button>
      </div>
    </section>
  );
}
