import './KnownHolds.css';
import { useQuery } from '@tanstack/react-query';
import type { CSSProperties } from 'react';
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
import { told } from '../../words/told.ts';
import { HoldCell } from './HoldCell.tsx';

/** What we know here: media against etches, over all stones. */
export default function KnownHolds() {
  const known = useQuery({ queryKey: knownHoldsKey, queryFn: openKnownHolds });
  const enter = (
    <ButtonLink kind="act" href="/test-stones/new">
      {say('Enter a test stone')}
    </ButtonLink>
  );
  const nothing = known.data?.media.length === 0;
  return (
    <>
      <PageHead
        stamp={say('What we know here')}
        headline={known.data ? headline(known.data) : say('What holds under which etch')}
      >
        {!nothing && known.data && enter}
      </PageHead>
      <div className="known-body">
        {known.isError && <FailureNotice failure={shownFailure(known.error)} />}
        {nothing && (
          <EmptyPage title={say('Nothing was read here yet')} act={enter}>
            <p>
              {say(
                'Read a test stone that says which medium and which etch every patch got, or measure a pull of a work that has a plan. Every stone counts once, however many patches it has.',
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
    ? say('Nothing is settled yet: {stones, plural, one {one stone} other {{stones} stones}} read', {
        stones,
      })
    : say('{settled} of {count} settled, over {stones, plural, one {one stone} other {{stones} stones}}', {
        settled,
        count: holds.length,
        stones,
      });
}

function Grid({ known }: { known: Known }) {
  return (
    <>
      <Key />
      {known.media.map((medium) => (
        <Medium key={medium.medium} medium={medium} etches={known.etches} />
      ))}
      <Fold title={say('How this is counted')}>
        <p>
          {known.alike.origin === 'estimated'
            ? say(
                'Places on one stone and prints from it do not count as more stones: stones are counted, and places only as far as they differ (estimated here: alike {alike} of 1). Within a bar the truth lies, 19 times of 20, on average (Wilson’s interval). “Settled” asks more: that over half hold even where luck was best or worst (the exact one-sided bound); five stones alike are the fewest to give it.',
                { alike: fixed(known.alike.value, 2) },
              )
            : say(
                'Places on one stone and prints from it do not count as more stones: stones are counted, and places only as far as they differ (taken as all alike, as nothing tells: alike {alike} of 1). Within a bar the truth lies, 19 times of 20, on average (Wilson’s interval). “Settled” asks more: that over half hold even where luck was best or worst (the exact one-sided bound); five stones alike are the fewest to give it.',
                { alike: fixed(known.alike.value, 2) },
              )}
        </p>
        <p>{told(known.pooledBy)}</p>
      </Fold>
    </>
  );
}

function Key() {
  return (
    <ul className="known-key" aria-label={say('How sure')}>
      <li>
        <span className="known-swatch sure" aria-hidden="true" /> {say('settled')}
      </li>
      <li>
        <span className="known-swatch some" aria-hidden="true" /> {say('three stones or more, open')}
      </li>
      <li>
        <span className="known-swatch little" aria-hidden="true" /> {say('one or two stones')}
      </li>
    </ul>
  );
}

function Medium({ medium, etches }: { medium: KnownMedium; etches: readonly string[] }) {
  const columns = { '--etches': Math.min(4, etches.length) } as CSSProperties;
  const { advice } = medium;
  return (
    <section className="known-medium" aria-label={told(medium.medium)}>
      <h2 className="big">{told(medium.medium)}</h2>
      <ul className="known-cells" style={columns}>
        {etches.map((etch) => (
          <HoldCell key={etch} etch={etch} hold={medium.holds.find((one) => one.etch === etch) ?? null} />
        ))}
      </ul>
      <p>{told(medium.found)}</p>
      <p className="soft">
        {advice
          ? advice.choice
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
              })
          : say('No etch table has a rule for it.')}
      </p>
    </section>
  );
}
