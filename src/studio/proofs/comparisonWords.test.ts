import { describe, expect, it } from 'vitest';
import type { Change, ComparisonRecord, ZoneResult } from '../../records/comparison.ts';
import { comparisonSchema, defaultParameters } from '../../records/comparison.ts';
import { findingSentence, verdictSentence } from './comparisonWords.ts';

const parts = { noise: 0, ground: 0, solid: 0, response: 0, registration: 0, floor: 0 };

function zone(name: string, drawn: number, change: Change, medium = 'crayon'): ZoneResult {
  const tone = { coverage: drawn, low: drawn - 0.01, high: drawn + 0.01, parts };
  const darkness = { drawnDarkness: drawn, printedDarkness: drawn };
  return {
    id: name,
    name,
    medium,
    drawn: tone,
    printed: tone,
    ...darkness,
    change,
    covered: 1,
    areaMm2: 100,
  };
}

function recordOf(over: Partial<ComparisonRecord>): ComparisonRecord {
  return {
    schema: comparisonSchema,
    engine: 'test',
    parameters: { sizeMm: [300, 400], ...defaultParameters },
    verdict: 'ok',
    reason: null,
    warnings: [],
    registration: null,
    ground: null,
    response: null,
    solid: { stone: null, proof: null },
    strength: { stone: null, proof: null },
    zones: [],
    toneCurves: [],
    areas: { lostFraction: null, filledFraction: null, scumFraction: null, covered: 1 },
    maps: null,
    ...over,
  };
}

describe('findingSentence', () => {
  it('names the loss point, what closed and what stays undecided', () => {
    const zones = [
      zone('crest', 0.05, 'lost'),
      zone('bank', 0.1, 'lost'),
      zone('hollow', 0.8, 'filled'),
      zone('ripples', 0.4, 'undecided'),
      zone('channel', 0.5, 'held'),
    ];
    const toneCurves = [{ medium: 'crayon', points: [], lossPoint: 0.118, fillPoint: null }];
    expect(findingSentence(recordOf({ zones, toneCurves }))).toBe(
      'Lights below 12 % were lost; one dark filled in; 1 of 5 zones undecided.',
    );
  });

  it('does not claim a loss point that a lost zone lies above', () => {
    const zones = [zone('crest', 0.05, 'lost'), zone('bank', 0.3, 'lost'), zone('channel', 0.5, 'held')];
    const toneCurves = [{ medium: 'crayon', points: [], lossPoint: 0.12, fillPoint: null }];
    expect(findingSentence(recordOf({ zones, toneCurves }))).toBe(
      'Two lights were lost; the other one held.',
    );
  });

  it('says when both zones held', () => {
    const zones = [zone('crest', 0.05, 'held'), zone('bank', 0.3, 'held')];
    expect(findingSentence(recordOf({ zones }))).toBe('Both zones held.');
  });

  it('joins lighter and darker zones', () => {
    const zones = [zone('a', 0.2, 'lighter'), zone('b', 0.5, 'darker'), zone('c', 0.6, 'darker')];
    expect(findingSentence(recordOf({ zones }))).toBe('One zone lighter and two darker.');
  });

  it('names the patches and the scum that lie in no zone', () => {
    const areas = { lostFraction: 0.004, filledFraction: 0, scumFraction: 0.007, covered: 1 };
    const zones = [zone('hollow', 0.8, 'filled'), zone('channel', 0.5, 'held')];
    expect(findingSentence(recordOf({ zones, areas }))).toBe(
      'One dark filled in; 0.4 % lost in patches; 0.7 % scum.',
    );
    expect(findingSentence(recordOf({ zones: [zone('channel', 0.5, 'held')], areas }))).toBe(
      'The one zone held; 0.4 % lost in patches; 0.7 % scum.',
    );
  });

  it('falls back to areas without zones, and says how much the sheet covered', () => {
    const areas = { lostFraction: 0.062, filledFraction: 0, scumFraction: null, covered: 0.5 };
    expect(findingSentence(recordOf({ areas }))).toBe(
      '6.2 % lost, 0 % filled in, of the area compared; the sheet covered 50 % of the stone.',
    );
  });

  it('says why nothing can be compared when everything is null', () => {
    expect(findingSentence(recordOf({}))).toContain('without a solid');
  });

  it('gives the verdict of a refused record', () => {
    expect(findingSentence(recordOf({ verdict: 'unmirrored' }))).toBe(verdictSentence('unmirrored'));
    expect(findingSentence(recordOf({ verdict: 'no-match' }))).toBe(verdictSentence('no-match'));
  });
});
