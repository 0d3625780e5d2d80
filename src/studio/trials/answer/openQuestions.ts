import type {
  AuditFinding,
  FactorTest,
  OpenQuestion,
  PositionEffect,
  TreatmentHold,
} from '../../../records/testStoneAnswer.ts';
import { listWords } from '../listWords.ts';

/** What stays open, each with the test that would answer it. */
export function openQuestions(
  holds: readonly TreatmentHold[],
  audit: readonly AuditFinding[],
  tests: readonly FactorTest[],
  position: readonly PositionEffect[],
): OpenQuestion[] {
  const found: OpenQuestion[] = audit.flatMap(({ weight, message, test }) =>
    weight !== 'note' && test !== null ? [{ question: questionOf(message), test }] : [],
  );
  const open = holds.filter(({ verdict }) => verdict === 'open');
  const promising = open.filter(({ share }) => share !== null && share.unitsHeld === share.units);
  if (promising.length > 0)
    found.push({
      question: `Do ${listWords(promising.map(({ name }) => name))} hold on other stones too? All that were tried did.`,
      test: `Put one patch of each on the next ${stonesMissing(promising)} stones that are drawn anyway, in a corner outside the image.`,
    });
  const mixed = open.filter(
    ({ share }) => share !== null && share.patchesHeld > 0 && share.unitsHeld < share.units,
  );
  if (mixed.length > 0)
    found.push({
      question: `Why do ${listWords(mixed.map(({ name }) => name))} hold in some places and not in others?`,
      test: 'Repeat them four times on one stone, strips drawn by lot, with times kept to the second, and compare strips.',
    });
  for (const { along, low, high } of position.filter((one) => one.low > 0 || one.high < 0))
    found.push({
      question: `What makes tones run from ${along} (${low.toFixed(3)} to ${high.toFixed(3)} every 100 mm): the stone, the etch, or the press?`,
      test: 'Print the stone once turned by 180°: a slope that turns with it lies in the stone, one that stays lies in the press.',
    });
  for (const { factor, under, p } of tests)
    if (p !== null && p >= 0.05 && p < 0.2 && under === undefined)
      found.push({
        question: `Does ${factor} change the tone? It looks so, and chance would do as much in ${Math.round(p * 100)} of 100 trials.`,
        test: `Repeat the two that differ most by ${factor}, on twice as many places.`,
      });
  return found;
}

function questionOf(message: string): string {
  return message.replace(/\.$/, '');
}

/** Stones that a treatment still lacks to the five that bear out a claim. */
function stonesMissing(holds: readonly TreatmentHold[]): number {
  return Math.max(1, ...holds.map(({ share }) => 5 - (share!.unit === 'stone' ? share!.units : 1)));
}
