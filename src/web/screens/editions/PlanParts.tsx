import type { Measured } from '../../../foundation/measured.ts';
import { tearDownSvg } from '../../../paper/charts/tearDown.ts';
import type { EditionPlan } from '../../../records/editionPlan.ts';
import { svgInWords } from '../../../words/inWords.ts';
import { Figure } from '../../parts/Figure.tsx';
import { Fold } from '../../parts/Fold.tsx';
import { lengthFigure, lengthWords } from '../../words/lengths.ts';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';

function piecesWords(pieces: number): string {
  return say('{pieces, plural, one {one piece} other {{pieces} pieces}}', { pieces });
}

/** What there is to buy and to reckon with, in large figures. */
export function PlanFigures({ plan }: { plan: EditionPlan }) {
  const { tearDown, inkGrams, minutes, rackPlaces } = plan;
  return (
    <div className="edition-figures">
      <Figure value={tearDown?.parentSheets == null ? '–' : String(tearDown.parentSheets)}>
        {tearDown?.pieces.length
          ? say('sheets to buy, {pieces} from each', { pieces: piecesWords(tearDown.pieces.length) })
          : say('sheets to buy: size not known')}
      </Figure>
      <Figure value={inkGrams ? rangeOf(inkGrams) : '–'} {...(inkGrams ? { beside: 'g' } : {})}>
        {inkGrams ? say('ink, {basis}', { basis: basisWords(inkGrams) }) : say('ink: inked area not known')}
      </Figure>
      <Figure value={hoursRange(minutes)} beside={say('h')}>
        {say('with two people, {basis}', { basis: basisWords(minutes) })}
      </Figure>
      <Figure value={String(rackPlaces.needed)}>
        {rackPlaces.missing
          ? say('places to dry, {missing} too few', { missing: rackPlaces.missing })
          : say('places to dry')}
      </Figure>
    </div>
  );
}

/** The sheets one by one, how they are torn, and where the figures come from. */
export function PlanParts({ plan }: { plan: EditionPlan }) {
  const { sheets, tearDown, spoilage, growthMm, paperGrams, newsprint } = plan;
  return (
    <div className="edition-plan">
      <section className="edition-part">
        <h2 className="big">{say('Sheets')}</h2>
        <table className="edition-table">
          <tbody>
            {sheets.map(({ what, sheets: count, words }) => (
              <tr key={what}>
                <th scope="row">{told(words)}</th>
                <td className="big">{count}</td>
              </tr>
            ))}
            <tr>
              <th scope="row">{say('In all, on the good paper')}</th>
              <td className="big">{plan.sheetsInAll}</td>
            </tr>
            <tr>
              <th scope="row">{say('Newsprint before it, common practice')}</th>
              <td className="big">{say('{low} to {high}', { low: newsprint.low, high: newsprint.high })}</td>
            </tr>
          </tbody>
        </table>
        <p className="soft">
          {spoilage.basis === 'this room'
            ? say(
                'Spoilage: this room’s, {percent} of the sound ones, from {impressions} prints; the truth lies within {percent2} to {percent3}, 19 times of 20.',
                {
                  percent: percent(spoilage.value),
                  percent2: percent(spoilage.low),
                  percent3: percent(spoilage.high),
                  impressions: spoilage.impressions,
                },
              )
            : told(spoilage.warnings[0]!)}
        </p>
      </section>
      <section className="edition-part">
        <h2 className="big">{say('Paper')}</h2>
        {tearDown && (
          <div
            className="edition-chart"
            // biome-ignore lint/security/noDangerouslySetInnerHtml: our own picture, its words made safe where it is drawn
            dangerouslySetInnerHTML={{
              __html: svgInWords(tearDownSvg(tearDown, { width: 420, idPrefix: 'tear' })),
            }}
          />
        )}
        <ul className="edition-said">
          {plan.sentences.map((sentence) => (
            <li key={sentence}>{told(sentence)}</li>
          ))}
          {growthMm && (
            <li>
              {say(
                'Damp it grows {mm} on its long side and {mm2} on its short one, from memory: measure one.',
                { mm: mm(growthMm.long), mm2: mm(growthMm.short) },
              )}
            </li>
          )}
          {paperGrams && (
            <li>
              {say('All sheets weigh {paperGrams} g dry, by the stated weight.', {
                paperGrams: Math.round(paperGrams.value),
              })}
            </li>
          )}
        </ul>
        <Fold title={say('Where these figures come from')}>
          <p>
            {say(
              'How many sheets: our rule. Ink: a film of 1 to 2 g/m² on what is covered, and 30 to 60 g that slab and roller keep, from memory. Minutes: {warnings} Pieces lie in a plain grid; a mixed one sometimes gives one more.',
              { warnings: told(plan.minutes.warnings[0]!) },
            )}
          </p>
        </Fold>
      </section>
    </div>
  );
}

function rangeOf({ low, high }: Measured): string {
  return `${Math.round(low)}–${Math.round(high)}`;
}

function hoursRange({ low, high }: Measured): string {
  const half = (minutes: number) => String(Math.round(minutes / 30) / 2);
  return `${half(low)}–${half(high)}`;
}

function basisWords({ basis }: Measured): string {
  return basis === 'this room' ? say('this room’s pace') : basis === 'memory' ? say('from memory') : basis;
}

function mm({ low, high }: Measured): string {
  return say('{low} to {high}', { low: lengthFigure(low, 1), high: lengthWords(high, 1) });
}

function percent(share: number): string {
  return Number.isFinite(share) ? `${Math.round(100 * share)} %` : say('any');
}
