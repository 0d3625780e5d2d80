import { useState } from 'react';
import { curveSentence, toneCurveSvg } from '../../paper/charts/toneCurve.ts';
import type { Change, ComparisonRecord, ToneCurve } from '../../records/comparison.ts';
import { mediumWords } from '../../studio/etch/mediumCatalogue.ts';
import { shareWords } from '../../studio/proofs/coverageWords.ts';
import { ladderSteps } from '../managers/ladderSteps.ts';
import { Fold } from '../parts/Fold.tsx';
import { ToneLadder } from '../parts/ToneLadder.tsx';
import './ToneSection.css';
import { svgInWords, textInWords } from '../../words/inWords.ts';
import { say } from '../words/say.ts';
import { told } from '../words/told.ts';
import { toldText } from '../words/toldText.ts';

/** The tone ladder of one medium at a time, its loss and fill points in words, and the curve for a second look. */
export function ToneSection({ record }: { record: ComparisonRecord }) {
  const telling = record.toneCurves.findIndex((one) => one.lossPoint !== null || one.fillPoint !== null);
  const [chosen, setChosen] = useState(Math.max(telling, 0));
  const curve = record.toneCurves[chosen];
  if (!curve) return null;
  const steps = ladderSteps(curve);
  const unmarked = unmarkedWords(
    curve,
    record,
    steps.map((step) => step.became),
  );
  return (
    <section className="tone-section" aria-labelledby="tone-title">
      <h2 id="tone-title" className="stamp">
        {say('Tone ladder, {medium}, in per cent', { medium: told(mediumWords(curve.medium)) })}
      </h2>
      {record.toneCurves.length > 1 && (
        <fieldset className="tone-media">
          <legend className="unseen">{say('Medium')}</legend>
          {record.toneCurves.map((one, index) => (
            <label key={one.medium}>
              <input
                type="radio"
                name="medium"
                checked={index === chosen}
                onChange={() => setChosen(index)}
              />
              <span>{told(mediumWords(one.medium))}</span>
            </label>
          ))}
        </fieldset>
      )}
      <ToneLadder
        steps={steps}
        label={say('Tone ladder, {medium}: coverage drawn and printed, in per cent', {
          medium: told(mediumWords(curve.medium)),
        })}
        lostWords={say('lost below {pointShare}', { pointShare: pointShare(curve.lossPoint) })}
        filledWords={say('fills in above {pointShare}', { pointShare: pointShare(curve.fillPoint) })}
      />
      {unmarked && <p className="tone-points">{unmarked}</p>}
      {(curve.lossPoint ?? curve.fillPoint) !== null && (
        <p className="soft">{say('No ± is known of where tones are lost or close.')}</p>
      )}
      <Fold title={say('The curve, for a second look')}>
        <img
          className="tone-curve"
          src={`data:image/svg+xml,${encodeURIComponent(svgInWords(toneCurveSvg({ ...record, toneCurves: [curve] }, { width: 240 })))}`}
          alt={say(
            'Tone curve, printed on drawn coverage, in a band within which the truth lies, 19 times of 20; {curveSentence}. The same numbers stand in the ladder and in comparison.json.',
            { curveSentence: textInWords(curveSentence(curve)) },
          )}
        />
      </Fold>
    </section>
  );
}

function pointShare(coverage: number | null): string {
  return toldText(shareWords(Math.round((coverage ?? 0) * 100) / 100));
}

/** What the lines under the ladder leave unsaid of lights and darks, in words; null when they say it all. */
function unmarkedWords(
  { medium, lossPoint, fillPoint }: ToneCurve,
  record: ComparisonRecord,
  became: readonly ('lost' | 'filled' | null)[],
): string | null {
  const some = (change: Change) =>
    record.zones.some((zone) => zone.medium === medium && zone.change === change);
  const words: string[] = [];
  if (!became.includes('lost'))
    words.push(
      lossPoint !== null
        ? say('Tones under {share} are lost.', { share: toldText(shareWords(lossPoint)) })
        : some('lost')
          ? say('Lights are lost in places, not throughout.')
          : say('No light of it is lost.'),
    );
  if (!became.includes('filled'))
    words.push(
      fillPoint !== null
        ? say('Tones over {share} fill in.', { share: toldText(shareWords(fillPoint)) })
        : some('filled')
          ? say('Darks close in places.')
          : say('No dark fills in.'),
    );
  return words.length > 0 ? words.join(' ') : null;
}
