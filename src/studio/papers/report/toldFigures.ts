import type { ReportPiece } from '../../../records/report.ts';
import type { ReportBlock, ReportFigure } from '../../../records/setReport.ts';
import { figureNamed, wordsWithFigures } from './reportWords.ts';

/** Names of figures that words hold already. */
export function figuresIn(blocks: readonly ReportBlock[]): ReadonlySet<string> {
  const runs = blocks.flatMap((block) => (block.kind === 'words' ? block.paragraphs.flat() : []));
  return new Set(runs.flatMap(({ figure }) => figure ?? []));
}

/**
 * What was tried, counted, in sentences: of each only what is recorded.
 * @param told names of figures that the writer's own words hold; what they tell is not told again
 */
export function triedSentences(figures: readonly ReportFigure[], told: ReadonlySet<string>): ReportBlock[] {
  const { open, say } = telling(figures, told);
  return paragraph(figures, [
    open('works', 'stones') && `${say('works', 'work')} on ${say('stones', 'stone')}.`,
    open('runs') &&
      (open('stages')
        ? `At the bench ${say('runs', 'run was', 'runs were')} logged, with ${say('stages', 'stage')} done.`
        : `At the bench ${say('runs', 'run was', 'runs were')} logged.`),
    open('troubles') && `${say('troubles', 'trouble was', 'troubles were')} logged on the way.`,
  ]);
}

/** What was found, counted, in sentences. */
export function foundSentences(figures: readonly ReportFigure[], told: ReadonlySet<string>): ReportBlock[] {
  const { open, say } = telling(figures, told);
  const changed = figures.filter(({ name, value }) => name.startsWith('zones ') && (value ?? 0) > 0);
  const zones = changed.filter(({ name }) => !told.has(name)).map(({ name }) => `{${name}} ${name.slice(6)}`);
  const measured = open('comparisons') && `${say('comparisons', 'print was', 'prints were')} measured`;
  return paragraph(figures, [
    open('pulls') && `${say('pulls', 'pull is', 'pulls are')} recorded.`,
    measured && `${measured} against the stone.`,
    open('zones') && zones.length > 0
      ? `Of ${say('zones', 'zone')} measured, ${listed(zones)}.`
      : zones.length > 0 && `By zones: ${listed(zones)}.`,
  ]);
}

function telling(figures: readonly ReportFigure[], told: ReadonlySet<string>) {
  return {
    /** Whether there is something to tell of these that the words don't tell already. */
    open: (...names: readonly string[]) =>
      names.every((name) => (figureNamed(figures, name)?.value ?? 0) > 0) &&
      !names.every((name) => told.has(name)),
    say: (name: string, one: string, many = `${one}s`) =>
      `{${name}} ${figureNamed(figures, name)?.value === 1 ? one : many}`,
  };
}

/** `a`, `a and b`, `a, b and c`. */
function listed(parts: readonly string[]): string {
  return parts.length < 2 ? parts.join('') : `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}`;
}

function paragraph(
  figures: readonly ReportFigure[],
  sentences: readonly (string | false | undefined)[],
): ReportBlock[] {
  const told = sentences.filter((sentence) => typeof sentence === 'string').join(' ');
  const { paragraphs } = wordsWithFigures(piecesOf(told), figures);
  return paragraphs.length === 0 ? [] : [{ kind: 'words', paragraphs }];
}

/** Sentences of this file, in which `{pulls}` is the figure of that name. */
function piecesOf(told: string): readonly ReportPiece[] {
  return told.split(/\{([^{}]*)\}/).map((part, index) => (index % 2 === 0 ? part : { figure: part }));
}
