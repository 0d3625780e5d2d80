import { useState } from 'react';
import { Link } from 'wouter';
import type { WorkEntry } from '../../../records/workEntry.ts';
import type { RoomNoise, WorkSeries } from '../../../records/workSeries.ts';
import { darknessWords } from '../../../studio/proofs/seriesWords.ts';
import { typeNoise } from '../../client/series.ts';
import { typedNumber } from '../../managers/typedNumber.ts';
import { Button } from '../../parts/Button.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { Field } from '../../parts/Field.tsx';
import { useSaving } from '../useSaving.ts';
import { useProofsChanged } from './useProofs.ts';

/** σ of this room with where it comes from, beside the artist's tolerance: two different things. */
export function NoiseLine({ work, series }: { work: WorkEntry; series: WorkSeries }) {
  const { sigma, origin, ask } = series.noise;
  if (series.pulls.findLast(({ how }) => how !== 'unread')?.how === 'eye')
    return (
      <p className="proof-noise">
        <b>σ {series.sigma === null ? 'not known' : darknessWords(series.sigma)}</b>: told by eye, our rule.
        So rough a reading can hardly tell steady from growing: photograph the pulls, or print{' '}
        <a href="/api/hatch-scale.pdf">the hatch scale</a> and look again.{' '}
        <Link href={`/works/${work.id}/proofs/settings`}>Areas, tolerance, σ</Link>
      </p>
    );
  return (
    <p className="proof-noise">
      {sigma ? (
        <>
          <b>σ {darknessWords(sigma.value)}</b> ({darknessWords(sigma.low)} to {darknessWords(sigma.high)}),{' '}
          {origin === 'typed' ? 'typed' : 'measured here'};
        </>
      ) : (
        <>
          <b>σ of one reading is not known here yet.</b> {ask}
        </>
      )}{' '}
      <b>tolerance {darknessWords(series.tolerance)}</b>.{' '}
      <Link href={`/works/${work.id}/proofs/settings`}>Areas, tolerance, σ</Link>
    </p>
  );
}

/** What there is to mind about a σ that is known. */
export function noiseWords({ noise, pulls }: WorkSeries): readonly string[] {
  const { sigma, origin, sheets, ask } = noise;
  if (!sigma || pulls.findLast(({ how }) => how !== 'unread')?.how === 'eye') return [];
  const from =
    origin === 'typed'
      ? 'σ was typed, not measured here.'
      : `σ is that of one reading, set up again; from ${sheets === 1 ? 'one sheet' : `${sheets} sheets`} photographed twice.`;
  return [ask === null ? from : `${from} ${ask}`];
}

/** States σ by hand, until there are sheets that were photographed twice. */
export function TypeNoise({ work, noise }: { work: WorkEntry; noise: RoomNoise }) {
  const changed = useProofsChanged(work.id);
  const saving = useSaving<RoomNoise>();
  const [text, setText] = useState(noise.typed === null ? '' : String(noise.typed));
  const [tried, setTried] = useState(false);
  const value = typedNumber(text);
  const bad = value !== null && !(value > 0 && value <= 1);
  const save = async () => {
    setTried(true);
    if (bad) return;
    if (await saving.send(() => typeNoise(noise.version, value))) await changed();
  };
  return (
    <form
      className="proofs-form"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        void save();
      }}
    >
      <Field
        label="σ of one reading, if you know it"
        hint="A darkness such as 0.01. Sheets photographed twice in this room take its place. Empty: not stated."
        inputMode="decimal"
        autoComplete="off"
        value={text}
        trouble={tried && bad ? 'A darkness above 0 and at most 1.' : null}
        onChange={(event) => setText(event.target.value)}
      />
      {saving.trouble && <FailureNotice failure={saving.trouble} />}
      <Button type="submit" disabled={saving.pending}>
        {saving.pending ? 'Saving …' : 'Save σ'}
      </Button>
    </form>
  );
}
