import './TestStones.css';
import './PlanTest.css';
import { useQuery, useQueryClient } from '@tanstack/react-query';
import type { TestStone, TestStoneDraft } from '../../../records/testStone.ts';
import { FailedRequest, shownFailure } from '../../client/shownFailure.ts';
import { openTestStone, saveTestStone, testStoneKey, testStonesKey } from '../../client/testStones.ts';
import { readPatches } from '../../managers/testStones/unsavedPatches.ts';
import { ButtonLink } from '../../parts/Button.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { PagesOf } from '../../parts/PagesOf.tsx';
import { say } from '../../words/say.ts';
import { NotFound } from '../NotFound.tsx';
import { useSaving } from '../useSaving.ts';
import { AnswerPage } from './AnswerPage.tsx';
import { BlindPage } from './BlindPage.tsx';
import { PatchesPage } from './PatchesPage.tsx';
import { PhotographsPage } from './PhotographsPage.tsx';
import { ReadingPage } from './ReadingPage.tsx';
import { SealedPage } from './SealedPage.tsx';
import { StepsPage } from './StepsPage.tsx';
import type { TestStonePageParts } from './testStonePageParts.ts';

const views = [
  ['steps', say('Steps')],
  ['patches', say('Patches')],
  ['photographs', say('Photographs')],
  ['eye', say('By eye')],
  ['', say('Reading')],
  ['answer', say('Answer')],
] as const;

/** One test stone: what was read of it, its patches, its photographs, a blind reading, and what it answers. */
export default function TestStoneScreen({ id, view }: { id: string; view: string }) {
  const queries = useQueryClient();
  const asked = useQuery({ queryKey: testStoneKey(id), queryFn: () => openTestStone(id) });
  const saving = useSaving<TestStone>();
  const keep = (stone: TestStone) => {
    queries.setQueryData(testStoneKey(id), stone);
    void queries.invalidateQueries({ queryKey: [...testStoneKey(id)], exact: false, refetchType: 'active' });
    void queries.invalidateQueries({ queryKey: testStonesKey });
  };
  if (asked.error) {
    const trouble = shownFailure(asked.error);
    if (asked.error instanceof FailedRequest && trouble.code === 'not-found') return <NotFound />;
    return (
      <>
        <PageHead stamp={say('Test stones')} headline={say('This test stone could not be opened')} />
        <div className="list-foot">
          <FailureNotice failure={trouble} />
          <ButtonLink href="/test-stones">{say('To the test stones')}</ButtonLink>
        </div>
      </>
    );
  }
  const stone = asked.data;
  if (!stone) return <p className="unseen">{say('Opening …')}</p>;
  const save = async (changes: Partial<TestStoneDraft>) => {
    const saved = await saving.send(
      () => saveTestStone(id, stone.version, changes),
      (current) => keep(current),
    );
    if (saved) keep(saved);
    return saved;
  };
  const parts: TestStonePageParts = { stone, save, saving, keep };
  return (
    <>
      <PagesOf
        name={stone.name}
        label={say('Pages of {stone}', { stone: stone.name })}
        pages={views.map(([path, words]) => ({
          href: `/test-stones/${id}${path === '' ? '' : `/${path}`}`,
          here: path === view,
          words: path === 'patches' && view !== path && laidBy(id) ? say('Patches, not saved') : words,
        }))}
      />
      {pageOf(view, parts)}
      {saving.trouble && (
        <div className="list-foot">
          <FailureNotice failure={saving.trouble} />
        </div>
      )}
    </>
  );
}

/** Whether patches of this stone lie on the shelf, unsaved. */
function laidBy(id: string): boolean {
  return readPatches(window.sessionStorage, id) !== null;
}

function pageOf(view: string, parts: TestStonePageParts) {
  const sealed = parts.stone.list?.sealed === true;
  if (sealed && (view === 'patches' || view === 'answer')) return <SealedPage {...parts} />;
  switch (view) {
    case 'steps':
      return <StepsPage {...parts} />;
    case 'patches':
      return <PatchesPage key={parts.stone.id} {...parts} />;
    case 'photographs':
      return <PhotographsPage {...parts} />;
    case 'eye':
      return <BlindPage {...parts} />;
    case 'answer':
      return <AnswerPage {...parts} />;
    default:
      return <ReadingPage {...parts} />;
  }
}
