import type { WorkZone } from '../../../records/work.ts';
import { NumberField } from '../../parts/NumberField.tsx';
import { say } from '../../words/say.ts';

/** How much of a zone is covered, in per cent: judged by eye, or measured from a photograph. */
export function ToneFields({
  zone: { tone },
  onTone,
}: {
  zone: WorkZone;
  onTone: (tone: WorkZone['tone']) => void;
}) {
  const percent = (share: number | undefined) => (share === undefined ? null : Math.round(share * 1000) / 10);
  const set = (mean: number | null, darkest: number | null) => {
    onTone(
      mean === null
        ? null
        : { mean: mean / 100, darkest: Math.max(darkest ?? mean, mean) / 100, basis: 'typed' },
    );
  };
  const mean = percent(tone?.mean);
  const darkest = percent(tone?.darkest);
  return (
    <fieldset>
      <legend>
        {say('Tone')}
        {tone && (
          <span className="soft">, {tone.basis === 'measured' ? say('measured') : say('judged by eye')}</span>
        )}
      </legend>
      <div className="zone-fields-pair">
        <NumberField
          label={say('Covered on average')}
          unit="%"
          value={mean}
          least={0}
          most={100}
          needed={false}
          placeholder={say('not known')}
          onValue={(value) => set(value, darkest)}
        />
        <NumberField
          label={say('At its darkest')}
          unit="%"
          value={darkest}
          least={mean ?? 0}
          most={100}
          needed={false}
          placeholder={say('not known')}
          onValue={(value) => set(mean ?? value, value)}
        />
      </div>
    </fieldset>
  );
}
