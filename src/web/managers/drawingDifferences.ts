import type { WorkZone } from '../../records/work.ts';
import { listWords } from '../words/listWords.ts';
import { say } from '../words/say.ts';
import type { Drawing } from './zoneDrawing.ts';

type Drawn = Pick<Drawing, 'head' | 'rectangle' | 'zones'>;

/**
 * What differs between a drawing that was not saved and the one that is kept, in sentences; empty where nothing does.
 * Said from the side of the one who reads it: “here” is the unsaved one.
 */
export function drawingDifferences(here: Drawn, kept: Drawn): readonly string[] {
  const keptZones = new Map(kept.zones.map((zone) => [zone.id, zone]));
  const hereIds = new Set(here.zones.map(({ id }) => id));
  return [
    ...(here.head === kept.head
      ? []
      : [
          say('The head lies at the {head} edge there, at the {head2} here.', {
            head: kept.head,
            head2: here.head,
          }),
        ]),
    ...(same(here.rectangle, kept.rectangle) ? [] : [say('The work rectangle is another there.')]),
    ...here.zones.flatMap((zone) => {
      const other = keptZones.get(zone.id);
      if (!other) return [say('{zone} is only here.', { zone: zone.name })];
      const parts = differingParts(zone, other);
      return parts.length === 0
        ? []
        : [
            say('{zone}: {list} {count, plural, one {differs} other {differ}}.', {
              zone: zone.name,
              list: listWords(parts),
              count: parts.length,
            }),
          ];
    }),
    ...kept.zones
      .filter(({ id }) => !hereIds.has(id))
      .map(({ name }) => say('{name} is only there.', { name })),
  ];
}

/** Whether two drawings would be saved as the same. */
export function sameDrawing(a: Drawn, b: Drawn): boolean {
  return same(drawn(a), drawn(b));
}

function differingParts(one: WorkZone, other: WorkZone): string[] {
  return [
    ...(same(one.polygonMm, other.polygonMm) ? [] : [say('the outline')]),
    ...(one.name === other.name ? [] : [say('the name')]),
    ...(one.medium === other.medium ? [] : [say('the medium')]),
    ...(one.deposit === other.deposit ? [] : [say('the deposit')]),
    ...((one.intention ?? 'drawn') === (other.intention ?? 'drawn') ? [] : [say('the intention')]),
    ...(same(one.tone, other.tone) ? [] : [say('the tone')]),
  ];
}

function drawn({ head, rectangle, zones }: Drawn) {
  const plain = zones.map(({ id, name, medium, deposit, intention, tone, polygonMm }) => [
    id,
    name,
    medium,
    deposit ?? null,
    intention ?? 'drawn',
    tone,
    polygonMm,
  ]);
  return [head, rectangle, plain];
}

/** Plain data only; the fields of a record come in one order. */
function same(a: unknown, b: unknown): boolean {
  return JSON.stringify(sorted(a)) === JSON.stringify(sorted(b));
}

function sorted(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(sorted);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .toSorted(([a], [b]) => (a < b ? -1 : 1))
      .map(([name, part]) => [name, sorted(part)]),
  );
}
