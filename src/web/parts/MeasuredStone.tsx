import './MeasuredStone.css';
import type { PhotographEntry } from '../../records/comparisonEntry.ts';
import type { Corners } from '../../science/geometry/point.ts';
import { lengthWords } from '../words/lengths.ts';
import { say } from '../words/say.ts';
import { StraightenedPhotograph } from './StraightenedPhotograph.tsx';

/** What lies between the marks on the stone, with the two lengths along its sides; unknown ones are left open. */
export function MeasuredStone({
  photograph,
  corners,
  widthMm,
  heightMm,
}: {
  photograph: PhotographEntry;
  corners: Corners;
  widthMm: number | null;
  heightMm: number | null;
}) {
  return (
    <div className="measured-stone">
      <p className="measured-across">
        <b>1</b> <span>{widthMm === null ? say('width') : lengthWords(widthMm, 1)}</span> <b>2</b>
      </p>
      <p className="measured-down">
        <span>{heightMm === null ? say('height') : lengthWords(heightMm, 1)}</span> <b>4</b>
      </p>
      <StraightenedPhotograph
        photograph={photograph}
        corners={corners}
        {...(widthMm !== null && heightMm !== null && { aspect: widthMm / heightMm })}
        longestPx={250}
        label={say('The stone between the marks')}
        shownLabel={false}
      />
    </div>
  );
}
