import type { Measured } from '../../../foundation/measured.ts';
import type {
  ComparisonRecord,
  GroundRecord,
  ResponseRecord,
  SolidOrigin,
  SolidRecord,
} from '../../../records/comparison.ts';
import { shareWords } from '../../../studio/proofs/coverageWords.ts';

const groundWords: Readonly<Record<GroundRecord['origin'], string>> = {
  outside: 'from bare places outside the work rectangle',
  chips: 'from the grey chips',
  'white-sheet': 'from the photographed white sheet',
  'bare-places': 'from bare places inside the work rectangle',
};

const solidWords: Readonly<Record<SolidOrigin, string>> = {
  'own-solid': 'its own darkest connected place',
  chips: 'the chips',
  series: "the series' reference",
  typed: 'a value that was typed in',
};

/** How the figures came about, as pairs of a term and a sentence; empty for a refused record. */
export function howMeasured(record: ComparisonRecord): readonly (readonly [string, string])[] {
  if (record.verdict !== 'ok') return [];
  const { parameters, registration, ground, response, solid, strength } = record;
  const lines: (readonly [string, string])[] = [];
  if (registration !== null) {
    const { residualMm } = registration;
    const way = registration.mirrored ? 'mirrored' : 'not mirrored';
    lines.push([
      'Print on stone',
      `found ${way}, turned by ${registration.turn}°. Of places that the fit did not see, half lie within ` +
        `${residualMm.median.toFixed(3)} mm and 9 of 10 within ${residualMm.p90.toFixed(2)} mm.`,
    ]);
  }
  if (ground !== null) {
    lines.push([
      'Ground',
      `stone ${groundWords[ground.stone.origin]}; print ${groundWords[ground.proof.origin]}.`,
    ]);
  }
  if (response !== null) {
    lines.push(['Camera', `stone ${responseWords(response.stone)}; print ${responseWords(response.proof)}.`]);
  }
  lines.push(['Solid', `stone ${solidText(solid.stone)}; print ${solidText(solid.proof)}.`]);
  lines.push(['Strength', `stone ${strengthText(strength.stone)}; print ${strengthText(strength.proof)}.`]);
  const { lost, filled, scum } = parameters;
  lines.push([
    'Limits',
    `lost: drawn at least ${shareWords(lost.drawnAtLeast)} and printed at most ${shareWords(lost.keptAtMost)} of it. ` +
      `Filled in: drawn ${shareWords(filled.drawnAtLeast)} to ${shareWords(filled.drawnAtMost)} and printed at least ` +
      `${shareWords(filled.printedAtLeast)}. Scum: drawn at most ${shareWords(scum.drawnAtMost)} and printed at ` +
      `least ${shareWords(scum.printedAtLeast)}. Held: within ±${shareWords(parameters.heldWithin)}.`,
  ]);
  lines.push([
    'Maps',
    `smoothed by ${parameters.smoothingMm} mm; places under ${parameters.smallestAreaMm2} mm² are not shown; at most ` +
      `${shareWords(parameters.falseDiscoveryRate)} of what is shown is expected to be chance.`,
  ]);
  if (parameters.yuleNielsenN !== 1) lines.push(['Yule–Nielsen n', `${parameters.yuleNielsenN}.`]);
  return lines;
}

/** What this measurement cannot say, as pairs of a term and a sentence; empty where nothing is known to be missing. */
export function notKnown(record: ComparisonRecord): readonly (readonly [string, string])[] {
  const limits: (readonly [string, string])[] = [];
  const term = 'Cannot say';
  if (record.ground?.stone.limit) limits.push([term, `on the stone: ${record.ground.stone.limit}`]);
  if (record.ground?.proof.limit) limits.push([term, `on the print: ${record.ground.proof.limit}`]);
  if (record.verdict === 'ok' && (record.solid.stone === null || record.solid.proof === null)) {
    limits.push([term, 'without a solid on both sides no coverage can be compared, only darkness.']);
  }
  return limits;
}

/** What every reader of these figures must know, whatever the record. */
export const caveats: readonly string[] = [
  'Drawn darkness is pigment, not grease: a pale mark can hold and a dark one can fail.',
  'Graphite and waxy solids shine and read lighter than they are; tannin darkens the stone.',
  'A damp inked stone glares: photograph it inked and fanned dry, before powder.',
  'A print is darker wet than dry (0.03 to 0.1 in density, from memory, it varies): compare pulls of equal age.',
  'Newsprint and rag paper do not compare. A good print gains in the middles. The fairer pair is a print and the inked stone.',
  'A photograph cannot resolve the grain: crayon tone is a local mean. Nor can it tell scum from tint.',
];

function responseWords(response: ResponseRecord): string {
  if (response.origin === 'standard-curve') return 'taken at its word, no chips';
  const misfit = response.residual === null ? '' : ` (they agree within ${shareWords(response.residual)})`;
  return `read by grey chips${misfit}`;
}

function solidText(solid: SolidRecord | null): string {
  if (solid === null) return 'none';
  const arm = Math.max(solid.high - solid.darkness, solid.darkness - solid.low);
  return `${solid.darkness.toFixed(2)} ±${arm.toFixed(2)} dark, by ${solidWords[solid.origin]}`;
}

function strengthText(strength: Measured | null): string {
  if (strength === null) return 'not known';
  const arm = Math.max(strength.high - strength.value, strength.value - strength.low);
  return `${strength.value.toFixed(2)} ±${arm.toFixed(2)} in density above its ground`;
}
