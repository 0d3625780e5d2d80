import './PhotographsView.css';
import { useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { useSearch } from 'wouter';
import type { AttachedPhotograph } from '../../../records/attachedPhotograph.ts';
import { addPhotograph } from '../../client/photographs.ts';
import { FailedRequest, type ShownFailure, shownFailure } from '../../client/shownFailure.ts';
import { Button, ButtonLink } from '../../parts/Button.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { say } from '../../words/say.ts';
import { PhotographWays } from '../camera/PhotographWays.tsx';
import { holdPhotograph } from '../held/heldPhotographs.ts';
import { UnsentPhotographs } from '../held/UnsentPhotographs.tsx';
import { MarksView } from './MarksView.tsx';
import { PhotographBoard } from './PhotographBoard.tsx';
import { PhotographEntryLine } from './PhotographEntryLine.tsx';
import type { WorkDesk } from './useWorkDesk.ts';
import { WorkPage } from './WorkPage.tsx';

/** The photographs of a work by state, each straightened onto the stone by its four marks. Saved as they are changed. */
export function PhotographsView({ desk }: { desk: WorkDesk }) {
  const { work, change } = desk;
  const { photographs } = work;
  const queries = useQueryClient();
  const [shownId, setShownId] = useState<string | null>(null);
  // who went to set a work rectangle comes back to the marks
  const [marking, setMarking] = useState(new URLSearchParams(useSearch()).get('marks'));
  const [share, setShare] = useState<number | null>(null);
  const [trouble, setTrouble] = useState<ShownFailure | null>(null);
  const shown = photographs.find(({ photograph }) => photograph === shownId) ?? photographs.at(-1) ?? null;
  const marked = photographs.find(({ photograph }) => photograph === marking);
  const unmarked = shown?.corners === null ? shown : null;
  const set = (id: string, changes: Partial<AttachedPhotograph>) =>
    change((kept) => ({
      photographs: kept.photographs.map((each) => (each.photograph === id ? { ...each, ...changes } : each)),
    }));
  const add = async (file: File) => {
    setTrouble(null);
    setShare(0);
    try {
      const { id } = await addPhotograph(file, setShare, { tries: 3 });
      const already = photographs.some(({ photograph }) => photograph === id);
      const added = { photograph: id, state: 'drawn', takenAt: null, corners: null, note: '' } as const;
      if (already || (await change((kept) => ({ photographs: [...kept.photographs, added] })))) {
        setShownId(id);
        if (!already) setMarking(id);
      }
    } catch (thrown) {
      if (!(thrown instanceof FailedRequest)) {
        await holdPhotograph(queries, file, work.title, { to: 'work', workId: work.id, state: 'drawn' });
      } else setTrouble(shownFailure(thrown));
    } finally {
      setShare(null);
    }
  };
  const shownTrouble = trouble ?? desk.trouble;

  if (marked)
    return (
      <MarksView
        desk={desk}
        attached={marked}
        onDone={async (corners) => {
          if (corners === null || (await set(marked.photograph, { corners }))) setMarking(null);
        }}
      />
    );
  return (
    <WorkPage
      work={work}
      headline={photographs.length === 0 ? say('Photograph the drawn stone') : say('What was photographed')}
      board={<PhotographBoard desk={desk} shown={shown} />}
      side={
        <>
          {photographs.length === 0 && (
            <p>
              {say(
                'Square on, in even light, with its four corners or four marks in sight. Straightened, it lies under the drawing, so that zones are drawn where they really are; tones are read from it.',
              )}
            </p>
          )}
          <ul className="work-photographs">
            {photographs.map((each, index) => (
              <PhotographEntryLine
                key={each.photograph}
                attached={each}
                number={index + 1}
                shown={each === shown}
                askedBelow={each === unmarked}
                onShow={() => setShownId(each.photograph)}
                onState={(state) => void set(each.photograph, { state })}
                onMark={() => setMarking(each.photograph)}
                onDrop={() =>
                  void change((kept) => ({
                    photographs: kept.photographs.filter(({ photograph }) => photograph !== each.photograph),
                  }))
                }
              />
            ))}
          </ul>
          <UnsentPhotographs of={(belongs) => belongs.to === 'work' && belongs.workId === work.id} />
          {shownTrouble && <FailureNotice failure={shownTrouble} />}
          <div className="work-act photographs-act">
            {unmarked ? (
              <Button kind="act" onClick={() => setMarking(unmarked.photograph)}>
                {say('Set its four marks')}
              </Button>
            ) : (
              shown &&
              work.zones.length === 0 && (
                <ButtonLink kind="act" href={`/works/${work.id}`}>
                  {say('Draw the zones over it')}
                </ButtonLink>
              )
            )}
            <PhotographWays
              words={say('Add a photograph')}
              kind={photographs.length === 0 ? 'act' : 'plain'}
              share={share}
              thing={{
                name: work.stone.name,
                sizeMm: [work.stone.widthMm, work.stone.heightMm],
                sizeOf: 'stone',
              }}
              onPhotographs={(file) => void add(file)}
            />
          </div>
        </>
      }
    />
  );
}
