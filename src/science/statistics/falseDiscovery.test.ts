import { describe, expect, it } from 'vitest';
import { discoveryLimit } from './falseDiscovery.ts';

describe('discoveryLimit', () => {
  it('keeps the four smallest of the fifteen in Benjamini & Hochberg 1995, section 4', () => {
    const published = [
      0.0001, 0.0004, 0.0019, 0.0095, 0.0201, 0.0278, 0.0298, 0.0344, 0.0459, 0.324, 0.4262, 0.5719, 0.6528,
      0.759, 1,
    ];
    expect(discoveryLimit(published, 15, 0.05)).toBe(0.0095);
  });
  it('steps up: a later one that passes carries those before it', () => {
    expect(discoveryLimit([0.03, 0.04, 0.05], 3, 0.05)).toBe(0.05);
  });
  it('counts places that were tested but are no candidates', () => {
    expect(discoveryLimit([0.001], 10, 0.05)).toBe(0.001);
    expect(discoveryLimit([0.001], 100, 0.05)).toBe(-1);
  });
  it('keeps nothing of nothing', () => expect(discoveryLimit([], 0, 0.05)).toBe(-1));
});
