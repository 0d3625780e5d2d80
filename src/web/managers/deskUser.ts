import type { BoardUser } from './boardHand.ts';
import type { ZoneDesk } from './zoneDesk.ts';

/** Presses on the stone as the zone desk understands them; `snaps` tells whether points may be drawn to others. */
export function deskUser(desk: ZoneDesk, snaps: () => boolean): BoardUser {
  const drawing = () => desk.current().drawing.outline !== null;
  const drawn = (reachMm: number) => (snaps() ? reachMm : 0);
  return {
    press(stoneMm, reachMm) {
      if (!drawing()) return desk.press(stoneMm, reachMm);
      desk.aim(stoneMm, drawn(reachMm));
      return true;
    },
    drag(stoneMm, reachMm) {
      if (drawing()) desk.aim(stoneMm, drawn(reachMm));
      else desk.drag(stoneMm, drawn(reachMm));
    },
    release(reachMm, dropped) {
      if (!drawing()) desk.release();
      else if (dropped) desk.put(reachMm);
    },
    click(stoneMm) {
      desk.click(stoneMm);
    },
    hover(stoneMm, reachMm) {
      if (drawing()) desk.aim(stoneMm, drawn(reachMm));
    },
  };
}
