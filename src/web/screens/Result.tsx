import './Result.css';
import { useRef, useState } from 'react';
import type { ComparisonRecord } from '../../records/comparison.ts';
import type { ComparisonEntry } from '../../records/comparisonEntry.ts';
import { changeWord } from '../../studio/proofs/changeWords.ts';
import { comparisonFile } from '../client/comparisons.ts';
import { mapKinds } from '../look/mapInk.ts';
import { ButtonFile, ButtonLink } from '../parts/Button.tsx';
import { dayWords } from '../parts/entryWords.ts';
import { Figure } from '../parts/Figure.tsx';
import { shareFigure } from '../parts/figures.ts';
import { HatchSwatch } from '../parts/HatchSwatch.tsx';
import { LiftPicture } from '../parts/LiftPicture.tsx';
import { MapLegend, type ShownMarks } from '../parts/MapLegend.tsx';
import { PageHead } from '../parts/PageHead.tsx';
import { ZoneTable } from '../parts/ZoneTable.tsx';
import { say } from '../words/say.ts';
import { told } from '../words/told.ts';
import { DeleteComparison } from './DeleteComparison.tsx';
import { DownloadList } from './DownloadList.tsx';
import { MeasuredHow } from './MeasuredHow.tsx';
import { ToneSection } from './ToneSection.tsx';
import { WarningList } from './WarningList.tsx';

/** A measured comparison: the finding, the print on its stone, and the numbers with what they stand on. */
export function Result({ entry, record }: { entry: ComparisonEntry; record: ComparisonRecord }) {
  const [shown, setShown] = useState<ShownMarks>({ lost: true, filled: true, scum: true, zones: true });
  const [picked, setPicked] = useState<string | null>(null);
  const picture = useRef<HTMLDivElement>(null);
  const { areas } = record;
  const pick = (id: string | null) => {
    setPicked(id);
    // On a narrow page the picture is above the list; what was picked must be seen.
    if (id && picture.current && picture.current.getBoundingClientRect().top < -80)
      picture.current.scrollIntoView({ block: 'start' });
  };
  return (
    <div
      className="result"
      style={{ '--aspect': entry.request.sizeMm[0] / entry.request.sizeMm[1] } as React.CSSProperties}
    >
      <div className="result-head">
        <PageHead
          stamp={`${entry.title} · ${entry.sample ? say('sample from Saltreach, an invented studio') : dayWords(entry.createdAt)}`}
          headline={told(entry.finding ?? '') || say('Measured')}
        >
          {entry.files.includes('sheet.pdf') && (
            <ButtonFile kind="act" href={comparisonFile(entry.id, 'sheet.pdf')}>
              {say('Sheet to pin up (PDF)')}
            </ButtonFile>
          )}
        </PageHead>
      </div>
      <div className="result-table">
        <div className="result-picture" ref={picture}>
          <LiftPicture
            id={entry.id}
            sizeMm={entry.request.sizeMm}
            zones={entry.request.zones}
            partial={entry.files.includes('sheet.png')}
            shown={shown}
            picked={picked}
            onPick={pick}
          />
        </div>
        <div className="result-legend">
          <MapLegend
            shown={shown}
            zoned={entry.request.zones.length > 0}
            onShown={(mark, show) => setShown((now) => ({ ...now, [mark]: show }))}
          />
        </div>
      </div>
      <div className="result-sheet">
        <section aria-labelledby="result-areas">
          <h2 id="result-areas" className="stamp">
            {areas.covered !== null && areas.covered < 0.995
              ? say('Share of what the sheet covered')
              : say('Share of the whole rectangle')}
          </h2>
          <div className="result-figures">
            {mapKinds.map((kind) => {
              const share = areas[`${kind}Fraction`];
              return (
                <Figure key={kind} {...shareFigure(share)}>
                  <HatchSwatch kind={kind} />{' '}
                  {share === null
                    ? say('{kind}: not known', { kind: told(changeWord(kind)) })
                    : told(changeWord(kind))}
                </Figure>
              );
            })}
          </div>
          <p className="soft result-shares-note">
            {say(
              'By how much these shares may be off is not known. 0 % says that no such place was found, not that there is none.',
            )}
          </p>
          <p className="result-why">
            <ButtonLink href={`/comparisons/${entry.id}/suspects`}>
              {say('What may have caused it')}
            </ButtonLink>
          </p>
        </section>
        <ToneSection record={record} />
        {record.zones.length > 0 && (
          <section aria-labelledby="result-zones">
            <h2 id="result-zones" className="stamp">
              {say('Zones: coverage in per cent')}
            </h2>
            <ZoneTable zones={record.zones} picked={picked} onPick={pick} />
            <p className="soft result-plus-minus">
              {say('The truth lies within ±, 19 times of 20. Press a zone to see it on the stone.')}
            </p>
          </section>
        )}
        <WarningList warnings={record.warnings} />
        <div>
          <MeasuredHow record={record} />
          <DownloadList entry={entry} />
        </div>
        {!entry.sample && <DeleteComparison id={entry.id} title={entry.title} />}
      </div>
    </div>
  );
}
