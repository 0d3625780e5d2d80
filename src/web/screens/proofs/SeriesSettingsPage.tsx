import { useState } from 'react';
import { Link, useLocation } from 'wouter';
import { type SeriesTone, seriesTones } from '../../../records/proofSeries.ts';
import type { KeptSeriesSettings, ToneArea } from '../../../records/workSeries.ts';
import { saveSeriesSettings } from '../../client/pulls.ts';
import { handDrawn } from '../../managers/proofs/toneAreaDrawing.ts';
import { numberText, typedNumber } from '../../managers/typedNumber.ts';
import { Button } from '../../parts/Button.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { Field } from '../../parts/Field.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { Picks } from '../../parts/Picks.tsx';
import { darknessText } from '../../words/darknesses.ts';
import { listWords } from '../../words/listWords.ts';
import { say } from '../../words/say.ts';
import { told, toldOr } from '../../words/told.ts';
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
      .map((tone) =>
        say('{count, plural, one {one of {tone}} other {{count} of {tone}}}', {
          count: byHand[tone].length,
          tone: told(tone),
        }),
      ),
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
        stamp={<ProofsStamp work={work} here={say('Areas and tolerance')} />}
        headline={say('What the pulls are measured by')}
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
          <h2>{say('Lights, middles, darks')}</h2>
          {work.zones.length === 0 ? (
            <p>
              {say('The work has no zones yet. Draw them beside its drawing; they are chosen from here.')}
            </p>
          ) : (
            <p className="soft">
              {settings.version === 0
                ? say(
                    'Taken from what was drawn, until the first pull is read. Choose others where they tell more.',
                  )
                : say(
                    'Settled once. Where you change them, every pull is read again, so that all are read alike.',
                  )}
            </p>
          )}
          <div className="settings-zones">
            {work.zones.map(({ id, name }) => (
              <Picks<SeriesTone | ''>
                key={id}
                label={name === '' ? id : name}
                value={chosen[id] ?? ''}
                options={[...seriesTones.map((tone) => [tone, told(tone)] as const), ['', say('none')]]}
                onPick={(tone) => setChosen((now) => ({ ...now, [id]: tone }))}
              />
            ))}
          </div>
          <p>
            {handWords !== '' && <>{say('Drawn by hand: {handWords}.', { handWords })} </>}
            <Link href={`/works/${work.id}/proofs/areas`}>
              {handWords === '' ? say('Draw areas by hand instead') : say('Look at them on the stone')}
            </Link>
          </p>
          <Field
            label={say('Tolerance: the change of darkness that the artist accepts')}
            hint={say(
              '0.04 until told otherwise: our rule. How far a reading strays is another thing: that says how far it can be trusted.',
            )}
            inputMode="decimal"
            autoComplete="off"
            value={tolerance}
            trouble={tried && bad ? say('A darkness above 0 and at most 1.') : null}
            onChange={(event) => setTolerance(event.target.value)}
          />
          <p className="soft">
            {settings.reference
              ? settings.reference.pull === null
                ? say('All pulls are held against one full film, darkness {darkness}, typed.', {
                    darkness: darknessText(settings.reference.darkness),
                  })
                : say('All pulls are held against one full film, darkness {darkness}, read on pull {pull}.', {
                    darkness: darknessText(settings.reference.darkness),
                    pull: settings.reference.pull,
                  })
              : say(
                  'The first pull with a solid that is read becomes the reference that all are held against.',
                )}
          </p>
          {saving.trouble && <FailureNotice failure={saving.trouble} />}
          <div className="proofs-act">
            <Button kind="act" type="submit" disabled={saving.pending}>
              {saving.pending ? say('Saving …') : say('Save areas and tolerance')}
            </Button>
            {moved && pulls.length > 0 && (
              <p role="status">
                {say('{count, plural, one {One pull} other {All {count} pulls}} will be read again.', {
                  count: pulls.length,
                })}
              </p>
            )}
          </div>
        </form>
        <section aria-labelledby="sigma-head" className="settings-sigma">
          <h2 id="sigma-head">{say('How far a reading strays in this room')}</h2>
          <p>
            {series.noise.sigma
              ? series.noise.origin === 'typed'
                ? say(
                    '{darkness}; taken to lie within {darkness2} to {darkness3}, half to twice what was typed (our rule). {ask}',
                    {
                      darkness: darknessText(series.noise.sigma.value),
                      darkness2: darknessText(series.noise.sigma.low),
                      darkness3: darknessText(series.noise.sigma.high),
                      ask: toldOr(series.noise.ask),
                    },
                  )
                : say('{darkness}; the truth lies within {darkness2} to {darkness3}, 19 times of 20. {ask}', {
                    darkness: darknessText(series.noise.sigma.value),
                    darkness2: darknessText(series.noise.sigma.low),
                    darkness3: darknessText(series.noise.sigma.high),
                    ask: toldOr(series.noise.ask),
                  })
              : say('Not known yet. {ask}', { ask: toldOr(series.noise.ask) })}
          </p>
          <TypeNoise key={series.noise.version} work={work} noise={series.noise} />
        </section>
      </div>
    </>
  );
}
