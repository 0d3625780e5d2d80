import type { CheapestTrial, TrialWish } from '../../../records/trialDesign.ts';
import { Button } from '../../parts/Button.tsx';
import { fixed } from '../../words/figures.ts';
import { say } from '../../words/say.ts';
import { scatterNames } from './scatterNames.ts';

const layouts: Readonly<Record<CheapestTrial['layout'], string>> = {
  'split-plot': say('strips'),
  blocked: say('blocks'),
  'row-column': say('rows and columns'),
};

const laidIn: Readonly<Record<CheapestTrial['layout'], string>> = {
  'split-plot': say('In strips'),
  blocked: say('In blocks'),
  'row-column': say('In rows and columns'),
};

const plannedIn: Readonly<Record<CheapestTrial['layout'], string>> = {
  'split-plot': say('Plan it so: in strips'),
  blocked: say('Plan it so: in blocks'),
  'row-column': say('Plan it so: in rows and columns'),
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
  if (candidates.length === 0)
    return <p>{say('No test of up to 8 stones would notice a difference of {wanted}.', { wanted })}</p>;
  const judged = wish.scatter ? say('this room’s own scatter') : say('middling scatter');
  return (
    <section className="test-stone-form" aria-labelledby="plan-ways">
      <h3 id="plan-ways">
        {say('The cheapest that notices {wanted} at {judged}, by layout', { wanted, judged })}
      </h3>
      <ul className="plan-ways">
        {candidates.map((candidate) => (
          <li key={candidate.layout} aria-label={layouts[candidate.layout]}>
            <h4>{laidIn[candidate.layout]}</h4>
            <p className="soft">{repeatWords(candidate)}</p>
            <dl>
              <Line of={say('Stones')} is={`${candidate.stones}`} />
              <Line of={say('Patches')} is={`${candidate.patches}`} />
              <Line of={say('Hours of hands')} is={fixed(candidate.minutes / 60, 1)} />
              {candidate.chances.map(({ of, chance }) => (
                <Line
                  key={of}
                  of={say('Noticed, {scatter} scatter', { scatter: scatterNames[of] })}
                  is={`${Math.round(100 * chance)} %`}
                />
              ))}
            </dl>
            {planned(wish, candidate) ? (
              <p>
                <b>{say('As it is laid out')}</b>
              </p>
            ) : (
              <Button aria-label={plannedIn[candidate.layout]} onClick={() => onSize(candidate)}>
                {say('Plan it so')}
              </Button>
            )}
          </li>
        ))}
      </ul>
      <p className="soft">
        {say('Hours are from memory: 90 minutes a stone, 4 a patch drawn, 6 an area etched by itself.')}{' '}
        {wish.whole && (
          <>
            {say(
              'In blocks, rows and columns every patch gets its own {whole}; in strips a whole strip does.',
              {
                whole: wish.whole.name,
              },
            )}{' '}
          </>
        )}
        {say('What holds on one stone may not hold on another, whatever the layout.')}
      </p>
    </section>
  );
}

function Line({ of, is }: { of: string; is: string }) {
  return (
    <div className="plan-way-line">
      <dt>{of}</dt>
      <dd>{is}</dd>
    </div>
  );
}

function repeatWords({ layout, stripRepeats, patchRepeats }: CheapestTrial): string {
  if (layout === 'row-column')
    return say('{patchRepeats, plural, one {one row} other {{patchRepeats} rows}}', { patchRepeats });
  const patches = say(
    '{patchRepeats, plural, one {no patch repeated} other {{patchRepeats} patches alike}}',
    { patchRepeats },
  );
  return stripRepeats === 1
    ? patches
    : say('{stripRepeats} strips alike, {patches}', { stripRepeats, patches });
}

function planned(wish: TrialWish, { layout, blocks, ...size }: CheapestTrial): boolean {
  const same = (['stones', 'stripRepeats', 'patchRepeats'] as const).every((of) => wish[of] === size[of]);
  return (
    same &&
    (wish.layout ?? 'split-plot') === layout &&
    (blocks === null || (wish.blocks ?? 'head-tail') === blocks)
  );
}
