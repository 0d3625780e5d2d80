import { expect, it } from 'vitest';
import type { ComparisonRecord, ComparisonWarning, ZoneResult } from '../../../records/comparison.ts';
import type { StonePatch } from '../../../records/testStone.ts';
import { readPatches } from './readPatches.ts';

const patch: StonePatch = {
  id: 'A1',
  square: 'A1',
  strip: null,
  row: 1,
  column: 1,
  polygonMm: [],
  intention: 'image',
  treatment: {},
  note: '',
};
const film = { origin: 'own-solid', darkness: 0.9, low: 0.88, high: 0.92 } as const;
const bare = { origin: 'outside', limit: null } as const;
const half = { coverage: 0.5, low: 0.48, high: 0.52 };

function whyOf(record: object, zone: Partial<ZoneResult> | null): string | null {
  const whole = {
    warnings: [],
    ground: { stone: bare, proof: bare },
    solid: { stone: film, proof: film },
    zones: zone === null ? [] : [{ id: 'A1', drawn: null, printed: null, covered: 0, ...zone }],
    ...record,
  } as unknown as ComparisonRecord;
  return readPatches([patch], whole, [])[0]!.camera.why;
}

it('says of an unread patch which object could not be read, and what to do', () => {
  const drawn = { ...half, parts: {} } as ZoneResult['drawn'];
  const burnt: ComparisonWarning[] = [{ code: 'overexposed', message: '' }];
  const noFilm = (of: 'stone' | 'proof') => ({ solid: { stone: film, proof: film, [of]: null } });
  expect(whyOf({}, { drawn, printed: drawn, covered: 1 })).toBeNull();
  expect(whyOf({}, null)).toMatch(/added after this print was read/);
  expect(whyOf({}, { drawn })).toBe('The sheet does not cover it.');
  expect(whyOf({ ground: null }, {})).toMatch(/No bare ground.*bare stone and bare paper/);
  expect(whyOf(noFilm('stone'), {})).toBe('Nothing on the stone is dark enough to say what a full film is.');
  // a print without a film covers nothing that could be read, and is not told as a sheet that is too small
  expect(whyOf(noFilm('proof'), { drawn })).toMatch(/^Nothing on the print is dark enough/);
  expect(whyOf({ ...noFilm('proof'), warnings: burnt }, { drawn })).toMatch(
    /print is burnt out.*less exposure/,
  );
});
