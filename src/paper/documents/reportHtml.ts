import type {
  HazardBalance,
  ReportBlock,
  ReportFigure,
  ReportRun,
  SetReport,
} from '../../records/setReport.ts';
import { isoDayWords } from '../../science/calendar/dateWords.ts';
import { notRecorded } from '../../studio/papers/paperWords.ts';
import { keptWords, sourceWords } from '../../studio/papers/report/keptWords.ts';
import {
  figureSources,
  figureText,
  filledFrom,
  gapsLead,
  missingFigures,
} from '../../studio/papers/report/reportWords.ts';
import { asWritten } from '../../words/asWritten.ts';
import { svgInWords, textInWords } from '../../words/inWords.ts';
import { reportInWords } from '../../words/reportInWords.ts';
import { wordsInUse } from '../../words/wordsInUse.ts';
import { svgText } from '../charts/chartInk.ts';
import { toneCurveSvg } from '../charts/toneCurve.ts';
import { toneLadderSvg } from '../charts/toneLadder.ts';
import type { PicturesOfReport, ReportPictures } from './reportPictures.ts';

const text = svgText;

/** A text of the sheet's own, in its words. */
function told(words: string): string {
  return text(textInWords(words));
}

/**
 * A report as one self-contained HTML file: pictures and drawings inside, nothing loaded, no script. Every figure leads to
 * its line at the end, which says where it is kept. Equal input gives equal text.
 */
export function reportHtml(kept: SetReport, pictures: PicturesOfReport): string {
  const report = reportInWords(kept, (words) => words);
  const figures = new Map(report.figures.map((figure) => [figure.name, figure]));
  const parts = report.parts.map(
    ({ name, blocks }) =>
      `<section><h2>${text(name)}</h2>${blocks.map((block) => blockHtml(block, figures, pictures)).join('')}</section>`,
  );
  const unknown =
    report.unknownFigures.length === 0
      ? ''
      : `<p class="mind">${told(missingFigures(report.unknownFigures))}</p>`;
  return (
    `<!doctype html><html lang="${wordsInUse().language}"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1">` +
    `<title>${text(report.title)}</title><style>${look}</style></head><body>` +
    `<header><p class="stamp">${told(report.reader === '' ? 'Report' : `Report for ${asWritten(report.reader)}`)}</p>` +
    `<h1>${text(report.title)}</h1><p class="stamp">${text(report.period)} · ${told(`set on ${isoDayWords(report.setAt)}`)}</p></header>` +
    `<main>${unknown}${parts.join('')}${sourcesHtml(report.figures)}</main>` +
    `<footer>${told(filledFrom(report.setAt))} ${text(report.engine)}</footer></body></html>`
  );
}

function blockHtml(
  block: ReportBlock,
  figures: ReadonlyMap<string, ReportFigure>,
  pictures: PicturesOfReport,
): string {
  switch (block.kind) {
    case 'words':
      return block.paragraphs.map((runs) => `<p>${runs.map(runHtml).join('')}</p>`).join('');
    case 'figures':
      return `<table>${block.names
        .flatMap((name) => figures.get(name) ?? [])
        .map(
          (figure) =>
            `<tr><th scope="row">${text(figure.label)}</th><td class="number">${linked(figure.name, textInWords(figureText(figure)))}</td></tr>`,
        )
        .join('')}</table>`;
    case 'lines':
      return `<h3>${text(block.name)}</h3><table>${block.lines
        .map(({ label, value, from, figure }) => {
          const shown = value === null ? `<i>${told(notRecorded)}</i>` : text(value);
          const kept = text(from.map(keptWords).join('; '));
          const cell =
            figure === null ? `<td title="${kept}">${shown}</td>` : `<td>${linked(figure, value ?? '')}</td>`;
          return `<tr><th scope="row">${text(label)}</th>${cell}</tr>`;
        })
        .join('')}</table>`;
    case 'comparison':
      return comparisonHtml(block, pictures[block.id]);
    case 'balance':
      return balanceHtml(block.rows, block.why, figures);
    case 'gaps':
      return `<p>${told(gapsLead)}</p><table>${block.groups
        .map(
          ({ name, items }) =>
            `<tr><th scope="row">${text(name)}</th><td>${text(items.join('; '))}</td></tr>`,
        )
        .join('')}</table>`;
    default:
      return block satisfies never;
  }
}

