import fc from 'fast-check';
import { expect } from 'vitest';
import { exportZones } from '../../src/application/works/zonesFile.ts';
import { readZones } from '../../src/contract/zones.ts';
import type { Work } from '../../src/records/work.ts';
import type { Zone } from '../../src/records/zone.ts';
import { close, holds } from './holds.ts';
import { millimetres, starOutline } from './shapes.ts';

const text = (longest: number) => fc.string({ minLength: 1, maxLength: longest, unit: 'grapheme' });

const zone: fc.Arbitrary<Zone> = fc.record(
  {
    id: text(20),
    name: text(40),
    medium: fc.oneof(fc.constantFrom('crayon', 'wash', 'pen', 'solid', 'blank'), text(20)),
    deposit: fc.constantFrom('light', 'middle', 'dark', 'solid', 'wash'),
    intention: fc.constantFrom('drawn', 'guide', 'stop-out', 'scraped-white'),
    polygonMm: starOutline,
  },
  { requiredKeys: ['id', 'name', 'medium', 'polygonMm'] },
);
const zones = fc.array(zone, { maxLength: 12 });

holds(
  'zones.json comes back as it was written, with or without a closing point or a byte order mark',
  fc.property(zones, (written) => {
    const plain = JSON.stringify(written);
    const closed = JSON.stringify(
      written.map((one) => ({ ...one, polygonMm: [...one.polygonMm, one.polygonMm[0]!] })),
    );
    for (const file of [plain, closed, `\uFEFF${plain}`, JSON.stringify(written, null, 2)]) {
      const read = readZones(file);
      expect(read.ok && read.value).toEqual(JSON.parse(plain));
    }
  }),
);

holds(
  'a zone that lacks a field is refused with the place of the field',
  fc.property(
    fc.array(zone, { minLength: 1, maxLength: 6 }),
    fc.nat(5),
    fc.constantFrom('id', 'name', 'medium', 'polygonMm'),
    (written, at, field) => {
      const index = at % written.length;
      const broken = written.map((one, i) => (i === index ? { ...one, [field]: undefined } : one));
      const read = readZones(JSON.stringify(broken));
      expect(!read.ok && read.error.path).toBe(`[${index}].${field}`);
    },
  ),
);

holds(
  'the zones of a work leave as millimetres of its rectangle, each as large as on the stone',
  fc.asyncProperty(zones, millimetres(0, 60), millimetres(0, 60), async (onStone, x, y) => {
    const work = {
      rectangle: { offsetMm: [x, y], sizeMm: [300, 400] },
      zones: onStone.map((one) => ({ ...one, tone: null })),
    } as unknown as Work;
    const left = await exportZones({ store: { works: { find: async () => work } as never } }, 'w');
    if (!left.ok) throw new Error(left.error.code);
    const read = readZones(JSON.stringify(left.value));
    if (!read.ok) throw new Error(read.error.code);
    expect(read.value.map(({ id }) => id)).toEqual(onStone.map(({ id }) => id));
    for (const [i, { polygonMm }] of read.value.entries()) {
      for (const [k, point] of polygonMm.entries()) {
        // Rounded to a thousandth of a millimetre.
        close(point[0] + x, onStone[i]!.polygonMm[k]![0], 6e-4);
        close(point[1] + y, onStone[i]!.polygonMm[k]![1], 6e-4);
      }
    }
  }),
  60,
);
