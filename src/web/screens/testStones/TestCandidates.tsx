import type { CheapestTrial, TrialWish } from '../../../records/trialDesign.ts';
import { Button } from '../../parts/Button.tsx';
import { scatterNames } from './scatterNames.ts';

const layouts: Readonly<Record<CheapestTrial['layout'], string>> = {
  'split-plot': 'strips',
  blocked: 'blocks',
  'row-column': 'rows and columns',
};

/** The cheapest test of every layout that notices what is wanted, beside one another. */
export function TestCandidates({
  wish,
  wanted,
  candidates,
  onSize,
}: {
  wish: TrialWish;
  wanted: number;
  candidates: readonly CheapestTrial[];
  onSize: (candidate: CheapestTrial) => void;
}) {
  if (candidates.length === 0) return <p>No test of up to 8 stones would notice a difference of {wanted}.</p>;
  const judged = wish.scatter ? 'this room’s own scatter' : 'middling scatter';
  return (
    <section className="test-stone-form" aria-labelledby="plan-candidates">
      <h3 id="plan-candidates">
        The cheapest that notices {wanted} at {judged}, by layout
      </h3>
      <ul className="plan-candidates">
        {candidates.map((candidate) => (
          <li key={candidate.layout} aria-label={layouts[candidate.layout]}>
            <h4>In {layouts[candidate.layout]}</h4>
            <p className="soft">{repeatWords(candidate)}</p>
            <dl>
              <Line of="Stones" is={`${candidate.stones}`} />
              <Line of="Patches" is={`${candidate.patches}`} />
              <Line of="Hours of hands" is={(candidate.minutes / 60).toFixed(1)} />
              {candidate.chances.map(({ of, chance }) => (
                <Line
                  key={of}
                  of={`Noticed, ${scatterNames[of]} scatter`}
                  is={`${Math.round(100 * chance)} %`}
                />
              ))}
            </dl>
            {planned(wish, candidate) ? (
              <p>
                <b>As it is laid out</b>
              </p>
            ) : (
              <Button
                aria-label={`Plan it so: in ${layouts[candidate.layout]}`}
                onClick={() => onSize(candidate)}
              >
                Plan it so
              </Button>
            )}
          </li>
        ))}
      </ul>
      <p className="soft">
        Hours are from memory: 90 minutes a stone, 4 a patch drawn, 6 an area etched by itself.{' '}
        {wish.whole &&
          `In blocks, rows and columns every patch gets its own ${wish.whole.name}; in strips a whole strip does. `}
        What holds on one stone may not hold on another, whatever the layout.
      </p>
    </section>
  );
}

function Line({ of, is }: { of: string; is: string }) {
  return (
    <div className="plan-candidate-line">
      <dt>{of}</dt>
      <dd>{is}</dd>
    </div>
  );
}

function repeatWords({ layout, stripRepeats, patchRepeats }: CheapestTrial): string {
  if (layout === 'row-column') return patchRepeats === 1 ? 'one row' : `${patchRepeats} rows`;
  const patches = patchRepeats === 1 ? 'no patch repeated' : `${patchRepeats} patches alike`;
  return stripRepeats === 1 ? patches : `${stripRepeats} strips alike, ${patches}`;
}

function planned(wish: TrialWish, { layout, blocks, ...size }: CheapestTrial): boolean {
  const same = (['stones', 'stripRepeats', 'patchRepeats'] as const).every((of) => wish[of] === size[of]);
  return (
    same &&
    (wish.layout ?? 'split-plot') === layout &&
    (blocks === null || (wish.blocks ?? 'head-tail') === blocks)
  );
}
