import { useState } from 'react';
import { Link, useLocation } from 'wouter';
import { type SeriesTone, seriesTones } from '../../../records/proofSeries.ts';
import type { KeptSeriesSettings, ToneArea } from '../../../records/workSeries.ts';
import { darknessWords, listWords } from '../../../studio/proofs/seriesWords.ts';
import { saveSeriesSettings } from '../../client/pulls.ts';
import { handDrawn } from '../../managers/proofs/toneAreaDrawing.ts';
import { numberText, typedNumber } from '../../managers/typedNumber.ts';
import { Button } from '../../parts/Button.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { Field } from '../../parts/Field.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { Picks } from '../../parts/Picks.tsx';
import { useSaving } from '../useSaving.ts';
import { TypeNoise } from './NoiseLine.tsx';
import { ProofsStamp } from './ProofsStamp.tsx';
import { type ProofsPageParts, useProofsChanged } from './useProofs.ts';

type Chosen = Readonly<Record<string, SeriesTone | ''>>;

/** What is settled once for the pulls of a work: which zones stand for which tone, and what change the artist accepts. */
export function SeriesSettingsPage({ work, proofs: { settings, series, pulls } }: ProofsPageParts) {
  const [, go] = useLocation();
  const changed = useProofsChanged(work.id);
  const saving = useSaving<KeptSeriesSettings>();
  const kept: Chosen = Object.fromEntries(
    work.zones.map(({ id }) => [
      id,
      seriesTones.find((tone) => settings.areas[tone].zones.includes(id)) ?? '',
    ]),
  );
  const [chosen, setChosen] = useState(kept);
  const [tolerance, setTolerance] = useState(numberText(settings.tolerance));
  const [tried, setTried] = useState(false);
  const accepted = typedNumber(tolerance);
  const bad = accepted === null || !(accepted > 0 && accepted <= 1);
  const moved = work.zones.some(({ id }) => chosen[id] !== kept[id]);
  const byHand = Object.fromEntries(
    seriesTones.map((tone) => [tone, handDrawn(settings.areas[tone], work.zones)]),
  ) as Record<SeriesTone, ToneArea['polygonsMm']>;
  const handWords = listWords(
    seriesTones
      .filter((tone) => byHand[tone].length > 0)
      .map((tone) => (byHand[tone].length === 1 ? `one of ${tone}` : `${byHand[tone].length} of ${tone}`)),
  );
  const areaOf = (tone: SeriesTone): ToneArea => {
    const own = work.zones.filter(({ id }) => chosen[id] === tone);
    return {
      origin: 'chosen',
      zones: own.map(({ id }) => id),
      polygonsMm: [...own.map(({ polygonMm }) => polygonMm), ...byHand[tone]],
    };
  };
  const save = async () => {
    setTried(true);
    if (bad) return;
    const areas = { lights: areaOf('lights'), middles: areaOf('middles'), darks: areaOf('darks') };
    const changes = { tolerance: accepted, ...(moved && { areas }) };
    if (!(await saving.send(() => saveSeriesSettings(work.id, settings.version, changes)))) return;
    await changed();
    go(`/works/${work.id}/proofs`);
  };
  return (
    <>
      <PageHead
        stamp={<ProofsStamp work={work} here="Areas and tolerance" />}
        headline="What the pulls are measured by"
      />
      <div className="proofs-body settings-body">
        <form
          className="proofs-form"
          noValidate
          onSubmit={(event) => {
            event.preventDefault();
            void save();
          }}
        >
          <h2>Lights, middles, darks</h2>
          {work.zones.length === 0 ? (
            <p>The work has no zones yet. Draw them beside its drawing; they are chosen from here.</p>
          ) : (
            <p className="soft">
              {settings.version === 0
                ? 'Taken from what was drawn, until the first pull is read. Choose others where they tell more.'
                : 'Settled once. Where you change them, every pull is read again, so that all are read alike.'}
            </p>
          )}
          <div className="settings-zones">
            {work.zones.map(({ id, name }) => (
              <Picks<SeriesTone | ''>
                key={id}
                label={name === '' ? id : name}
                value={chosen[id] ?? ''}
                options={[...seriesTones.map((tone) => [tone, tone] as const), ['', 'none']]}
                onPick={(tone) => setChosen((now) => ({ ...now, [id]: tone }))}
              />
            ))}
          </div>
          <p>
            {handWords !== '' && <>Drawn by hand: {handWords}. </>}
            <Link href={`/works/${work.id}/proofs/areas`}>
              {handWords === '' ? 'Draw areas by hand instead' : 'Look at them on the stone'}
            </Link>
          </p>
          <Field
            label="Tolerance: the change of darkness that the artist accepts"
            hint="0.04 until told otherwise: our rule. It is not σ: that says how far a reading can be trusted."
            inputMode="decimal"
            autoComplete="off"
            value={tolerance}
            trouble={tried && bad ? 'A darkness above 0 and at most 1.' : null}
            onChange={(event) => setTolerance(event.target.value)}
          />
          <p className="soft">
            {settings.reference
              ? `All pulls are held against one full film, darkness ${darknessWords(settings.reference.darkness)}, ${settings.reference.pull === null ? 'typed' : `read on pull ${settings.reference.pull}`}.`
              : 'The first pull with a solid that is read becomes the reference that all are held against.'}
          </p>
          {saving.trouble && <FailureNotice failure={saving.trouble} />}
          <div className="proofs-act">
            <Button kind="act" type="submit" disabled={saving.pending}>
              {saving.pending ? 'Saving …' : 'Save areas and tolerance'}
            </Button>
            {moved && pulls.length > 0 && (
              <p role="status">
                {pulls.length === 1 ? 'One pull' : `All ${pulls.length} pulls`} will be read again.
              </p>
            )}
          </div>
        </form>
        <section aria-labelledby="sigma-head" className="settings-sigma">
          <h2 id="sigma-head">σ of this room</h2>
          <p>
            {series.noise.sigma
              ? `${darknessWords(series.noise.sigma.value)}, ${darknessWords(series.noise.sigma.low)} to ${darknessWords(series.noise.sigma.high)} (95 % interval${series.noise.origin === 'typed' ? ': half to twice what was typed, our rule' : ''}).`
              : 'Not known yet.'}{' '}
            {series.noise.ask}
          </p>
          <TypeNoise key={series.noise.version} work={work} noise={series.noise} />
        </section>
      </div>
    </>
  );
}