function runHtml(run: ReportRun): string {
  return run.figure === null ? text(run.text).replaceAll('\n', '<br>') : linked(run.figure, run.text);
}

function linked(figure: string, words: string): string {
  return `<a class="figure" data-figure="${text(figure)}" href="#${anchor(figure)}">${text(words)}</a>`;
}

function anchor(figure: string): string {
  return `figure-${figure.replace(/[^a-z0-9]+/gi, '-')}`;
}

function comparisonHtml(
  { id, title, finding }: { readonly id: string; readonly title: string; readonly finding: string | null },
  shown: ReportPictures | undefined,
): string {
  const pair = [
    [told('The stone'), shown?.stone],
    [told('The print, turned to lie as the stone does'), shown?.proof],
  ] as const;
  const strip = pair
    .map(([name, bytes]) =>
      bytes == null
        ? ''
        : `<figure><img alt="${name}" src="data:image/jpeg;base64,${Buffer.from(bytes).toString('base64')}"><figcaption>${name}</figcaption></figure>`,
    )
    .join('');
  const charts =
    shown?.record == null
      ? ''
      : `<div class="chart">${svgInWords(toneLadderSvg(shown.record, { idPrefix: anchor(id) }))}</div><div class="chart">${svgInWords(toneCurveSvg(shown.record))}</div>`;
  return `<h3>${text(title)}</h3><p data-record="comparison ${text(id)}">${finding === null ? `<i>${told(notRecorded)}</i>` : text(finding)}</p><div class="pair">${strip}</div>${charts}`;
}

function balanceHtml(
  rows: readonly HazardBalance[],
  why: readonly string[],
  figures: ReadonlyMap<string, ReportFigure>,
): string {
  const cell = (name: string) => {
    const figure = figures.get(name);
    return `<td class="number">${figure ? linked(name, textInWords(figureText(figure))) : told(notRecorded)}</td>`;
  };
  const lines = rows.map(
    ({ words, before, now, less }) =>
      `<tr><th scope="row">${text(words)}</th>${cell(before)}${cell(now)}${cell(less)}</tr>`,
  );
  const head = `<tr><td></td>${['before', 'now', 'less by'].map((name) => `<th scope="col">${told(name)}</th>`).join('')}</tr>`;
  return (
    `<h3>${told('By hazard class')}</h3>${rows.length === 0 ? '' : `<table>${head}${lines.join('')}</table>`}` +
    why.map((reason) => `<p class="mind">${text(reason)}.</p>`).join('')
  );
}

function sourcesHtml(figures: readonly ReportFigure[]): string {
  const rows = figures.map(
    (figure) =>
      `<tr id="${anchor(figure.name)}"><th scope="row">${text(figure.label)}</th><td class="number">${told(figureText(figure))}</td><td title="${text(figure.from.map(keptWords).join('; '))}">${told(sourceWords(figure, figures))}</td></tr>`,
  );
  return `<section><h2>${told(figureSources)}</h2><table class="sources">${rows.join('')}</table></section>`;
}

const look = `
body{font:16px/1.5 Archivo,"Liberation Sans",Arial,sans-serif;color:#1a1714;background:#f4f0e6;margin:0;padding:24px 16px}
header,main,footer{max-width:46rem;margin:0 auto}h1{font-size:2.4rem;line-height:1.05;margin:.2em 0}
h2{font-size:1.5rem;border-top:2px solid #1a1714;padding-top:.3em;margin:2em 0 .5em}h3{margin:1.4em 0 .3em}
.stamp,footer,figcaption,.mind{color:#4d463d;font-size:.9rem}p{margin:.6em 0}
.figure{color:inherit;text-decoration:underline dotted;font-variant-numeric:tabular-nums}
table{border-collapse:collapse;width:100%}th{text-align:left;font-weight:400;color:#4d463d}th,td{border-top:1px solid #8b806e;padding:.25em .6em .25em 0;vertical-align:top;overflow-wrap:anywhere}
th{overflow-wrap:break-word;min-width:6.5em}th[scope=col]{min-width:0;white-space:nowrap}.number{font-variant-numeric:tabular-nums;white-space:nowrap}.sources{font-size:.8rem}
.pair{display:flex;flex-wrap:wrap;gap:12px}.pair figure{flex:1 1 240px;margin:0}img,.chart svg{max-width:100%;height:auto}
footer{border-top:1px solid #8b806e;margin-top:3em;padding-top:.5em}
@media print{body{background:#fff;padding:0}}`.trim();
