import type { ComparisonRecord, ToneCurve, Verdict, ZoneResult } from '../../records/comparison.ts';
import { shareWords } from './coverageWords.ts';

/** What became of the measurement as a whole, in one plain sentence. Total over all verdicts. */
export function verdictSentence(verdict: Verdict): string {
  switch (verdict) {
    case 'ok':
      return 'The print was laid onto the stone and measured.';
    case 'unmirrored':
      return 'The print is not the mirror image of this stone, so nothing was measured.';
    case 'no-match':
      return 'This print could not be matched to this stone, so nothing was measured.';
    default: {
      const never: never = verdict;
      return never;
    }
  }
}

/**
 * The headline of a comparison in plain words, such as
 * "Lights below 12 % were lost; one dark filled in; 3 of 19 zones undecided."
 * Works for refused records, records without zones and records whose fractions are null.
 */
export function findingSentence(record: ComparisonRecord): string {
  if (record.verdict !== 'ok') return verdictSentence(record.verdict);
  const clauses = record.zones.length > 0 ? zoneClauses(record) : areaClauses(record);
  if (clauses.length === 0) {
    return 'The print lies on the stone, but without a solid its tones cannot be compared.';
  }
  const { covered } = record.areas;
  if (covered !== null && covered < 0.98)
    clauses.push(`the sheet covered ${shareWords(covered)} of the stone`);
  return sentence(clauses);
}

function zoneClauses(record: ComparisonRecord): string[] {
  const { zones } = record;
  const of = (change: ZoneResult['change']) => zones.filter((zone) => zone.change === change);
  const lost = of('lost');
  const filled = of('filled');
  const lighter = of('lighter');
  const darker = of('darker');
  const undecided = of('undecided');
  const held = of('held');
  const patches = patchClauses(record, lost.length > 0, of('scum').length > 0);
  if (held.length === zones.length)
    return [zones.length === 1 ? 'the one zone held' : `${allOrBoth(zones.length)} zones held`, ...patches];
  const clauses: string[] = [];
  if (lost.length > 0) clauses.push(lostClause(lost, record.toneCurves));
  if (filled.length > 0) clauses.push(filledClause(filled));
  if (of('scum').length > 0) clauses.push(`scum or tint on ${zonesCounted(of('scum').length)}`);
  clauses.push(...patches);
  const off = toneClause(lighter.length, darker.length);
  if (off !== '') clauses.push(off);
  if (undecided.length === zones.length) clauses.push(`${allOf(zones.length)} undecided`);
  else if (undecided.length > 0) clauses.push(`${undecided.length} of ${zones.length} zones undecided`);
  if (clauses.length <= 2 && held.length > 0) clauses.push(`the other ${countWord(held.length)} held`);
  return clauses;
}

/** A share of the area under which patches are no headline: twice what an unchanged print may seem to lose. Our rule. */
const tellingShare = 0.002;

/** What is counted on the map and in none of the zones: patches lost within a zone that held, scum between zones. */
function patchClauses(
  { areas: { lostFraction, scumFraction } }: ComparisonRecord,
  zoneLost: boolean,
  zoneScum: boolean,
): string[] {
  const clauses: string[] = [];
  if (!zoneLost && (lostFraction ?? 0) >= tellingShare) {
    clauses.push(`${shareWords(lostFraction!)} lost in patches`);
  }
  if (!zoneScum && (scumFraction ?? 0) >= tellingShare) clauses.push(`${shareWords(scumFraction!)} scum`);
  return clauses;
}

function lostClause(lost: readonly ZoneResult[], curves: readonly ToneCurve[]): string {
  const media = new Set(lost.map((zone) => zone.medium));
  const only = media.size === 1 ? [...media][0] : undefined;
  const point = curves.find((curve) => curve.medium === only)?.lossPoint ?? null;
  const withinPoint =
    point !== null && lost.every((zone) => zone.drawn !== null && zone.drawn.coverage <= point);
  if (withinPoint) {
    const which = curves.length > 1 ? `${only} lights` : 'lights';
    return `${which} below ${shareWords(Math.round(point * 100) / 100)} were lost`;
  }
  if (lost.length === 1) return `${lost[0]!.name} was lost`;
  const drawn = lost.map((zone) => zone.drawn?.coverage ?? Number.NaN);
  const allLight = drawn.every((coverage) => coverage < 0.35);
  return `${countWord(lost.length)} ${allLight ? 'lights' : 'zones'} were lost`;
}

function filledClause(filled: readonly ZoneResult[]): string {
  const allDark = filled.every((zone) => zone.drawn !== null && zone.drawn.coverage >= 0.5);
  return `${countWord(filled.length)} ${allDark ? 'dark' : 'zone'}${filled.length > 1 ? 's' : ''} filled in`;
}

function areaClauses(record: ComparisonRecord): string[] {
  const { lostFraction, filledFraction, scumFraction } = record.areas;
  const parts: string[] = [];
  if (lostFraction !== null) parts.push(`${shareWords(lostFraction)} lost`);
  if (filledFraction !== null) parts.push(`${shareWords(filledFraction)} filled in`);
  if (scumFraction !== null) parts.push(`${shareWords(scumFraction)} scum`);
  return parts.length > 0 ? [`${parts.join(', ')}, of the area compared`] : [];
}

function toneClause(lighter: number, darker: number): string {
  if (lighter > 0 && darker > 0) return `${zonesCounted(lighter)} lighter and ${countWord(darker)} darker`;
  if (lighter > 0) return `${zonesCounted(lighter)} lighter`;
  return darker > 0 ? `${zonesCounted(darker)} darker` : '';
}

function zonesCounted(count: number): string {
  return `${countWord(count)} zone${count > 1 ? 's' : ''}`;
}

function allOf(count: number): string {
  return count === 1 ? 'the one zone is' : `${allOrBoth(count)} zones are`;
}

function allOrBoth(count: number): string {
  return count === 2 ? 'both' : `all ${countWord(count)}`;
}

const countWords = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];

function countWord(count: number): string {
  return countWords[count] ?? String(count);
}

function sentence(clauses: readonly string[]): string {
  const text = clauses.join('; ');
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
}
