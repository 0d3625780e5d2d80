import { useState } from 'react';
import { Link } from 'wouter';
import type { ReportBlock, ReportFigure, ReportGaps, SetReport } from '../../../records/setReport.ts';
import { notRecorded } from '../../../studio/papers/paperWords.ts';
import { sourceWords } from '../../../studio/papers/report/keptWords.ts';
import { figureText } from '../../../studio/papers/report/reportWords.ts';
import { reportInWords } from '../../../words/reportInWords.ts';
import { comparisonFile } from '../../client/comparisons.ts';
import { reportHolds } from '../../managers/papers/reportHolds.ts';
import { Fold } from '../../parts/Fold.tsx';
import { Notice } from '../../parts/Notice.tsx';
import { say } from '../../words/say.ts';
import { toldText } from '../../words/toldText.ts';

/** A report as it would be handed out now, with where each figure is kept. */
export function ReportPreview({ report: set }: { report: SetReport }) {
  const report = reportInWords(set, (text) => text);
  // Unfolded, a report is as long as twenty phones.
  const [roomy] = useState(() => window.matchMedia('(min-width: 1021px)').matches);
  const figures = new Map(report.figures.map((figure) => [figure.name, figure]));
  return (
    <article className="report-preview" aria-label={say('The report as it stands')}>
      {report.unknownFigures.length > 0 && (
        <Notice kind="caution" title={say('A figure is missing:')}>
          {say('{names}. No record gives it any more: take it out of the words, or put another there.', {
            names: report.unknownFigures.join(', '),
          })}
        </Notice>
      )}
      {report.parts.length === 0 && (
        <p>{say('Nothing stands in it yet. Choose the works that it tells of, write, and save.')}</p>
      )}
      {report.parts.map(({ name, blocks }) => (
        <Fold key={name} title={<h2>{name}</h2>} holds={reportHolds(blocks)} open={roomy}>
          {blocks.map((block, index) => (
            // blocks have no other name than their place
            // biome-ignore lint/suspicious/noArrayIndexKey: see above
            <Block key={index} block={block} figures={figures} />
          ))}
        </Fold>
      ))}
      {report.parts.length > 0 && (
        <Fold title={say('Where each figure comes from')}>
          <dl className="figure-names">
            {report.figures.map((figure) => (
              <div key={figure.name}>
                <dt>
                  {figure.label}: {toldText(figureText(figure))}
                </dt>
                <dd>{toldText(sourceWords(figure, set.figures))}</dd>
              </div>
            ))}
          </dl>
        </Fold>
      )}
    </article>
  );
}

function Block({ block, figures }: { block: ReportBlock; figures: ReadonlyMap<string, ReportFigure> }) {
  const told = (name: string) => {
    const figure = figures.get(name);
    return toldText(figure ? figureText(figure) : notRecorded);
  };
  const source = (name: string) => {
    const figure = figures.get(name);
    return figure ? toldText(sourceWords(figure, [...figures.values()])) : '';
  };
  switch (block.kind) {
    case 'words':
      return block.paragraphs.map((runs) => (
        <p key={runs.map(({ text }) => text).join('')}>
          {runs.map(({ text, figure }, index) =>
            figure === null ? (
              text
            ) : (
              // biome-ignore lint/suspicious/noArrayIndexKey: the same words always stand in the same order
              <b key={index} title={source(figure)}>
                {text}
              </b>
            ),
          )}
        </p>
      ));
    case 'figures':
      return (
        <dl className="report-lines">
          {block.names
            .flatMap((name) => figures.get(name) ?? [])
            .map((figure) => (
              <div key={figure.name}>
                <dt>{figure.label}</dt>
                <dd>{toldText(figureText(figure))}</dd>
              </div>
            ))}
        </dl>
      );
    case 'lines':
      return (
        <>
          <h3>{block.name}</h3>
          <dl className="report-lines">
            {block.lines.map(({ label, value }) => (
              <div key={label}>
                <dt>{label}</dt>
                <dd className={value === null ? 'soft' : undefined}>{value ?? toldText(notRecorded)}</dd>
              </div>
            ))}
          </dl>
        </>
      );
    case 'comparison':
      return (
        <>
          <h3>{block.title}</h3>
          <p>{block.finding ?? toldText(notRecorded)}</p>
          {block.finding !== null && (
            <div className="report-pair">
              <img src={comparisonFile(block.id, 'stone.jpg', 480)} alt={say('The stone')} />
              <img
                src={comparisonFile(block.id, 'proof.jpg', 480)}
                alt={say('The print, turned to lie as the stone does')}
              />
            </div>
          )}
        </>
      );
    case 'balance':
      return (
        <>
          <h3>{say('By hazard class')}</h3>
          <dl className="report-lines">
            {block.rows.map(({ hazard, words, before, now, less }) => (
              <div key={hazard}>
                <dt>{words}</dt>
                <dd>
                  {say('before {told}, now {told2}, less by {told3}', {
                    told: told(before),
                    told2: told(now),
                    told3: told(less),
                  })}
                </dd>
              </div>
            ))}
          </dl>
          {block.why.map((why) => (
            <p key={why} className="soft">
              {why}.
            </p>
          ))}
        </>
      );
    case 'gaps':
      return <GapLines groups={block.groups} />;
    default:
      return block satisfies never;
  }
}

/** What nobody recorded, each thing once, with the page that takes it. */
function GapLines({ groups }: { groups: readonly ReportGaps[] }) {
  return (
    <>
      <p>
        {say(
          'What a reader may ask for and nobody wrote down. What you still remember of a work goes in at its bench, under “I forgot”, and is told as remembered.',
        )}
      </p>
      <dl className="report-lines">
        {groups.map(({ record, id, name, items }) => (
          <div key={`${record} ${id}`}>
            <dt>{record === 'report' ? name : <Link href={pageOf[record] + id}>{name}</Link>}</dt>
            <dd>{items.join('; ')}</dd>
          </div>
        ))}
      </dl>
    </>
  );
}

const pageOf = { work: '/works/', comparison: '/comparisons/', edition: '/editions/' } as const;
