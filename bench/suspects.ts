/**
 * Proves the suspects by simulation (`npm run bench:suspects`): faults are planted, read by the evidence, judged, and the judgement
 * held against what was planted. Fitting and scoring share neither seeds, sizes, strengths nor kinds of unknown fault.
 *
 *   npm run bench:suspects -- [--maps 2000] [--rendered 100] [--fit] [--out FILE]
 *
 * `--maps`: cases read from coverage maps; `--rendered`: cases read by the whole engine from photographs, two pairs each; `--fit`: fits what
 * turns weights into chances on the fitting set, and prints it. The figures go to `bench/data/suspects.json` unless told.
 */
import { writeFile } from 'node:fs/promises';
import { parseArgs } from 'node:util';
import { fitCalibration } from './suspects/fitCalibration.ts';
import { mapCaseFeatures } from './suspects/mapCase.ts';
import {
  fittingSettings,
  plantedCase,
  type SimulationSettings,
  scoringSettings,
} from './suspects/plantedCase.ts';
import { featuresFromMaps, renderedMaps } from './suspects/renderedCase.ts';
import { type ScoredCase, type SuspectScores, scoreCases } from './suspects/score.ts';

const { values } = parseArgs({
  options: {
    maps: { type: 'string', default: '2000' },
    rendered: { type: 'string', default: '100' },
    fit: { type: 'boolean', default: false },
    out: { type: 'string', default: 'bench/data/suspects.json' },
  },
});

function mapCases(settings: SimulationSettings, count: number): ScoredCase[] {
  return Array.from({ length: count }, (_, i) => {
    const planted = plantedCase(settings, i);
    return {
      seed: planted.seed,
      causes: planted.causes,
      unknown: planted.unknown,
      features: mapCaseFeatures(planted),
    };
  });
}

async function renderedCases(count: number): Promise<{ cases: ScoredCase[]; refused: number }> {
  const cases: ScoredCase[] = [];
  let refused = 0;
  for (let i = 0; cases.length < count; i++) {
    const planted = plantedCase(scoringSettings, i);
    const maps = await renderedMaps(planted);
    if (!maps) refused++;
    else {
      const features = featuresFromMaps(planted, maps);
      cases.push({ seed: planted.seed, causes: planted.causes, unknown: planted.unknown, features });
    }
  }
  return { cases, refused };
}

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
  console.log(`  expected calibration error ${scores.calibrationError.toFixed(4)} (aim 0.05)`);
  for (const [cause, { share, single, count }] of Object.entries(scores.recall))
    console.log(`  ${cause.padEnd(16)} ${percent(share).padStart(8)} of ${count}, alone ${percent(single)}`);
}

const figures: Record<string, SuspectScores | number> = {};
if (values.fit) console.log(JSON.stringify(fitCalibration(mapCases(fittingSettings, Number(values.maps)))));
else {
  const maps = Number(values.maps);
  if (maps > 0) {
    figures.maps = scoreCases(mapCases(scoringSettings, maps));
    say('from maps', figures.maps);
  }
  const rendered = Number(values.rendered);
  if (rendered > 0) {
    const { cases, refused } = await renderedCases(rendered);
    figures.rendered = scoreCases(cases);
    figures.renderedRefused = refused;
    say('from photographs', figures.rendered);
  }
  await writeFile(values.out, `${JSON.stringify(figures, null, 1)}\n`);
}
