import type { WorkDesk } from './useWorkDesk.ts';

/** Lays a work rectangle on the stone to begin with: as large as the borders leave room, to be corrected by its fields. */
export function setRectangle({ desk, work }: Pick<WorkDesk, 'desk' | 'work'>): void {
  const { widthMm, heightMm } = work.stone;
  desk.arrange({
    rectangle: {
      offsetMm: [15, 25],
      sizeMm: [Math.max(widthMm - 30, 10), Math.max(heightMm - 50, 10)],
    },
  });
}
