import type { ReportWordPart } from '../../../records/report.ts';
import type {
  ReportBlock,
  ReportFigure,
  ReportLine,
  ReportPart,
  SetReport,
} from '../../../records/setReport.ts';
import { isoDayWords } from '../../../science/calendar/dateWords.ts';
import { documentationOf } from '../../editions/documentation.ts';
import type { WorkRecords } from '../gaps.ts';
import { hazardBalance } from './hazardBalance.ts';
import { reportFigures } from './reportFigures.ts';
import { gapSentences, reportGaps } from './reportGaps.ts';
import type { ReportInput } from './reportInput.ts';
import { figureText, wordsWithFigures } from './reportWords.ts';
import { figuresIn, foundSentences, triedSentences } from './toldFigures.ts';

/** A report put together from its words and from what is kept: figures are filled now, what is missing is said. */
export function setReportOf(input: ReportInput): SetReport {
  const { report } = input;
  const figures = reportFigures(input);
  const unknown: string[] = [];
  const words = (part: ReportWordPart): ReportBlock[] => {
    const told = wordsWithFigures(report.words[part], figures);
    unknown.push(...told.unknown);
    return told.paragraphs.length === 0 ? [] : [{ kind: 'words', paragraphs: told.paragraphs }];
  };
  const gaps = reportGaps(input);
  const [tried, found] = [words('tried'), words('found')];
  const nothingChosen = input.works.length + input.comparisons.length === 0;
  const parts: readonly ReportPart[] = [
    { name: 'Aims', blocks: words('aims') },
    {
      name: 'What was tried',
      blocks: [
        ...tried,
        ...(nothingChosen ? [] : triedSentences(figures, figuresIn(tried))),
        ...triedLines(input),
      ],
    },
    {
      name: 'What was found',
      blocks: [
        ...found,
        ...(nothingChosen ? [] : foundSentences(figures, figuresIn(found))),
        ...input.comparisons.map(
          ({ id, title, finding }): ReportBlock => ({ kind: 'comparison', id, title, finding }),
        ),
      ],
    },
    { name: 'Materials', blocks: [...words('materials'), ...materialBlocks(input, figures)] },
    { name: 'The edition', blocks: [...words('edition'), ...editionBlocks(input)] },
    { name: 'Next steps', blocks: words('next') },
    { name: 'Not recorded', blocks: gaps.length === 0 ? [] : [{ kind: 'gaps', groups: gaps }] },
  ];
  return {
    schema: 'stonetone/report/1',
    engine: input.engine,
    setAt: input.setAt,
    reportId: report.id,
    reportVersion: report.version,
    title: report.title,
    reader: report.reader,
    period: periodWords(report.from, report.to),
    parts: parts.filter(({ blocks }) => blocks.length > 0),
    figures,
    gaps: gapSentences(gaps),
    unknownFigures: [...new Set(unknown)],
  };
}

function periodWords(from: string | null, to: string | null): string {
  if (from === null && to === null) return 'no period stated';
  return `${from === null ? 'from the first record' : isoDayWords(from)} to ${
    to === null ? 'the day it was set' : isoDayWords(to)
  }`;
}

function figuresBlock(names: readonly string[]): ReportBlock {
  return { kind: 'figures', names };
}

function triedLines({ works }: ReportInput): ReportBlock[] {
  return works.map(({ work, plan, runs, series, approvals }): ReportBlock => {
    const { stone } = work;
    const done = runs.flatMap(({ id, stages }) =>
      stages.flatMap(({ state, name }, index) =>
        state === 'done' ? [{ id, name, field: `stages.${index}.name` }] : [],
      ),
    );
    const lines: ReportLine[] = [
      {
        label: 'Stone',
        value: stone.name,
        from: [{ record: 'stone', id: stone.id, field: 'name', shown: stone.name }],
        figure: null,
      },
      {
        label: 'Etch table',
        value: plan === null ? null : `${plan.table.name}, issue ${plan.table.version}`,
        from:
          plan === null
            ? []
            : [
                { record: 'plan', id: plan.id, field: 'table.name', shown: plan.table.name },
                { record: 'plan', id: plan.id, field: 'table.version', shown: String(plan.table.version) },
              ],
        figure: null,
      },
      {
        label: 'Stages logged',
        value: done.length === 0 ? null : done.map(({ name }) => name).join('; '),
        from: done.map(({ id, name, field }) => ({ record: 'run', id, field, shown: name })),
        figure: null,
      },
      {
        label: 'Proofs',
        value: series.pulls.length === 0 ? null : series.answer.reason,
        from:
          series.pulls.length === 0
            ? []
            : [{ record: 'series', id: work.id, field: 'answer.reason', shown: series.answer.reason }],
        figure: null,
      },
    ];
    return { kind: 'lines', name: work.title, lines: known([...lines, goodToPrintLine(work.id, approvals)]) };
  });
}

