import { expect } from 'vitest';
import type { PlanRequest } from '../../src/records/etch.ts';
import type { FigureSource, KeptAt } from '../../src/records/keptAt.ts';
import { areaDoubts, filmDoubtMl } from '../../src/studio/etch/areaDoubt.ts';
import type { StudioUnderTest } from './studioUnderTest.ts';

/** Reads records over HTTP, each once, and follows where a figure is said to be kept. */
export function recordReader(studio: StudioUnderTest, workOfPlan: (id: string) => string) {
  const read = new Map<string, Promise<unknown>>();
  const address = ({ record, id }: KeptAt): string => {
    switch (record) {
      case 'work':
        return `/api/works/${id}`;
      case 'stone':
        return `/api/stones/${id}`;
      case 'plan':
        return `/api/works/${workOfPlan(id)}/plans/${id}`;
      case 'second-etch':
        return `/api/works/${workOfPlan(id)}/second-etch`;
      case 'run':
        return `/api/runs/${id}`;
      case 'batch':
        return `/api/batches/${id}`;
      case 'material':
        return `/api/materials/${id}`;
      case 'series':
        return `/api/works/${id}/series`;
      case 'approvals':
        return `/api/works/${id}/approvals`;
      case 'comparison':
        return `/api/comparisons/${id}`;
      case 'edition':
      case 'prints':
        return `/api/editions/${id}`;
      case 'ledger':
        return `/api/editions/${id}/ledger`;
      case 'report':
        return `/api/reports/${id}`;
      default:
        return record satisfies never;
    }
  };
  return async (at: KeptAt): Promise<unknown> => {
    const path = address(at);
    const record = read.get(path) ?? studio.json<unknown>(path);
    read.set(path, record);
    return valueAt(await record, at.field);
  };
}

/** What lies at a path whose steps are parted by dots; undefined where nothing does. */
export function valueAt(root: unknown, path: string): unknown {
  const steps = path === '' ? [] : path.split('.');
  return steps.reduce<unknown>(
    (at, step) => (typeof at === 'object' && at !== null ? (at as Record<string, unknown>)[step] : undefined),
    root,
  );
}

/** Every leaf of a value with its path. */
export function leavesOf(value: unknown, path = ''): readonly (readonly [string, unknown])[] {
  if (typeof value !== 'object' || value === null) return [[path, value]];
  return Object.entries(value).flatMap(([key, inner]) =>
    leavesOf(inner, path === '' ? key : `${path}.${key}`),
  );
}

/** Follows every number of a paper, by its sources, to the record that it is kept in. */
export async function expectFiguresKept(
  paper: object,
  sources: readonly FigureSource[],
  follow: (at: KeptAt) => Promise<unknown>,
): Promise<number> {
  let followed = 0;
  for (const [path, shown] of leavesOf(paper)) {
    if (typeof shown !== 'number') continue;
    const source = sources
      .filter(({ at }) => path === at || path.startsWith(`${at}.`))
      .toSorted((one, other) => other.at.length - one.at.length)[0];
    expect(source, `${path} = ${shown} has no source`).toBeDefined();
    expect(await workedOut(source!, path.slice(source!.at.length + 1), follow), path).toBe(shown);
    followed++;
  }
  return followed;
}

async function workedOut(
  { at, from, how }: FigureSource,
  below: string,
  follow: (at: KeptAt) => Promise<unknown>,
): Promise<unknown> {
  const values: unknown[] = [];
  for (const one of from)
    values.push(await follow({ ...one, field: below === '' ? one.field : `${one.field}.${below}` }));
  if (how === null) return values[0];
  for (const [index, value] of values.entries())
    expect(value, `${from[index]!.record} ${from[index]!.field}`).toBeDefined();
  const sum = (some: readonly unknown[]) => some.reduce<number>((all, one) => all + Number(one), 0);
  switch (how) {
    case 'count':
      return values.length;
    case 'sum':
      return sum(values);
    case '100 × first ÷ sum of the others':
      return Math.round((1e4 * Number(values[0])) / sum(values.slice(1))) / 100;
    case '100 × poured ÷ areas': {
      const amounts = values.filter((_, index) => from[index]!.record === 'run');
      const areas = values.filter((_, index) => from[index]!.record === 'plan');
      const [width, height] = values.filter((_, index) => from[index]!.record === 'stone').map(Number);
      const cm2 = areas.length > 0 ? sum(areas) : (width! * height!) / 100;
      return Math.round((1e4 * sum(amounts)) / cm2) / 100;
    }
    case 'from drawn corners and sides': {
      const request = values[0] as PlanRequest;
      const doubt = areaDoubts(request).get(String(values[1])) ?? null;
      const shown = at.endsWith('mlPlusMinus') ? filmDoubtMl(doubt, request.filmMm) : doubt;
      return shown === null ? null : Math.round(100 * shown) / 100;
    }
    default:
      return how satisfies never;
  }
}
