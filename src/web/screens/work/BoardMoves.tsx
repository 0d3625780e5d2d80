import { say } from '../../words/say.ts';

/** How what lies on a board is moved and brought closer, by keys or by fingers. */
export function BoardMoves() {
  return (
    <>
      <span className="with-keys">
        {say('Arrow keys move it, plus and minus bring it closer and farther.')}
      </span>
      <span className="with-fingers">{say('One finger moves it, two bring it closer.')}</span>
    </>
  );
}
