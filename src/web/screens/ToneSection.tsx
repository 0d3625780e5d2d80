import { useState } from 'react';
import type { Change, ComparisonRecord, ToneCurve } from '../../records/comparison.ts';
import type { ComparisonEntry } from '../../records/comparisonEntry.ts';
import { shareWords } from '../../studio/proofs/coverageWords.ts';
import { comparisonFile } from '../client/comparisons.ts';
import { ladderSteps } from '../managers/ladderSteps.ts';
import { Fold } from '../parts/Fold.tsx';
import { ToneLadder } from '../parts/ToneLadder.tsx';
import './ToneSection.css';

/** The tone ladder of one medium at a time, its loss and fill points in words, and the curve for a second look. */
export function ToneSection({ entry, record }: { entry: ComparisonEntry; record: ComparisonRecord }) {
  const telling = record.toneCurves.findIndex((one) => one.lossPoint !== null || one.fillPoint !== null);
  const [chosen, setChosen] = useState(Math.max(telling, 0));
  const curve = record.toneCurves[chosen];
  if (!curve) return null;
  const { lost, filled } = record.parameters;
  const steps = ladderSteps(curve, lost.keptAtMost, filled.printedAtLeast, filled.drawnAtMost);
  return (
    <section className="tone-section" aria-labelledby="tone-title">
      <h2 id="tone-title" className="stamp">
        Tone ladder, {curve.medium}
      </h2>
      {record.toneCurves.length > 1 && (
        <fieldset className="tone-media">
          <legend className="unseen">Medium</legend>
          {record.toneCurves.map((one, index) => (
            <label key={one.medium}>
              <input
                type="radio"
                name="medium"
                checked={index === chosen}
                onChange={() => setChosen(index)}
              />
              <span>{one.medium}</span>
            </label>
          ))}
        </fieldset>
      )}
      <ToneLadder
        steps={steps}
        label={`Tone ladder, ${curve.medium}: coverage drawn and printed, in per cent`}
      />
      <p className="tone-points">{pointWords(curve, record)}</p>
      {entry.files.includes('curve.svg') && (
        <Fold title="The curve, for a second look">
          <img
            className="tone-curve"
            src={comparisonFile(entry.id, 'curve.svg')}
            alt="Tone curve: printed coverage on drawn coverage with its 95 % band, by medium. The same numbers stand in the ladder and in comparison.json."
          />
        </Fold>
      )}
    </section>
  );
}

/** Where tones are lost and where they close over all zones of a medium, in words; single zones may do otherwise. */
function pointWords({ medium, lossPoint, fillPoint }: ToneCurve, record: ComparisonRecord): string {
  const some = (change: Change) =>
    record.zones.some((zone) => zone.medium === medium && zone.change === change);
  const lost =
    lossPoint !== null
      ? `Drawn tones under ${shareWords(lossPoint)} are lost`
      : some('lost')
        ? 'Lights are lost in places, not throughout'
        : 'No light of it is lost';
  const filled =
    fillPoint !== null
      ? `tones over ${shareWords(fillPoint)} close up.`
      : some('filled')
        ? 'darks close in places.'
        : 'no dark closes up.';
  return `${lost}; ${filled}`;
}
