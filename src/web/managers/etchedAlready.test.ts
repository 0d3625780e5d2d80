import { expect, it } from 'vitest';
import { etchedAlready } from './etchedAlready.ts';

it('past its first etch a work goes on with the line instead of being etched anew', () => {
  expect(etchedAlready('drawn')).toBeNull();
  expect(etchedAlready('regrained')).toBeNull();
  expect(etchedAlready('first-etch')).toEqual({
    next: 'rest under gum',
    headline: 'Etched; next: rest under gum',
  });
  expect(etchedAlready('trial-proofs')).toMatchObject({ next: 'ink full and dry, rosin, then talc' });
});
