import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { Link } from 'wouter';
import type { Measured } from '../../../foundation/measured.ts';
import { valueWords } from '../../../paper/charts/toneValueWords.ts';
import { seriesTones } from '../../../records/proofSeries.ts';
import type { PairedTone, PullChange, PullEntry, PullPartner } from '../../../records/pullTones.ts';
import { changeWord } from '../../../studio/proofs/changeWords.ts';
import { darknessWords } from '../../../studio/proofs/seriesWords.ts';
import { mapAddress, pullKey, readAgainst } from '../../client/pulls.ts';
import { shownFailure } from '../../client/shownFailure.ts';
import { workAspect } from '../../managers/proofs/workFrame.ts';
import { HatchSwatch } from '../../parts/HatchSwatch.tsx';
import { Notice } from '../../parts/Notice.tsx';
import { figureText } from '../../words/figures.ts';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';
import { ChangeMap } from './ChangeMap.tsx';
import { PullPicture } from './PullPicture.tsx';
import { StonePicture } from './StonePicture.tsx';
import type { ProofsPageParts } from './useProofs.ts';
import { WordList } from './WordList.tsx';

/** How long a picture is, px: two of them fill the table at a desk. */
const longest = { desk: 365, phone: 256 } as const;

/** A pull and its partner in one orientation, where it surely is lighter or darker, and by how much in each place. */
export function PullBeside({
  work,
  proofs,
  pull,
  partner,
}: ProofsPageParts & { pull: PullEntry; partner: PullPartner }) {
  const found = useQuery({
    queryKey: [...pullKey(work.id, pull.id), 'against', partner, pull.version, proofs.series],
    queryFn: () => readAgainst(work.id, pull.id, partner),
  });
  const [picturePx] = useState(() =>
    window.matchMedia('(min-width: 1200px)').matches ? longest.desk : longest.phone,
  );
  const aspect = workAspect(work);
  const change = found.data;
  const other = change?.number ? proofs.pulls.find(({ number }) => number === change.number) : undefined;
  const stone = partner === 'drawn' || partner === 'inked';
  return (
    <>
      <div className="pull-lifts">
        {other && (
          <figure>
            <PullPicture pull={other} aspect={aspect} longestPx={picturePx} />
            <figcaption>{say('Pull {number}', { number: other.number })}</figcaption>
          </figure>
        )}
        {stone && <StonePicture work={work} state={partner} longestPx={picturePx} />}
        <figure>
          <PullPicture pull={pull} aspect={aspect} longestPx={picturePx} />
          <figcaption>{say('Pull {number}', { number: pull.number })}</figcaption>
        </figure>
        {change?.maps && (
          <ChangeMap
            work={work}
            longestPx={picturePx}
            lighter={mapAddress(work.id, pull.id, partner, change.maps.lighter)}
            darker={mapAddress(work.id, pull.id, partner, change.maps.darker)}
            fractions={change.maps}
          />
        )}
      </div>
      <p className="soft pull-lifts-note">{say('All as on the stone.')}</p>
      {found.isError && <Missing failure={shownFailure(found.error)} work={work.id} partner={partner} />}
      {found.isPending && <p role="status">{say('Comparing …')}</p>}
      {change && <Words change={change} />}
      {change && <ChangeTable change={change} beside={otherWords(change)} />}
    </>
  );
}

/** There may be nothing to lay it beside yet: that is no fault, and there is something to do. */
function Missing({
  failure,
  work,
  partner,
}: {
  failure: { readonly code: string; readonly message: string; readonly remedy: string };
  work: string;
  partner: PullPartner;
}) {
  const stone = partner === 'drawn' || partner === 'inked';
  return (
    <Notice kind="aside" title={failure.message}>
      {told(failure.remedy)}{' '}
      {stone && <Link href={`/works/${work}/photographs`}>{say('To the work’s photographs')}</Link>}
    </Notice>
  );
}

function Words({ change: { sentences, warnings } }: { change: PullChange }) {
  return (
    <>
      {sentences.length > 0 && <p className="pull-sentences">{sentences.map(told).join(' ')}</p>}
      {warnings.length > 0 && <WordList words={warnings} />}
    </>
  );
}

function ChangeTable({ change, beside }: { change: PullChange; beside: string }) {
  const measure = change.measure === 'darkness' ? say('darkness') : say('coverage');
  const line = (name: string, paired: PairedTone) => (
    <tr key={name}>
      <th scope="row">{told(name)}</th>
      <td data-label={say('beside it')}>{shown(paired.partner)}</td>
      <td data-label={say('this pull')}>{shown(paired.pull)}</td>
      <td>{difference(paired.difference)}</td>
      <td>
        <span className="pull-change">
          <HatchSwatch kind={paired.change} small /> {told(changeWord(paired.change))}
        </span>
      </td>
    </tr>
  );
  return (
    <table className="pull-table" aria-label={say('{measure}, {beside} and this pull', { measure, beside })}>
      <thead>
        <tr>
          <th scope="col">{measure}</th>
          <th scope="col">{beside}</th>
          <th scope="col">{say('this pull')}</th>
          <th scope="col">{say('difference')}</th>
          <th scope="col">{say('so it is')}</th>
        </tr>
      </thead>
      <tbody>{seriesTones.map((tone) => line(tone, change.tones[tone]))}</tbody>
      <tbody>{change.zones.map((zone) => line(zone.name === '' ? zone.id : zone.name, zone))}</tbody>
    </table>
  );
}

function otherWords({ partner, number }: PullChange): string {
  if (partner === 'drawn') return say('drawn stone');
  if (partner === 'inked') return say('inked stone');
  return say('pull {number}', { number });
}

function shown(value: Measured | null): string {
  return value ? figureText(valueWords(value)) : say('not known');
}

function difference(value: Measured | null): string {
  if (!value) return say('not known');
  const signed = (number: number) => {
    const words = darknessWords(number);
    if (words.startsWith('-')) return figureText(words.replace('-', '−'));
    return figureText(Number(words) === 0 ? words : `+${words}`);
  };
  return say('{signed} ({signed2} to {signed3})', {
    signed: signed(value.value),
    signed2: signed(value.low),
    signed3: signed(value.high),
  });
}
