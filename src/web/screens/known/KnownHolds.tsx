import './KnownHolds.css';
import { useQuery } from '@tanstack/react-query';
import { Link } from 'wouter';
import type { KnownHolds as Known, KnownMedium } from '../../../records/knownHolds.ts';
import { knownHoldsKey, openKnownHolds } from '../../client/knownHolds.ts';
import { shownFailure } from '../../client/shownFailure.ts';
import { ButtonLink } from '../../parts/Button.tsx';
import { EmptyPage } from '../../parts/EmptyPage.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { Fold } from '../../parts/Fold.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { fixed } from '../../words/figures.ts';
import { say } from '../../words/say.ts';
import { sayRich } from '../../words/sayRich.ts';
import { told } from '../../words/told.ts';
import { HoldCell } from './HoldCell.tsx';
import { percent } from './percent.ts';

/** What we know here: media against etches, over all stones. */
export default function KnownHolds() {
  const known = useQuery({ queryKey: knownHoldsKey, queryFn: openKnownHolds });
  const plan = (
    <ButtonLink kind="act" href="/test-stones/plan">
      {say('Plan a test')}
    </ButtonLink>
  );
  const nothing = known.data?.media.length === 0;
  return (
    <>
      <PageHead
        stamp={say('What we know here')}
        headline={known.data ? headline(known.data) : say('What holds under which etch')}
      >
        {!nothing && known.data && plan}
      </PageHead>
      <div className="known-body">
        {known.isError && <FailureNotice failure={shownFailure(known.error)} />}
        {nothing && (
          <EmptyPage title={say('Nothing was read here yet')} act={plan}>
            <p>
              {sayRich(
                'This page comes to say how every medium holds in this room, under every etch that it was given. Plan a test for it, <link>enter a test stone that you have</link>, or measure a pull of a work whose etch was planned.',
                { link: (words) => <Link href="/test-stones/new">{words}</Link> },
              )}
            </p>
          </EmptyPage>
        )}
        {known.data && !nothing && <Grid known={known.data} />}
      </div>
    </>
  );
}

function headline({ media, stones }: Known): string {
  if (media.length === 0) return say('Nothing is known here yet');
  const holds = media.flatMap((medium) => medium.holds);
  const settled = holds.filter(({ certainty }) => certainty === 'sure').length;
  return settled === 0
    ? say('Nothing is sure yet, after {stones, plural, one {one stone} other {{stones} stones}}', { stones })
    : say('{settled} of {count} are sure, after {stones, plural, one {one stone} other {{stones} stones}}', {
        settled,
        count: holds.length,
        stones,
      });
}

function Grid({ known }: { known: Known }) {
  return (
    <>
      <p className="known-purpose">
        {say(
          'Look here before you choose an etch: how each medium held in this room, under every etch that it was given. One more test stone says more.',
        )}
      </p>
      <Key />
      {known.media.map((medium) => (
        <MediumRow key={medium.medium} medium={medium} etches={known.etches} />
      ))}
      <Fold title={say('How this is counted')}>
        <p>
          {known.alike.origin === 'estimated'
            ? say(
                'Places on one stone and prints from it do not count as more stones: stones are counted, and places only as far as they differ (estimated here: alike {alike} of 1). Within a bar the truth lies, 19 times of 20, on average (Wilson’s interval). “Sure” asks more: that over half hold even where luck was best or worst (the exact one-sided bound); five stones alike are the fewest to give it.',
                { alike: fixed(known.alike.value, 2) },
              )
            : say(
                'Places on one stone and prints from it do not count as more stones: stones are counted, and places only as far as they differ (taken as all alike, as nothing tells: alike {alike} of 1). Within a bar the truth lies, 19 times of 20, on average (Wilson’s interval). “Sure” asks more: that over half hold even where luck was best or worst (the exact one-sided bound); five stones alike are the fewest to give it.',
                { alike: fixed(known.alike.value, 2) },
              )}
        </p>
        <p>{told(known.pooledBy)}</p>
        <ul className="known-pooled">
          {known.media.flatMap(({ medium, holds }) =>
            holds.map(({ etch, pooled, pooledLow, pooledHigh }) => (
              <li key={`${medium} ${etch}`}>
                {say('{medium} under {etch}, with its other etches: {share} % ({low}–{high} %)', {
                  medium: told(medium),
                  etch: told(etch),
                  share: percent(pooled),
                  low: percent(pooledLow),
                  high: percent(pooledHigh),
                })}
              </li>
            )),
          )}
        </ul>
      </Fold>
    </>
  );
}

function Key() {
  return (
    <ul className="known-key" aria-label={say('How sure')}>
      <li>
        <span className="known-swatch sure" aria-hidden="true" /> {say('sure')}
      </li>
      <li>
        <span className="known-swatch some" aria-hidden="true" /> {say('three stones or more, not sure yet')}
      </li>
      <li>
        <span className="known-swatch little" aria-hidden="true" /> {say('one or two stones')}
      </li>
    </ul>
  );
}

function MediumRow({ medium, etches }: { medium: KnownMedium; etches: readonly string[] }) {
  const { advice, holds } = medium;
  const untried = etches.filter((etch) => !holds.some((one) => one.etch === etch));
  return (
    <section className="known-medium" aria-label={told(medium.medium)}>
      <div className="known-says">
        <h2 className="big">{told(medium.medium)}</h2>
        {advice && (
          <p>
            {advice.choice
              ? say('The table {table} asks for {row} ({basis}). {choice}', {
                  table: told(advice.table),
                  row: told(advice.row),
                  basis: told(advice.basis),
                  choice: told(advice.choice),
                })
              : say('The table {table} asks for {row} ({basis}).', {
                  table: told(advice.table),
                  row: told(advice.row),
                  basis: told(advice.basis),
                })}
          </p>
        )}
        <p>{told(medium.found)}</p>
        {untried.length > 0 && (
          <p className="soft">
            {say('Not tried here: {etches}.', { etches: untried.map((etch) => told(etch)).join(', ') })}
          </p>
        )}
      </div>
      <ul className="known-cells">
        {holds.map((hold) => (
          <HoldCell key={hold.etch} etch={hold.etch} hold={hold} />
        ))}
      </ul>
    </section>
  );
}
