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
import { HoldCell } from './HoldCell.tsx';

/** What we know here: media against etches, over all stones. */
export default function KnownHolds() {
  const known = useQuery({ queryKey: knownHoldsKey, queryFn: openKnownHolds });
  const enter = (
    <ButtonLink kind="act" href="/test-stones/new">
      Enter a test stone
    </ButtonLink>
  );
  const nothing = known.data?.media.length === 0;
  return (
    <>
      <PageHead
        stamp="What we know here"
        headline={known.data ? headline(known.data) : 'What holds under which etch'}
      >
        {!nothing && known.data && enter}
      </PageHead>
      <div className="known-body">
        {known.isError && <FailureNotice failure={shownFailure(known.error)} />}
        {nothing && (
          <EmptyPage title="Nothing was read here yet" act={enter}>
            <p>
              Read a test stone that says which medium and which etch every square got, or measure a pull of a
              work that has a plan. Every stone counts once, however many squares it has.
            </p>
          </EmptyPage>
        )}
        {known.data && !nothing && <Grid known={known.data} />}
      </div>
    </>
  );
}

function headline({ media, stones }: Known): string {
  if (media.length === 0) return 'Nothing is known here yet';
  const holds = media.flatMap((medium) => medium.holds);
  const settled = holds.filter(({ certainty }) => certainty === 'sure').length;
  const over = stones === 1 ? 'one stone' : `${stones} stones`;
  return settled === 0
    ? `Nothing is settled yet: ${over} read`
    : `${settled} of ${holds.length} settled, over ${over}`;
}

function Grid({ known }: { known: Known }) {
  return (
    <>
      <Key />
      {known.media.map((medium) => (
        <Medium key={medium.medium} medium={medium} etches={known.etches} />
      ))}
      <Fold title="How this is counted">
        <p>
          Places on one stone and prints from it are no replicates: stones are counted, and places only as far
          as they differ (
          {known.alike.origin === 'estimated' ? 'estimated here' : 'taken as all alike, as nothing tells'}:
          alike {known.alike.value.toFixed(2)} of 1). Bars and figures are Wilson intervals of 95 %, right on
          average. “Settled” asks more: an exact one-sided bound beyond one half, which five stones alike are
          the fewest to give.
        </p>
        <p>{known.pooledBy}</p>
      </Fold>
    </>
  );
}

function Key() {
  return (
    <ul className="known-key" aria-label="How sure">
      <li>
        <span className="known-swatch sure" aria-hidden="true" /> settled
      </li>
      <li>
        <span className="known-swatch some" aria-hidden="true" /> three stones or more, open
      </li>
      <li>
        <span className="known-swatch little" aria-hidden="true" /> one or two stones
      </li>
    </ul>
  );
}

function Medium({ medium, etches }: { medium: KnownMedium; etches: readonly string[] }) {
  const columns = { '--etches': Math.min(4, etches.length) } as CSSProperties;
  const { advice } = medium;
  return (
    <section className="known-medium" aria-label={medium.medium}>
      <h2 className="big">{medium.medium}</h2>
      <ul className="known-cells" style={columns}>
        {etches.map((etch) => (
          <HoldCell key={etch} etch={etch} hold={medium.holds.find((one) => one.etch === etch) ?? null} />
        ))}
      </ul>
      <p>{medium.found}</p>
      <p className="soft">
        {advice
          ? `The table ${advice.table} asks for ${advice.row} (${advice.basis}).${advice.choice ? ` ${advice.choice}` : ''}`
          : 'No etch table has a rule for it.'}
      </p>
    </section>
  );
}
