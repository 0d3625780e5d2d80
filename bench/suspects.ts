/**
 * Proves the suspects by simulation (`npm run bench:suspects`): faults are planted, read by the evidence, judged, and the judgement
 * held against what was planted. Fitting and scoring share neither seeds, sizes, strengths nor kinds of unknown fault.
 *
 *   npm run bench:suspects -- [--maps 0-2000] [--rendered 0-134] [--minutes 55] [--processes 2] [--fit] [--parts DIR] [--out FILE]
 *
 * `--maps`: cases read from coverage maps; `--rendered`: cases read by the whole engine from photographs, two pairs each: a count, or a range
 * of indices; `--fit`: fits what turns weights into chances on the fitting set, and prints it. Cases that were read are kept in `--parts`
 * and not read again: a run can be broken off, or be done in pieces. The figures of all that is kept of both ranges go to
 * `bench/data/suspects.json` unless told.
 */
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import type { CaseSource } from './suspects/caseFeatures.ts';
import { fitCalibration } from './suspects/fitCalibration.ts';
import { type KeptCase, keptCases } from './suspects/keptCases.ts';
import { scoringSettings } from './suspects/plantedCase.ts';
import { type ScoredCase, type SuspectScores, scoreCases } from './suspects/score.ts';

const { values } = parseArgs({
  options: {
    maps: { type: 'string', default: '2000' },
    rendered: { type: 'string', default: '134' },
    minutes: { type: 'string', default: '55' },
    processes: { type: 'string', default: '2' },
    fit: { type: 'boolean', default: false },
    parts: { type: 'string', default: '.bench/suspects' },
    out: { type: 'string', default: 'bench/data/suspects.json' },
  },
});
const until = Date.now() + 60_000 * Number(values.minutes);

function rangeOf(told: string): [number, number] {
  const [first, last] = told.split('-').map(Number);
  return last === undefined ? [0, first!] : [first!, last];
}

const read = (settings: 'fitting' | 'scoring', source: CaseSource, told: string) =>
  keptCases({ settings, source }, rangeOf(told), {
    file: join(values.parts, `${settings}-${source}.jsonl`),
    processes: Number(values.processes),
    until,
  });

const scored = (cases: readonly KeptCase[]) =>
  cases.flatMap(({ features, ...one }): ScoredCase[] => (features ? [{ ...one, features }] : []));

const cpuPerCase = (cases: readonly KeptCase[]) =>
  Math.round((100 * cases.reduce((sum, { cpuSeconds }) => sum + cpuSeconds, 0)) / cases.length) / 100;

function say(what: string, scores: SuspectScores): void {
  const percent = (share: number) => `${(100 * share).toFixed(1)} %`;
  console.log(`${what}: ${scores.cases} cases`);
  console.log(`  single cause among the first two ${percent(scores.single)} (aim 80 %)`);
  console.log(
    `  of two causes one among the first two ${percent(scores.pairedAny)}, both among the first three ${percent(scores.pairedBoth)}`,
  );
  console.log(
    `  something else leads on unknown faults ${percent(scores.elseLeads)}, on known ones ${percent(scores.elseFalse)}`,
  );
  console.log(
    `  expected calibration error ${scores.calibrationError.toFixed(4)}, of chances of a tenth or more ${scores.calibrationErrorNamed.toFixed(4)} (aim 0.05)`,
  );
  console.log(`  named without holding: ${scores.falselyNamed.toFixed(2)} a case`);
  for (const [cause, { named, firstTwo, single, count }] of Object.entries(scores.recall))
    console.log(
      `  ${cause.padEnd(16)} named in ${percent(named).padStart(8)} of ${count}, first two ${percent(firstTwo)}, alone ${percent(single)}`,
    );
}

interface Figures {
  firstSeed: number;
  maps?: SuspectScores & { cpuSecondsPerCase: number };
  photographs?: SuspectScores & { cpuSecondsPerCase: number; refusedCases: number };
}

if (values.fit)
  console.log(JSON.stringify(fitCalibration(scored(await read('fitting', 'maps', values.maps)))));
else {
  const figures: Figures = { firstSeed: scoringSettings.firstSeed };
  const maps = await read('scoring', 'maps', values.maps);
  if (maps.length > 0) {
    figures.maps = { ...scoreCases(scored(maps)), cpuSecondsPerCase: cpuPerCase(maps) };
    say('from maps', figures.maps);
  }
  const rendered = await read('scoring', 'photographs', values.rendered);
  const usable = scored(rendered);
  if (rendered.length > 0) {
    figures.photographs = {
      ...scoreCases(usable),
      cpuSecondsPerCase: cpuPerCase(rendered),
      refusedCases: rendered.length - usable.length,
    };
    say('from photographs', figures.photographs);
  }
  await writeFile(values.out, `${JSON.stringify(figures, null, 1)}\n`);
}
