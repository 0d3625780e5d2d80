import type { CheapestTrial, TrialWish } from '../../../records/trialDesign.ts';
import { Button } from '../../parts/Button.tsx';
import { fixed } from '../../words/figures.ts';
import { say } from '../../words/say.ts';
import { scatterNames } from './scatterNames.ts';

const layoutNames: Readonly<Record<CheapestTrial['layout'], string>> = {
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
export function TestLayouts({
  wish,
  wanted,
  layouts,
  onSize,
}: {
  wish: TrialWish;
  wanted: number;
  layouts: readonly CheapestTrial[];
  onSize: (cheapest: CheapestTrial) => void;
}) {
  if (layouts.length === 0)
    return <p>{say('No test of up to 8 stones would notice a difference of {wanted}.', { wanted })}</p>;
  const judged = wish.scatter ? say('this room’s own scatter') : say('middling scatter');
  return (
    <section className="test-stone-form" aria-labelledby="plan-ways">
      <h3 id="plan-ways">
        {say('The cheapest that notices {wanted} at {judged}, by layout', { wanted, judged })}
      </h3>
      <ul className="plan-ways">
        {layouts.map((cheapest) => (
          <li key={cheapest.layout} aria-label={layoutNames[cheapest.layout]}>
            <h4>{laidIn[cheapest.layout]}</h4>
            <p className="soft">{repeatWords(cheapest)}</p>
            <dl>
              <Line of={say('Stones')} is={`${cheapest.stones}`} />
              <Line of={say('Patches')} is={`${cheapest.patches}`} />
              <Line of={say('Hours of hands')} is={fixed(cheapest.minutes / 60, 1)} />
              {cheapest.chances.map(({ of, chance }) => (
                <Line
                  key={of}
                  of={say('Noticed, {scatter} scatter', { scatter: scatterNames[of] })}
                  is={`${Math.round(100 * chance)} %`}
                />
              ))}
            </dl>
            {planned(wish, cheapest) ? (
              <p>
                <b>{say('As it is laid out')}</b>
              </p>
            ) : (
              <Button aria-label={plannedIn[cheapest.layout]} onClick={() => onSize(cheapest)}>
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
