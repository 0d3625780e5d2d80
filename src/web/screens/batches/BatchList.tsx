import '../entries/Entries.css';
import { memo, useState } from 'react';
import { Link } from 'wouter';
import type { BatchEntry, BatchKind } from '../../../records/batch.ts';
import { batchesKey, listBatches } from '../../client/batches.ts';
import { ageWords, batchCautions, batchFacts, batchKindWords } from '../../managers/batchForm.ts';
import { FoundStatus } from '../../parts/FoundStatus.tsx';
import { ListPage } from '../../parts/ListPage.tsx';
import { ListTools } from '../../parts/ListTools.tsx';
import { Notice } from '../../parts/Notice.tsx';
import { Picks } from '../../parts/Picks.tsx';
import { ShowMore } from '../../parts/ShowMore.tsx';
import { say } from '../../words/say.ts';
import { type Shelf, useShelvedList } from '../useShelvedList.ts';

const kinds: readonly (readonly [BatchKind | 'all', string])[] = [
  ['all', say('All')],
  ['gum', say('Gum')],
  ['tannic', say('Tannic')],
  ['washout', say('Washout')],
  ['base', say('Base')],
];

/** What to do first. */
const first = (
  <p>
    {say(
      'Begin with the gum and the tannic solution that stand on the bench now: when they were made, how strong they are, and their pH by strip or meter. Plans and runs name the batch, so that next month one knows what was in the bottle.',
    )}
  </p>
);

/** The batch log: what is in the bottles, how old and how strong. */
export default function BatchList() {
  const [kind, setKind] = useState<BatchKind | 'all'>('all');
  const {
    pages,
    items: batches,
    narrowed,
    nothingYet,
    ...list
  } = useShelvedList({
    key: batchesKey,
    narrowing: [kind === 'all' ? '' : kind],
    read: (asked, after, signal) =>
      listBatches({ ...asked, kind: kind === 'all' ? null : kind }, after, signal),
    itemsOf: (page) => page.batches,
  });
  return (
    <ListPage
      stamp={<Link href="/mixing">{say('Mixing and kit')}</Link>}
      headline={nothingYet ? say('The batch log') : say('What is in the bottles')}
      act={{ href: '/batches/new', words: say('Log a batch') }}
      failed={pages.error}
      empty={nothingYet}
      emptyTitle={say('No bottle is logged yet')}
      emptyWords={first}
    >
      {!nothingYet && (
        <ListTools label={say('Search names and notes')} typed={list.typed} onType={list.setTyped}>
          <Picks label={say('Which kind')} shownLabel={false} value={kind} options={kinds} onPick={setKind} />
          <Picks<Shelf>
            label={say('Which batches')}
            shownLabel={false}
            value={list.putBy}
            options={[
              ['no', say('In use')],
              ['yes', say('Used up')],
            ]}
            onPick={list.setPutBy}
          />
        </ListTools>
      )}
      <FoundStatus found={pages.isSuccess && !pages.isPlaceholderData && narrowed ? batches.length : null} />
      {batches.length > 0 && (
        <ul className="entry-lines" aria-label={say('Batches')}>
          {batches.map((batch) => (
            <BatchLine key={batch.id} batch={batch} />
          ))}
        </ul>
      )}
      {pages.isSuccess && !pages.isPlaceholderData && narrowed && batches.length === 0 && (
        <p className="list-foot">{say('No batch is found so. Ask for any kind, or for fewer words.')}</p>
      )}
      {pages.hasNextPage && (
        <p className="list-foot">
          <ShowMore pages={pages}>{say('Show older batches')}</ShowMore>
        </p>
      )}
    </ListPage>
  );
}

/** Typing in the search draws the page anew at every key; lines that stay are left alone. */
const BatchLine = memo(function BatchLine({ batch }: { batch: BatchEntry }) {
  const cautions = batchCautions(batch);
  return (
    <li>
      <Link href={`/batches/${batch.id}`}>
        <span className="entry-name">
          <b className="big">{batch.name}</b>
          <span className="soft">{batchKindWords[batch.kind]}</span>
        </span>
        <span>{batchFacts(batch).join(', ')}</span>
        <span className="entry-end">{ageWords(batch)}</span>
      </Link>
      {cautions.map((caution) => (
        <Notice key={caution} kind="caution" title={say('Mind:')}>
          {caution}
        </Notice>
      ))}
    </li>
  );
});
