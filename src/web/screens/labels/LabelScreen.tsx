import '../entries/Entries.css';
import './Labels.css';
import { useQuery } from '@tanstack/react-query';
import { type ReactNode, useState } from 'react';
import { Link, useSearch } from 'wouter';
import type { Paper } from '../../../records/paper.ts';
import { printLabel } from '../../../studio/editions/printLabels.ts';
import {
  type Labelled,
  type LabelsChosen,
  labelledKey,
  labelSheetAddress,
  readLabelled,
} from '../../client/labels.ts';
import { shownFailure } from '../../client/shownFailure.ts';
import { batchShelf, oldFromDays } from '../../managers/batchShelf.ts';
import { chosenIn, labelCount, labelCountWords } from '../../managers/papers/labelChoice.ts';
import { Button, ButtonFile, ButtonLink } from '../../parts/Button.tsx';
import { EmptyPage } from '../../parts/EmptyPage.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { Fold } from '../../parts/Fold.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { Picks } from '../../parts/Picks.tsx';
import { Ticks } from '../../parts/Ticks.tsx';
import { say } from '../../words/say.ts';
import { sayRich } from '../../words/sayRich.ts';

/** Chooses what one sheet of labels is made for. */
export default function LabelScreen() {
  const [chosen, setChosen] = useState(chosenIn(useSearch()));
  const [paper, setPaper] = useState<Paper>('a4');
  const labelled = useQuery({ queryKey: labelledKey, queryFn: readLabelled, staleTime: 0 });
  const count = labelCount(chosen, labelled.data?.editions ?? []);
  const nothing =
    labelled.data &&
    [...labelled.data.stones, ...labelled.data.batches, ...labelled.data.editions].length === 0;
  return (
    <>
      <PageHead
        stamp={sayRich('<link>Copies and labels</link> · labels', {
          link: (words) => <Link href="/keeping">{words}</Link>,
        })}
        headline={labelCountWords(count)}
      >
        {nothing ? null : count.labels === 0 ? (
          <Button kind="act" disabled>
            {say('Make the sheet')}
          </Button>
        ) : (
          <ButtonFile kind="act" href={labelSheetAddress(chosen, paper)}>
            {say('Make the sheet')}
          </ButtonFile>
        )}
      </PageHead>
      {nothing ? (
        <EmptyPage
          title={say('Nothing is entered that could carry a label')}
          act={
            <ButtonLink kind="act" href="/stones/new">
              {say('Enter a stone')}
            </ButtonLink>
          }
        >
          <p>
            {say(
              'Labels are for stones, bottles and the prints of an edition, each with a code that leads to its page.',
            )}
          </p>
        </EmptyPage>
      ) : (
        <div className="entry-body labels">
          {labelled.isPending && <p className="soft">{say('Looking for stones, bottles and prints …')}</p>}
          {labelled.isError && <FailureNotice failure={shownFailure(labelled.error)} />}
          <Picks<Paper>
            label={say('Paper')}
            value={paper}
            options={[
              ['a4', 'A4'],
              ['letter', say('Letter')],
            ]}
            onPick={setPaper}
          />
          {labelled.data && <LabelTicks labelled={labelled.data} chosen={chosen} choose={setChosen} />}
          <p className="soft">
            {say(
              'Twelve a page, to cut apart. The code on each leads to its page at {origin}: another device follows it only where Stonetone answers on the network under that address.',
              { origin: location.origin },
            )}
          </p>
        </div>
      )}
    </>
  );
}

function LabelTicks({
  labelled: { stones, batches, editions },
  chosen,
  choose,
}: {
  labelled: Labelled;
  chosen: LabelsChosen;
  choose: (chosen: LabelsChosen) => void;
}) {
  const ticks = (
    what: 'stones' | 'batches' | 'editions',
    label: string,
    options: readonly (readonly [string, string])[],
    none: ReactNode,
  ) =>
    options.length === 0 ? (
      <p className="soft">{none}</p>
    ) : (
      <Ticks
        label={label}
        values={chosen[what]}
        options={options}
        onTick={(ids) => choose({ ...chosen, [what]: ids })}
      />
    );
  const shelf = batchShelf(batches);
  const picked = editions.filter(({ id }) => chosen.editions.includes(id));
  return (
    <>
      {ticks(
        'stones',
        say('Stones'),
        stones.map(({ id, name }) => [id, name]),
        say('No stone is entered yet.'),
      )}
      {ticks(
        'editions',
        say('Prints of editions'),
        editions.map(({ id, title, prints }) => [id, `${title}, ${printsWords(prints.length)}`]),
        say('No edition is entered yet.'),
      )}
      {picked.map((edition) => {
        const own = edition.prints.filter(({ kind }) => kind !== 'destroyed');
        return own.length === 0 ? (
          <p key={edition.id} className="soft">
            {say('No print of {title} is numbered yet: that is done where its prints are chosen.', {
              title: edition.title,
            })}
          </p>
        ) : (
          <Ticks
            key={edition.id}
            label={say('Only these of {title} (none ticked: all)', { title: edition.title })}
            values={chosen.prints}
            options={own.map((print) => [print.impression, printLabel(print, edition.size, edition.prints)])}
            onTick={(prints) => choose({ ...chosen, prints })}
          />
        );
      })}
      {ticks(
        'batches',
        say('Bottles, newest first'),
        shelf.inUse.map(({ id, name }) => [id, name]),
        sayRich('No bottle of these weeks is in the batch log. <link>Log one</link>', {
          link: (words) => <Link href="/batches/new">{words}</Link>,
        }),
      )}
      {shelf.old.length > 0 && (
        <Fold
          title={say('Bottles that are {oldFromDays} days old and older', { oldFromDays })}
          holds={String(shelf.old.length)}
          open={shelf.old.some(({ id }) => chosen.batches.includes(id))}
        >
          <Ticks
            label={say('Old bottles')}
            values={chosen.batches}
            options={shelf.old.map(({ id, name }) => [id, name])}
            onTick={(ids) => choose({ ...chosen, batches: ids })}
          />
        </Fold>
      )}
    </>
  );
}

function printsWords(count: number): string {
  return count === 0
    ? say('none numbered yet')
    : say('{count, plural, one {one print} other {{count} prints}}', { count });
}
