import { Notice } from '../../parts/Notice.tsx';
import { lengthFigure, lengthWords } from '../../words/lengths.ts';
import { say } from '../../words/say.ts';
import { toldText } from '../../words/toldText.ts';
import type { LiveVerdicts } from './useVerdicts.ts';

/** What to mind about the drawing, in sentences: what can't be saved first, then borders, overlaps and gaps. */
export function WorkFindings({ verdicts }: { verdicts: LiveVerdicts }) {
  const { faults, sentences, borders } = verdicts;
  return (
    <section aria-labelledby="findings-head" className="work-findings">
      <h2 id="findings-head" className="big">
        {say('What follows')}
      </h2>
      {faults.map((words) => (
        <Notice key={words} kind="trouble" title={words} />
      ))}
      {sentences.map((words) => (
        <Notice key={words} kind="caution" title="">
          {toldText(words)}
        </Notice>
      ))}
      {borders && borders.sentences.length === 0 && (
        <p>
          {say(
            'Every border is wide enough to be gummed: {sides} at the sides, {ends} at the ends (common practice).',
            { sides: lengthWords(15), ends: lengthWords(25) },
          )}
        </p>
      )}
      {borders?.scraperMm && (
        <p>
          {say('A scraper of {least} to {most} fits: wider than the image, inside the stone.', {
            least: lengthFigure(Math.ceil(borders.scraperMm.least)),
            most: lengthWords(Math.floor(borders.scraperMm.most)),
          })}
        </p>
      )}
      {!borders && (
        <p className="soft">
          {say(
            'Borders and the scraper are judged once something that prints is drawn, or the work rectangle is set.',
          )}
        </p>
      )}
    </section>
  );
}
