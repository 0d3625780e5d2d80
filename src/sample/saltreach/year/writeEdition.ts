import { createEdition, curateEdition } from '../../../application/editions/changeEdition.ts';
import { logImpression } from '../../../application/editions/logImpression.ts';
import { normalDraw, seededRandom } from '../../../foundation/random.ts';
import type { CuratedPrint, EditionDraft, PrintKind, ToneReading } from '../../../records/edition.ts';
import type { LedgerKind, LedgerPayloads } from '../../../records/ledger.ts';
import { must } from './must.ts';
import { dayMs, minuteMs, type YearParts } from './yearClock.ts';

/** What an edition is printed from. */
export interface EditionOf {
  readonly workId: string;
  readonly approvalPullId: string | null;
  readonly approval: ToneReading;
  /** Called when the last sheet is pulled, before the prints are looked at dry. */
  readonly printed: () => Promise<void>;
}

const draft: Omit<EditionDraft, 'approvalPullId' | 'approval'> = {
  title: 'Twelve Tides: Low Water',
  size: 10,
  artistProofs: 1,
  artist: 'A.T.',
  printer: 'P.R., J.O.',
  paper: {
    name: 'Paper of the Twelve Tides',
    sheetMm: [560, 760],
    sheetGrain: 'long',
    pieceMm: [560, 380],
    pieceGrain: 'any',
    tearLossMm: 2,
    gramsPerM2: 250,
    damped: 'yes',
  },
  ink: 'Low Water, second black: 80 soft, 20 stiff, 2 % magnesium carbonate',
  inkedCm2: 420,
  press: 'Shed press, six to seven eighths',
  drawingMaterials: 'Tusche in water, crayon #3, autographic ink, gum as stop-out',
  etches: 'Tannic, first full; second not needed',
  rackPlaces: 20,
  approvedBy: 'A.T., P.R.',
  chop: 'S S R, blind, lower left',
  signature: 'pencil, lower right',
  signedOn: null,
  cancellation: '',
  cancelledOn: null,
  note: 'First of the Twelve Tides, for the Saltreach Harbour Trust.',
};

/** What became of each impression when it was dry. */
const became: readonly (PrintKind | null)[] = [
  'trial',
  'edition',
  'edition',
  'edition',
  null,
  'edition',
  'artist',
  'edition',
  'edition',
  'printer',
  null,
  'edition',
  'edition',
  'edition',
  'archive',
  'edition',
  'cancellation',
];
const spoiled: ReadonlyMap<number, readonly ['second' | 'torn', string]> = new Map([
  [5, ['second', 'thumb mark in the margin']],
  [11, ['torn', 'caught under the tympan']],
]);

/** An edition printed in a day with two people, its ledger, the dry check and the curated prints. */
export async function writeEdition(parts: YearParts, id: string, seed: number, of: EditionOf): Promise<void> {
  const random = seededRandom(seed);
  const { clock } = parts;
  const { workId, approvalPullId, approval } = of;
  const edition = must(
    await createEdition({ ...parts, newId: () => id }, workId, { ...draft, approvalPullId, approval }),
  );
  let moment = clock.now().getTime();
  let taps = 0;
  async function log<Kind extends LedgerKind>(kind: Kind, payload: LedgerPayloads[Kind], minutes: number) {
    moment += Math.round(minutes * minuteMs);
    clock.at(moment);
    const at = clock.now().toISOString();
    const clientId = `${id} ${++taps}`;
    const input = { clientId, kind, at, sentAt: at, actor: 'J.O.', device: 'press tablet', payload };
    must(await logImpression(parts, edition.id, input));
    return clientId;
  }
  const drifted = (value: number | null, n: number, step: number) =>
    value === null ? null : Number((value + step * n + 0.004 * normalDraw(random)).toFixed(3));
  const impressions: string[] = [];
  await log('charged', { words: 'slab and roller, 45 g' }, 5);
  for (let n = 1; n <= became.length; n++) {
    if (n === 9) {
      await log('paused', { gummed: true, words: 'midday' }, 3);
      await log('resumed', {}, 45);
    }
    if (n % 5 === 0) await log('charged', {}, 2);
    const [verdict, reason] = spoiled.get(n) ?? (['good', ''] as const);
    if (n === 3) {
      const mistaken = await log('impression', { verdict: 'torn' }, 6);
      await log('undo', { clientId: mistaken }, 0.2);
    }
    const impression = await log('impression', { verdict, reason }, 6 + 2 * random());
    impressions.push(impression);
    if (verdict === 'torn') continue;
    const tones = {
      lights: drifted(approval.lights, n, 0),
      middles: drifted(approval.middles, n, 0.0005),
      darks: drifted(approval.darks, n, 0.001),
    };
    await log('reading', { impression, ...tones, ageMinutes: 10 }, 0.5);
  }
  await log('paused', { gummed: true, words: 'printed: closed down under gum' }, 4);
  await of.printed();
  moment = Math.max(moment, clock.now().getTime()) + 2 * dayMs;
  for (const [index, impression] of impressions.entries()) {
    if (spoiled.get(index + 1)?.[0] === 'torn') continue;
    const verdict = spoiled.has(index + 1) ? 'second' : 'good';
    await log('checked', { impression, verdict, ageMinutes: 2 * 24 * 60 }, 1);
  }
  const { version } = (await parts.store.editions.find(edition.id))!;
  must(await curateEdition(parts, edition.id, { version, prints: curated(impressions) }));
}

function curated(impressions: readonly string[]): readonly CuratedPrint[] {
  const numbers = new Map<PrintKind, number>();
  return impressions.flatMap((impression, index): CuratedPrint[] => {
    const kind = became[index]!;
    if (kind === null) return [];
    if (kind === 'archive' || kind === 'cancellation') return [{ impression, kind, number: null }];
    const number = (numbers.get(kind) ?? 0) + 1;
    numbers.set(kind, number);
    return [{ impression, kind, number }];
  });
}
