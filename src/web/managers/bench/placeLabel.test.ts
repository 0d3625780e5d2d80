import { expect, it } from 'vitest';
import { placeLabel } from './placeLabel.ts';

it('a label stays within its place, and leaves its time out where there is no room for it', () => {
  for (const room of [12, 20, 40, 90]) {
    for (const time of ['', ' 0:42', ' late 0:09', ' lifted']) {
      const { wide, high } = placeLabel('A', time, { room, unit: 3, most: 17 });
      expect(Math.hypot(wide, high) / 2, `${time} in ${room} mm`).toBeLessThanOrEqual(room + 1e-9);
    }
  }
  expect(placeLabel('E', ' lifted', { room: 12, unit: 3, most: 17 }).words).toBe('E');
  expect(placeLabel('A', ' lifted', { room: 90, unit: 3, most: 17 }).words).toBe('A lifted');
});
