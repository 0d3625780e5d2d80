import { useLocation } from 'wouter';
import { Button, ButtonLink } from '../../parts/Button.tsx';
import { say } from '../../words/say.ts';
import { setRectangle } from './setRectangle.ts';
import type { WorkDesk } from './useWorkDesk.ts';

/** What comes next for somebody who came from the marks of a photograph: the work rectangle, then back to them. */
export function RectangleForMarks({ desk, photograph }: { desk: WorkDesk; photograph: string }) {
  const [, go] = useLocation();
  const { work, state, unsaved, saving, save, theirs } = desk;
  const marks = `/works/${work.id}/photographs?marks=${photograph}`;
  const back = async () => {
    if (!unsaved || (await save())) go(marks);
  };
  if (!state.drawing.rectangle)
    return (
      <>
        <Button kind="act" onClick={() => setRectangle(desk)}>
          {say('Set a work rectangle')}
        </Button>
        <ButtonLink kind="quiet" href={marks}>
          {say('Back to the marks of the photograph')}
        </ButtonLink>
      </>
    );
  return (
    <Button kind="act" disabled={saving || theirs !== null} onClick={() => void back()}>
      {unsaved ? say('Save, and back to the marks') : say('Back to the marks of the photograph')}
    </Button>
  );
}
