import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import type { MediumEntry } from '../../../records/medium.ts';
import { listMedia, mediaKey, removeMedium } from '../../client/media.ts';
import { shownFailure } from '../../client/shownFailure.ts';
import { ruleWords } from '../../managers/mediumForm.ts';
import { Button } from '../../parts/Button.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { say } from '../../words/say.ts';
import { sayRich } from '../../words/sayRich.ts';
import { AddMedium } from './AddMedium.tsx';

/** What the studio draws with beyond the starting catalogue, and which etch each asks for. */
export function OwnMedia() {
  const [adding, setAdding] = useState(false);
  const queries = useQueryClient();
  const media = useQuery({ queryKey: mediaKey, queryFn: listMedia });
  const removing = useMutation({
    mutationFn: removeMedium,
    onSettled: () => queries.invalidateQueries({ queryKey: mediaKey }),
  });
  const own = (media.data ?? []).filter((medium) => medium.own);
  return (
    <section aria-labelledby="own-media" className="own-media">
      <h2 id="own-media" className="stamp">
        {say('Media of our own')}
      </h2>
      <p className="tables-lead">
        {say(
          'Crayons 00 to #5, inks, tusche, graphite and what else the trade names are known. What this room draws with besides is named here, and which etch it asks for.',
        )}
      </p>
      {media.isError && <FailureNotice failure={shownFailure(media.error)} />}
      {removing.isError && <FailureNotice failure={shownFailure(removing.error)} />}
      {own.length > 0 && (
        <ul className="own-media-lines">
          {own.map((medium) => (
            <MediumLine key={medium.id} medium={medium} onRemove={() => removing.mutate(medium.id)} />
          ))}
        </ul>
      )}
      {adding ? (
        <AddMedium onLeave={() => setAdding(false)} />
      ) : (
        <Button onClick={() => setAdding(true)}>{say('Name a medium')}</Button>
      )}
    </section>
  );
}

function MediumLine({ medium, onRemove }: { medium: MediumEntry; onRemove: () => void }) {
  const { name, rule, works } = medium;
  return (
    <li>
      <span>
        <b>{name}</b>
        <span className="soft">{ruleWords(rule)}</span>
        <span className="soft">
          {works === 0
            ? say('in no work yet')
            : say('{works, plural, one {in one work} other {in {works} works}}', { works })}
        </span>
      </span>
      <Button onClick={onRemove}>
        {sayRich('Take out<span> {name}</span>', {
          span: (words) => <span className="unseen">{words}</span>,
          name,
        })}
      </Button>
    </li>
  );
}
