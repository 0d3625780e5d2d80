import './PullPage.css';
import { useState } from 'react';
import { Link, useLocation, useSearch } from 'wouter';
import type { PullEntry, PullPartner } from '../../../records/pullTones.ts';
import type { KeptSeriesSettings } from '../../../records/workSeries.ts';
import { putPullBy, saveSeriesSettings, tellMeasuring } from '../../client/pulls.ts';
import { isBeingRead, pullKindWords, readingTrouble, readWords } from '../../managers/proofs/pullWords.ts';
import { Button, ButtonLink } from '../../parts/Button.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { Notice } from '../../parts/Notice.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { Picks } from '../../parts/Picks.tsx';
import { say } from '../../words/say.ts';
import { sayRich } from '../../words/sayRich.ts';
import { useSaving } from '../useSaving.ts';
import { ProofsStamp } from './ProofsStamp.tsx';
import { PullBeside } from './PullBeside.tsx';
import { PullFacts } from './PullFacts.tsx';
import { PullFaults } from './PullFaults.tsx';
import { SinceLast } from './SinceLast.tsx';
import { type ProofsPageParts, useProofsChanged } from './useProofs.ts';

const partners: readonly (readonly [PullPartner, string])[] = [
  ['last', say('the pull before')],
  ['best', say('the best pull')],
  ['drawn', say('the drawn stone')],
  ['inked', say('the inked stone')],
];

/** One pull beside the stone or another pull, and all that is known of it. */
export function PullPage({ work, proofs, pull }: ProofsPageParts & { pull: PullEntry }) {
  const [, go] = useLocation();
  const changed = useProofsChanged(work.id);
  const saving = useSaving<PullEntry | KeptSeriesSettings>();
  const first = proofs.pulls[0]?.id === pull.id;
  const asked = new URLSearchParams(useSearch()).get('beside');
  const [partner, setPartner] = useState<PullPartner>(
    partners.find(([one]) => one === asked)?.[0] ?? (first ? 'drawn' : 'last'),
  );
  const { settings, series } = proofs;
  const read = series.pulls.find(({ id }) => id === pull.id);
  const trouble = readingTrouble(pull);
  const at = `/works/${work.id}/proofs`;
  const run = async (task: () => Promise<PullEntry | KeptSeriesSettings>, then?: () => void) => {
    if (await saving.send(task)) {
      await changed();
      then?.();
    }
  };
  const around = neighbours(proofs.pulls, pull);
  return (
    <>
      <PageHead
        stamp={<ProofsStamp work={work} here={pullKindWords[pull.kind]} />}
        headline={say('Pull {number}, {read}', {
          number: pull.number,
          read: read ? readWords(read) : say('not read'),
        })}
      >
        <p className="pull-around">
          {around.before && (
            <Link href={`${at}/${around.before.id}`}>
              {say('Pull {number}', { number: around.before.number })}
            </Link>
          )}
          {around.after && (
            <Link href={`${at}/${around.after.id}`}>
              {say('Pull {number}', { number: around.after.number })}
            </Link>
          )}
        </p>
      </PageHead>
      <div className="pull-page">
        <div className="pull-beside">
          {isBeingRead(pull) && (
            <p>
              {sayRich('It is being read. <link>See how far it is</link>', {
                link: (words) => <Link href={`${at}/${pull.id}/answer`}>{words}</Link>,
              })}
            </p>
          )}
          {trouble && (
            <Notice kind="caution" title={trouble}>
              <Button
                kind="quiet"
                disabled={saving.pending}
                onClick={() =>
                  void run(
                    () => tellMeasuring(work.id, pull.id, 'measure'),
                    () => go(`${at}/${pull.id}/answer`),
                  )
                }
              >
                {say('Measure it again')}
              </Button>
            </Notice>
          )}
          <Picks label={say('Beside')} value={partner} options={partners} onPick={setPartner} />
          <PullBeside work={work} proofs={proofs} pull={pull} partner={partner} />
        </div>
        <div className="pull-side">
          <div className="pull-acts">
            <ButtonLink kind="act" href={`${at}/${pull.id}/again`}>
              {say('Photograph it again')}
            </ButtonLink>
          </div>
          <PullFacts key={pull.version} work={work} pull={pull} />
          <PullFaults work={work} pull={pull} />
          <SinceLast work={work} pull={pull} />
          {saving.trouble && <FailureNotice failure={saving.trouble} />}
          <div className="pull-more">
            {pull.photographs.length > 0 && (
              <ButtonLink href={`${at}/${pull.id}/marks`}>{say('Corners and grey chips')}</ButtonLink>
            )}
            {settings.best === pull.number ? (
              <p>{say('It is held to be the best so far.')}</p>
            ) : (
              <Button
                disabled={saving.pending}
                onClick={() =>
                  void run(() => saveSeriesSettings(work.id, settings.version, { best: pull.number }))
                }
              >
                {say('Hold it to be the best so far')}
              </Button>
            )}
            <Button
              kind="quiet"
              disabled={saving.pending}
              onClick={() =>
                void run(
                  () => putPullBy(work.id, pull.id, pull.version, true),
                  () => go(`${at}?aside=${pull.id}`),
                )
              }
            >
              {say('Lay it aside')}
            </Button>
          </div>
        </div>
      </div>
    </>
  );
}

function neighbours(pulls: readonly PullEntry[], pull: PullEntry) {
  const at = pulls.findIndex(({ id }) => id === pull.id);
  return { before: pulls[at - 1] ?? null, after: pulls[at + 1] ?? null };
}
