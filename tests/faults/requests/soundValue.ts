import fc from 'fast-check';
import type { Random } from '../../../src/foundation/random.ts';
import { oneOf, wholeBetween } from './choose.ts';
import type { JsonSchema } from './jsonSchema.ts';
import type { KnownThings } from './knownThings.ts';

/** What a value may lean on while it is made. */
export interface Making {
  readonly random: Random;
  readonly known: KnownThings;
  /** The record that is asked for; its version is sent where one is wanted. */
  readonly about: string | null;
  /** How many of the fields that may be left out are sent, 0..1. */
  readonly fullness: number;
}

const words = [
  'Low Water',
  'S-01',
  'P.R.',
  'a',
  'mudbank at ebb, 3 °C',
  'ß',
  '石',
  '‮left',
  '=1+1',
  "o'clock; --",
];

/** A value that has the form of a schema, as far as the schema says it; the edges of its ranges come often. */
export function soundValue(schema: JsonSchema, making: Making, field = '', depth = 0): unknown {
  const { random } = making;
  if (field === 'polygonMm' || field === 'rectangleMm') return soundPolygon(random);
  if (field === 'sizeMm' && random() < 0.8) return [300, 400];
  if (field === 'timeZone' && random() < 0.8) return 'Europe/London';
  if ('const' in schema) return schema.const;
  if (schema.enum) return oneOf(random, schema.enum);
  const choices = schema.anyOf ?? schema.oneOf;
  if (choices) return soundValue(oneOf(random, choices), making, field, depth);
  if (schema.allOf) return soundValue(Object.assign({}, ...schema.allOf), making, field, depth);
  const { type } = schema;
  switch (typeof type === 'object' ? oneOf(random, type) : type) {
    case 'object':
      return soundObject(schema, making, depth);
    case 'array':
      return soundList(schema, making, field, depth);
    case 'string':
      return soundText(schema, making, field);
    case 'integer':
    case 'number':
      return soundNumber(schema, making, field);
    case 'boolean':
      return random() < 0.5;
    case 'null':
      return null;
    default:
      return oneOf(random, [null, 'x', 7, {}, [], { text: 'x' }]);
  }
}

function soundObject(schema: JsonSchema, making: Making, depth: number): Record<string, unknown> {
  const { random } = making;
  const made: Record<string, unknown> = {};
  for (const [name, property] of Object.entries(schema.properties ?? {})) {
    const needed = schema.required?.includes(name) ?? false;
    if (needed || random() < making.fullness) made[name] = soundValue(property, making, name, depth + 1);
  }
  const more = schema.additionalProperties;
  if (typeof more === 'object' && schema.properties === undefined) {
    const count = wholeBetween(random, 0, 2);
    for (let index = 0; index < count; index++)
      made[`key ${index}`] = soundValue(more, making, '', depth + 1);
  }
  return made;
}

/** A rectangle that a stone of the studio has room for, mm; values out of nothing would cross themselves. */
function soundPolygon(random: Random): number[][] {
  const [x, y] = [wholeBetween(random, 20, 150), wholeBetween(random, 20, 150)];
  const [right, bottom] = [x + wholeBetween(random, 5, 150), y + wholeBetween(random, 5, 150)];
  return [
    [x, y],
    [right, y],
    [right, bottom],
    [x, bottom],
  ];
}

function soundList(schema: JsonSchema, making: Making, field: string, depth: number): unknown[] {
  const { random } = making;
  const fixed = (schema.prefixItems ?? []).map((item) => soundValue(item, making, field, depth + 1));
  if (schema.prefixItems && (typeof schema.items !== 'object' || schema.minItems === undefined)) return fixed;
  const least = schema.minItems ?? 0;
  const reach = random() < 0.05 ? 40 : Math.max(0, 4 - depth);
  const count = wholeBetween(random, least, Math.min(schema.maxItems ?? Infinity, least + reach));
  return Array.from({ length: count }, () => soundValue(schema.items ?? {}, making, field, depth + 1));
}

const matching = new Map<string, readonly string[]>();

function textMatching(pattern: string, random: Random): string {
  const kept =
    matching.get(pattern) ?? fc.sample(fc.stringMatching(new RegExp(pattern)), { numRuns: 40, seed: 1 });
  matching.set(pattern, kept);
  return oneOf(random, kept);
}

function soundText(schema: JsonSchema, making: Making, field: string): string {
  const { random, known } = making;
  if (random() < 0.85) {
    const id = known.idFor(field, random, making.about ?? undefined);
    if (id !== null) return id;
  }
  if (field === 'clientId') return `tap ${wholeBetween(random, 1, 400)}`;
  if (schema.format === 'date') return oneDay(random);
  if (schema.format === 'date-time') {
    const zone = oneOf(random, ['Z', '+02:00', '-11:30']);
    return `${oneDay(random)}T${String(wholeBetween(random, 0, 23)).padStart(2, '0')}:30:00${oneOf(random, ['', '.123456789'])}${zone}`;
  }
  if (schema.pattern) return textMatching(schema.pattern, random);
  const most = schema.maxLength ?? 300;
  const least = schema.minLength ?? 0;
  const shape = random();
  if (shape < 0.05) return 'x'.repeat(most);
  if (shape < 0.1) return 'y'.repeat(least);
  return oneOf(random, words).slice(0, most).padEnd(least, '.');
}

function oneDay(random: Random): string {
  if (random() < 0.06)
    return oneOf(random, ['0001-01-01', '9999-12-31', '1969-12-31', '2028-02-29', '2026-03-29']);
  const day = Date.UTC(2026, 2, 1) + wholeBetween(random, -200, 400) * 86_400_000;
  return new Date(day).toISOString().slice(0, 10);
}

function soundNumber(schema: JsonSchema, { random, known, about }: Making, field: string): number {
  if (field === 'version' && random() < 0.95) {
    const seen = about === null ? null : known.versionOf(about);
    return seen === null || random() < 0.3 ? wholeBetween(random, 0, 3) : seen;
  }
  const whole = schema.type === 'integer';
  const least = schema.minimum ?? schema.exclusiveMinimum ?? -1000;
  const most = Math.min(schema.maximum ?? schema.exclusiveMaximum ?? 1000, Number.MAX_SAFE_INTEGER);
  const shape = random();
  if (shape < 0.08 && schema.minimum !== undefined) return least;
  if (shape < 0.16 && schema.maximum !== undefined) return schema.maximum;
  // small numbers are what people type, so they come more often than a wide range would give them
  const share = shape < 0.6 ? random() ** 4 : random();
  const value = least + share * (most - least);
  if (whole) return Math.min(Math.max(Math.round(value), Math.ceil(least)), Math.floor(most));
  return value === schema.exclusiveMinimum ? value + 1e-6 : value;
}
