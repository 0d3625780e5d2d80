import './SizeStep.css';
import { useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { Link, useLocation } from 'wouter';
import type { Chip, Zone } from '../../records/zone.ts';
import { addComparison } from '../client/comparisons.ts';
import { entryKey, listKey } from '../client/events.ts';
import { type ShownFailure, shownFailure } from '../client/shownFailure.ts';
import { cornerAspect } from '../managers/cornerMarks.ts';
import { draftRequest, missingPart, titleFromFile, typedMm, withPhotograph } from '../managers/draft.ts';
import { numberTrouble } from '../managers/typedNumber.ts';
import { Button } from '../parts/Button.tsx';
import { Field } from '../parts/Field.tsx';
import { MeasuredStone } from '../parts/MeasuredStone.tsx';
import { Notice } from '../parts/Notice.tsx';
import { PageHead } from '../parts/PageHead.tsx';
import { say } from '../words/say.ts';
import { ListFileLine } from './ListFileLine.tsx';
import { PhotographLine } from './PhotographLine.tsx';
import { stepOfPath } from './stepOfPath.ts';
import { draftKeeper, useDraft } from './useDraft.ts';

/** Last step: how large the work rectangle is, and whatever else sharpens the measurement. */
export function SizeStep() {
  const draft = useDraft();
  const queries = useQueryClient();
  const [, go] = useLocation();
  const [trouble, setTrouble] = useState<ShownFailure | null>(null);
  const [sending, setSending] = useState(false);
  const missing = missingPart(draft);
  const [width, height] = [typedMm(draft.width), typedMm(draft.height)];
  const request = draftRequest(draft);
  const lopsided =
    width && height && draft.stone.corners && missing !== 'stone-corners'
      ? shapeTrouble(width / height, cornerAspect(draft.stone.corners))
      : null;

  const measure = async () => {
    if (!request) return;
    setSending(true);
    setTrouble(null);
    try {
      const entry = await addComparison(request);
      queries.setQueryData(entryKey(entry.id), entry);
      void queries.invalidateQueries({ queryKey: listKey });
      draftKeeper.clear();
      go(`/comparisons/${entry.id}`);
    } catch (thrown) {
      setTrouble(shownFailure(thrown));
      setSending(false);
    }
  };
  const elsewhere = trouble && stepOfPath(trouble);

  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        void measure();
      }}
    >
      <PageHead stamp={say('Last step')} headline={say('How large is the rectangle between the marks?')} />
      <div className="size-step">
        <div className="size-fields">
          <div className="size-pair">
            <Field
              label={say('Width')}
              unit="mm"
              inputMode="decimal"
              autoComplete="off"
              value={draft.width}
              trouble={numberTrouble(draft.width, 10, 3000, { unit: 'mm' })}
              onChange={(event) => draftKeeper.change((now) => ({ ...now, width: event.target.value }))}
            />
            <span className="size-times" aria-hidden="true">
              ×
            </span>
            <Field
              label={say('Height')}
              unit="mm"
              inputMode="decimal"
              autoComplete="off"
              value={draft.height}
              trouble={numberTrouble(draft.height, 10, 3000, { unit: 'mm' })}
              onChange={(event) => draftKeeper.change((now) => ({ ...now, height: event.target.value }))}
            />
          </div>
          <p className="soft">{say('A ruler is good enough; every place is told in these millimetres.')}</p>
          {draft.stone.photograph && draft.stone.corners && missing !== 'stone-corners' && (
            <MeasuredStone
              photograph={draft.stone.photograph}
              corners={draft.stone.corners}
              widthMm={width}
              heightMm={height}
            />
          )}
          {lopsided && (
            <Notice kind="caution" title={lopsided}>
              {say('If the ruler is right, look at the marks again.')}
            </Notice>
          )}
          <Field
            label={say('Title')}
            autoComplete="off"
            maxLength={200}
            placeholder={titleFromFile(draft.stone.photograph?.fileName ?? '')}
            hint={say('Such as the stone, the work and the pull: “S-03 Low Water, pull 4”.')}
            value={draft.title}
            onChange={(event) => draftKeeper.change((now) => ({ ...now, title: event.target.value }))}
          />
        </div>
        <section aria-labelledby="size-more">
          <h2 id="size-more" className="big">
            {say('If you have them')}
          </h2>
          <ul>
            <ListFileLine<Zone>
              title={say('Zones of the drawing')}
              advice={say('zones.json: what was drawn where, and in which medium')}
              fields={['id', 'name', 'medium', 'polygonMm']}
              held={
                draft.zones &&
                say('{fileName}, {count} zones', {
                  fileName: draft.zones.fileName,
                  count: draft.zones.zones.length,
                })
              }
              onList={(list) =>
                draftKeeper.change((now) => ({
                  ...now,
                  zones: list && { fileName: list.fileName, zones: list.items },
                }))
              }
            />
            <ListFileLine<Chip>
              title={say('Grey chips')}
              advice={say(
                'chips.json: grey chips, with how much light each returns; they sharpen every tone',
              )}
              fields={['photo', 'name', 'polygonPx', 'reflectance']}
              held={
                draft.chips &&
                say('{fileName}, {count} chips', {
                  fileName: draft.chips.fileName,
                  count: draft.chips.chips.length,
                })
              }
              onList={(list) =>
                draftKeeper.change((now) => ({
                  ...now,
                  chips: list && { fileName: list.fileName, chips: list.items },
                }))
              }
            />
            {(
              [
                [
                  'stone',
                  'repeat',
                  say('The stone once more'),
                  say('set up and photographed afresh: shows the noise'),
                ],
                [
                  'proof',
                  'repeat',
                  say('The print once more'),
                  say('set up and photographed afresh: shows the noise'),
                ],
                [
                  'stone',
                  'flat',
                  say('White sheet in the stone’s light'),
                  say('blank paper in the same place: shows uneven light'),
                ],
                [
                  'proof',
                  'flat',
                  say('White sheet in the print’s light'),
                  say('blank paper in the same place: shows uneven light'),
                ],
              ] as const
            ).map(([side, place, title, advice]) => (
              <PhotographLine
                key={`${side} ${place}`}
                side={side}
                place={place}
                title={title}
                advice={advice}
                held={draft[side][place]?.fileName ?? null}
                onDrop={() => draftKeeper.change((now) => withPhotograph(now, side, place, null))}
              />
            ))}
          </ul>
        </section>
      </div>
      {trouble && (
        <div className="size-trouble">
          <Notice kind="trouble" title={trouble.message}>
            {trouble.remedy} {elsewhere && <Link href={elsewhere.address}>{elsewhere.words}</Link>}
          </Notice>
        </div>
      )}
      <div className="new-foot">
        <Button kind="act" type="submit" disabled={!request || missing !== null || sending}>
          {sending ? say('Handing it over …') : say('Measure')}
        </Button>
        {missing === 'size' && <p className="soft">{say('Width and height are needed first.')}</p>}
        {missing === 'stone-corners' && (
          <Link href="/new/stone">{say('Set the four marks on the stone first')}</Link>
        )}
        {missing === 'proof-corners' && (
          <Link href="/new/print">{say('Set the four marks on the print first')}</Link>
        )}
      </div>
    </form>
  );
}

/** Words where size and marks disagree in shape by more than a tilted camera explains. */
function shapeTrouble(sizeAspect: number, markAspect: number): string | null {
  const ratio = sizeAspect / markAspect;
  if (ratio > 0.75 && ratio < 1.34) return null;
  return ratio > 1
    ? say('The marks enclose something taller than this size.')
    : say('The marks enclose something wider than this size.');
}
