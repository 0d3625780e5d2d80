import { describe, expect, it } from 'vitest';
import { type Bad, expectRefused } from './expectRefused.ts';
import { type Refusal, rectangle, studioUnderTest } from './studioUnderTest.ts';

const square = rectangle(50, 50, 100, 100);
const zone = { id: 'sky', name: 'Sky', medium: 'crayon-5', polygonMm: square };
const bowTie = [square[0], square[2], square[1], square[3]];
const line = [
  [10, 10],
  [20, 20],
  [30, 30],
];
describe('refused with one sentence and the path to the field, and nothing changed:', () => {
  it('stones of impossible sizes and absurd readings', async () => {
    const studio = await studioUnderTest();
    const kept = await studio.stone('S-01');
    const stone = { name: 'S-02', widthMm: 400, heightMm: 500 };
    const corners = (px: unknown) => ({
      ...stone,
      photographs: [{ photograph: 'a'.repeat(64), state: 'drawn', corners: { of: 'stone', px } }],
    });
    await expectRefused(
      studio,
      ['POST', '/api/stones'],
      [
        [{ ...stone, widthMm: 0 }, 'stone-impossible', 'widthMm'],
        [{ ...stone, widthMm: -400 }, 'stone-impossible', 'widthMm'],
        [{ ...stone, heightMm: 1e9 }, 'stone-impossible', 'heightMm'],
        [{ ...stone, heightMm: 19 }, 'stone-impossible', 'heightMm'],
        [{ ...stone, cornerThicknessMm: [80, null, 8000, null] }, 'stone-impossible', 'cornerThicknessMm[2]'],
        [{ ...stone, cornerThicknessMm: [80, 80, 80] }, 'body-malformed', 'cornerThicknessMm'],
        [{ ...stone, widthMm: '400' }, 'body-malformed', 'widthMm'],
        [{ ...stone, widthMm: null }, 'body-malformed', 'widthMm'],
        [{ widthMm: 400, heightMm: 500 }, 'body-malformed', 'name'],
        [{ ...stone, name: '   ' }, 'body-malformed', 'name'],
        [{ ...stone, name: ' s-1 ' }, 'name-taken', 'name'],
        [{ ...stone, densityGPerCm3: 40 }, 'body-malformed', 'densityGPerCm3'],
        [
          { ...stone, graining: [{ at: '2026-03-01T09:00:00Z', grit: 1e9, charges: 1 }] },
          'body-malformed',
          'graining[0].grit',
        ],
        [
          { ...stone, graining: [{ at: 'yesterday', grit: 80, charges: 1 }] },
          'body-malformed',
          'graining[0].at',
        ],
        [
          { ...stone, straightedge: [{ at: '2026-03-01T09:00:00Z', gapMm: -1 }] },
          'body-malformed',
          'straightedge[0].gapMm',
        ],
        [
          { ...stone, photographs: [{ photograph: 'mine', state: 'drawn' }] },
          'body-malformed',
          'photographs[0].photograph',
        ],
        [corners([[0, 0]]), 'body-malformed', 'photographs[0].corners.px'],
        [corners(square), 'photograph-unknown', 'photographs[0].photograph'],
      ],
    );
    await studio.work(kept.id, 'Low Water');
    await expectRefused(
      studio,
      ['PATCH', `/api/stones/${kept.id}`],
      [
        [{ version: 1, widthMm: 300 }, 'stone-too-small', 'widthMm'],
        [{ version: 1, heightMm: 0 }, 'stone-impossible', 'heightMm'],
        [{ version: 0, note: 'x' }, 'body-malformed', 'version'],
        [{ note: 'x' }, 'body-malformed', 'version'],
        [{ version: 1, name: null }, 'body-malformed', 'name'],
      ],
    );
  });

  it('works with zones that cross themselves, lie off the stone or have no area', async () => {
    const studio = await studioUnderTest();
    const stone = await studio.stone('S-01');
    const gone = await studio.stone('S-09');
    await studio.send('PUT', `/api/stones/${gone.id}/put-by`, { version: 1, putBy: true });
    const work = { title: 'Low Water', stoneId: stone.id };
    const zones = (...more: object[]) => ({ ...work, zones: [zone, ...more] });
    const second = (change: object) => zones({ ...zone, id: 'mud', ...change });
    const halfway = (history: object[]) => ({
      ...work,
      origin: { kind: 'halfway', stage: 'drawn', history },
    });
    const bad: readonly Bad[] = [
      [{ ...work, stoneId: 'nowhere' }, 'reference-unknown', 'stoneId'],
      [{ ...work, stoneId: gone.id }, 'put-by', 'stoneId'],
      [{ ...work, title: '' }, 'body-malformed', 'title'],
      [{ ...work, stage: 'soaked' }, 'body-malformed', 'stage'],
      [{ ...work, head: 'up' }, 'body-malformed', 'head'],
      [zones(zone), 'zone-duplicate', 'zones[1].id'],
      [second({ id: 'ground' }), 'zone-id-reserved', 'zones[1].id'],
      [second({ id: '' }), 'body-malformed', 'zones[1].id'],
      [second({ polygonMm: bowTie }), 'zone-self-crossing', 'zones[1].polygonMm'],
      [second({ polygonMm: line }), 'zone-degenerate', 'zones[1].polygonMm'],
      [second({ polygonMm: square.slice(0, 2) }), 'body-malformed', 'zones[1].polygonMm'],
      [second({ polygonMm: rectangle(350, 50, 60, 60) }), 'zone-off-stone', 'zones[1].polygonMm[1]'],
      [second({ polygonMm: rectangle(-5, 50, 60, 60) }), 'zone-off-stone', 'zones[1].polygonMm[0]'],
      [second({ polygonMm: [[0, 'x'], ...square] }), 'body-malformed', 'zones[1].polygonMm[0][1]'],
      [second({ deposit: 'thick' }), 'body-malformed', 'zones[1].deposit'],
      [second({ intention: 'maybe' }), 'body-malformed', 'zones[1].intention'],
      [second({ tone: { mean: 0.6, darkest: 0.2 } }), 'body-malformed', 'zones[1].tone'],
      [second({ tone: { mean: 0.6, darkest: 20 } }), 'body-malformed', 'zones[1].tone.darkest'],
      [
        { ...work, rectangle: { offsetMm: [200, 20], sizeMm: [300, 400] } },
        'rectangle-off-stone',
        'rectangle',
      ],
      [{ ...work, rectangle: { offsetMm: [0, 0], sizeMm: [0, 0] } }, 'rectangle-off-stone', 'rectangle'],
      [halfway([{ fact: 'washout', value: 'lamp oil' }]), 'body-malformed', 'origin.history[0].fact'],
      [
        halfway([
          { fact: 'grain', value: '180' },
          { fact: 'grain', value: '220' },
        ]),
        'body-malformed',
        'origin.history[1].fact',
      ],
      [halfway([{ fact: 'weather', value: 'wet' }]), 'body-malformed', 'origin.history[0].fact'],
    ];
    await expectRefused(studio, ['POST', '/api/works'], bad);
    const kept = await studio.work(stone.id, 'High Water');
    const saves = bad.slice(5).filter(([, , path]) => path.startsWith('zones'));
    const changes = saves.map(([body, code, path]): Bad => [{ ...body, version: 1 }, code, path]);
    await expectRefused(studio, ['PATCH', `/api/works/${kept.id}`], changes);
    expect(await studio.json(`/api/works/${kept.id}`)).toEqual(kept);
  });

  it('a malformed zones.json', async () => {
    const studio = await studioUnderTest();
    const stone = await studio.stone('S-01');
    const work = await studio.work(stone.id, 'Low Water', {
      rectangle: { offsetMm: [50, 50], sizeMm: [300, 400] },
    });
    const path = `/api/works/${work.id}/zones.json`;
    const file = (...zones: unknown[]) => ({ version: 1, zones });
    await expectRefused(
      studio,
      ['PUT', path],
      [
        [{ version: 1, zones: 'sky' }, 'body-malformed', 'zones'],
        [{ version: 1 }, 'body-malformed', 'zones'],
        [file(zone, { ...zone, polygonMm: undefined }), 'body-malformed', 'zones[1].polygonMm'],
        [file(zone, 7), 'body-malformed', 'zones[1]'],
        [file(zone, zone), 'zone-duplicate', 'zones[1].id'],
        [file({ ...zone, polygonMm: bowTie }), 'zone-self-crossing', 'zones[0].polygonMm'],
        // on the stone if it counted from the stone's corner, off it from the rectangle's
        [file({ ...zone, polygonMm: rectangle(310, 10, 80, 80) }), 'zone-off-stone', 'zones[0].polygonMm[1]'],
      ],
    );
    const torn = await studio.call(path, {
      method: 'PUT',
      headers: { 'content-type': 'application/json' },
      body: '{"version":1,"zones":[{"id":',
    });
    expect([torn.status, ((await torn.json()) as Refusal).code]).toEqual([400, 'body-malformed']);
    expect(await studio.json(`/api/works/${work.id}`)).toEqual(work);
  });
});
