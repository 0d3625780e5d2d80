import { useState } from 'react';
import { Link } from 'wouter';
import type { WorkEntry } from '../../../records/workEntry.ts';
import type { RoomNoise, WorkSeries } from '../../../records/workSeries.ts';
import { inPageWords } from '../../client/inPageWords.ts';
import { typeNoise } from '../../client/series.ts';
import { typedNumber } from '../../managers/typedNumber.ts';
import { Button } from '../../parts/Button.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { Field } from '../../parts/Field.tsx';
import { darknessText } from '../../words/darknesses.ts';
import { say } from '../../words/say.ts';
import { sayRich } from '../../words/sayRich.ts';
import { useSaving } from '../useSaving.ts';
import { useProofsChanged } from './useProofs.ts';

/** How far a reading strays in this room (σ) and where that comes from, beside the artist's tolerance: two different things. */
export function NoiseLine({ work, series }: { work: WorkEntry; series: WorkSeries }) {
  const { sigma, origin, ask } = series.noise;
  if (series.pulls.findLast(({ how }) => how !== 'unread')?.how === 'eye')
    return (
      <p className="proof-noise">
        {sayRich(
          '<b>A tone told by eye strays by {darkness}</b>: our rule. So rough a look can hardly tell steady from growing: photograph the pulls, or print <a>the hatch scale</a> and look again. <link>Areas and tolerance</link>',
          {
            b: (words) => <b>{words}</b>,
            darkness: series.sigma === null ? say('not known') : darknessText(series.sigma),
            a: (words) => <a href={inPageWords('/api/hatch-scale.pdf')}>{words}</a>,
            link: (words) => <Link href={`/works/${work.id}/proofs/settings`}>{words}</Link>,
          },
        )}
      </p>
    );
  return (
    <p className="proof-noise">
      {sigma ? (
        origin === 'typed' ? (
          sayRich('<b>A reading strays by {darkness}</b> ({darkness2} to {darkness3}), as typed;', {
            b: (words) => <b>{words}</b>,
            darkness: darknessText(sigma.value),
            darkness2: darknessText(sigma.low),
            darkness3: darknessText(sigma.high),
          })
        ) : (
          sayRich('<b>A reading strays by {darkness}</b> ({darkness2} to {darkness3}), as measured here;', {
            b: (words) => <b>{words}</b>,
            darkness: darknessText(sigma.value),
            darkness2: darknessText(sigma.low),
            darkness3: darknessText(sigma.high),
          })
        )
      ) : (
        <>
          <b>{say('How far a reading strays is not known here yet.')}</b> {ask}
        </>
      )}{' '}
      <b>{say('tolerance {darkness}', { darkness: darknessText(series.tolerance) })}</b>.{' '}
      <Link href={`/works/${work.id}/proofs/settings`}>{say('Areas and tolerance')}</Link>
    </p>
  );
}

/** What there is to mind about a σ that is known. */
export function noiseWords({ noise, pulls }: WorkSeries): readonly string[] {
  const { sigma, origin, sheets, ask } = noise;
  if (!sigma || pulls.findLast(({ how }) => how !== 'unread')?.how === 'eye') return [];
  const from =
    origin === 'typed'
      ? say('How far a reading strays was typed, not measured here.')
      : say(
          'So far strays one reading, the sheet set down afresh; from {sheets, plural, one {one sheet} other {{sheets} sheets}} photographed twice.',
          { sheets },
        );
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
        label={say('How far one reading strays, if you know it')}
        hint={say(
          'A darkness such as 0.01. Two of three readings stray less (the standard deviation, σ). Sheets photographed twice in this room take its place. Empty: not stated.',
        )}
        inputMode="decimal"
        autoComplete="off"
        value={text}
        trouble={tried && bad ? say('A darkness above 0 and at most 1.') : null}
        onChange={(event) => setText(event.target.value)}
      />
      {saving.trouble && <FailureNotice failure={saving.trouble} />}
      <Button type="submit" disabled={saving.pending}>
        {saving.pending ? say('Saving …') : say('Save how far it strays')}
      </Button>
    </form>
  );
}
