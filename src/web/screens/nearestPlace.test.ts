import { describe, expect, it } from 'vitest';
import { listAbove, nearestPlace } from './nearestPlace.ts';

describe('where a dead address leads', () => {
  it.each([
    ['/works/7f3a/proofs', '/works/7f3a/proofs', 'To the proofs'],
    ['/works/7f3a/proofsheet', '/works/7f3a', 'To the work'],
    ['/works/7f3a', '/works/7f3a', 'To the work'],
    ['/editions/7f3a', '/editions/7f3a', 'To the edition'],
    ['/test-stones/T-1/steps', '/test-stones/T-1', 'To the test stone'],
  ])('%s, which is there', (address, href, words) => {
    expect(nearestPlace(address)).toEqual({ href, words });
  });

  it.each([
    ['/works/7f3a/etch', '/works'],
    ['/editions/7f3a/press', '/works'],
    ['/bench/7f3a', '/works'],
    ['/comparisons/0000', '/comparisons'],
    ['/mixing/soup', '/mixing'],
  ])('%s, of which nothing is there', (address, href) => {
    expect(listAbove(address)?.href).toBe(href);
  });

  it.each(['/', '/nowhere', '/workshop/7f3a', ''])('“%s” belongs to no list', (address) => {
    expect(listAbove(address)).toBeNull();
  });
});