/** The pull that is good to print, and who signed it; its value is null where none is in force. */
function goodToPrintLine(work: string, approvals: WorkRecords['approvals']): ReportLine {
  const index = approvals.findIndex(({ withdrawn }) => withdrawn === null);
  const inForce = approvals[index];
  if (inForce === undefined) return { label: 'Good to print', value: null, from: [], figure: null };
  const { pull, artist, printer } = inForce;
  const from = (['pull', 'artist', 'printer'] as const).map((field) => ({
    record: 'approvals' as const,
    id: work,
    field: `approvals.${index}.${field}`,
    shown: String(inForce[field]),
  }));
  return {
    label: 'Good to print',
    value: `pull ${pull}, signed by ${artist} and ${printer}`,
    from,
    figure: null,
  };
}

function materialBlocks(input: ReportInput, figures: readonly ReportFigure[]): ReportBlock[] {
  const { rows, why } = hazardBalance(input);
  const balance = new Set(rows.flatMap(({ before, now, less }) => [before, now, less]));
  const named = figures
    .filter(({ unit, name, value }) => unit !== '' && value !== null && !balance.has(name))
    .filter((figure) => !toldAsPlanned(figure, figures))
    .map(({ name }) => name);
  return [
    ...(named.length === 0 ? [] : [figuresBlock(named)]),
    ...input.report.replacements.map(
      ({ before, now }, index): ReportBlock => ({
        kind: 'lines',
        name: `${before}, replaced`,
        lines: known([
          {
            label: 'By',
            value: now,
            from: [{ record: 'report', id: input.report.id, field: `replacements.${index}.now`, shown: now }],
            figure: null,
          },
          figureLine('Used before, as typed', `${before.toLowerCase()} before ml`, figures),
          figureLine('Used now', `${now} ml`, figures),
        ]),
      }),
    ),
    ...(rows.length === 0 && why.length === 0 ? [] : [{ kind: 'balance', rows, why } satisfies ReportBlock]),
  ];
}

/** Whether all that is known of a material was only planned: its line that says so is then the only one. */
function toldAsPlanned({ name, value }: ReportFigure, figures: readonly ReportFigure[]): boolean {
  const planned = name.replace(/ (ml|g)$/, ' only planned $1');
  return planned !== name && figures.some((one) => one.name === planned && one.value === value);
}

function figureLine(label: string, name: string, figures: readonly ReportFigure[]): ReportLine {
  const figure = figures.find((one) => one.name === name);
  const known = figure !== undefined && figure.value !== null;
  return { label, value: known ? figureText(figure) : null, from: [], figure: known ? name : null };
}

/** Parts of the documentation that a report repeats; the rest of the sheet is for who owns a print. */
const repeated = ['Paper, ink, press', 'Printing', 'The prints'];

function editionBlocks({ editions }: ReportInput): ReportBlock[] {
  return editions.flatMap((kept) =>
    documentationOf(kept)
      .parts.filter(({ name }) => repeated.includes(name))
      .map(
        ({ name, lines }): ReportBlock => ({
          kind: 'lines',
          name: `${kept.edition.title}: ${name.toLowerCase()}`,
          lines: known(lines.map((line) => ({ ...line, figure: null }))),
        }),
      )
      .filter((block) => block.kind !== 'lines' || block.lines.length > 0),
  );
}

/** What nobody recorded is told once, at the end. */
function known(lines: readonly ReportLine[]): readonly ReportLine[] {
  return lines.filter(({ value }) => value !== null);
}
