import type { BoardUser } from './boardHand.ts';
import type { ZoneDesk } from './zoneDesk.ts';

/** Presses on the stone as the zone desk understands them; `meets` tells whether a point is laid against its neighbours. */
export function deskUser(desk: ZoneDesk, meets: () => boolean): BoardUser {
  const drawing = () => desk.current().drawing.outline !== null;
  const near = (reachMm: number) => (meets() ? reachMm : 0);
  return {
    press(stoneMm, reachMm) {
      if (!drawing()) return desk.press(stoneMm, reachMm);
      desk.aim(stoneMm, near(reachMm));
      return true;
    },
    drag(stoneMm, reachMm) {
      if (drawing()) desk.aim(stoneMm, near(reachMm));
      else desk.drag(stoneMm, near(reachMm));
    },
    release(reachMm, dropped) {
      if (!drawing()) desk.release();
      else if (dropped) desk.put(reachMm);
    },
    click(stoneMm) {
      desk.click(stoneMm);
    },
    hover(stoneMm, reachMm) {
      if (drawing()) desk.aim(stoneMm, near(reachMm));
    },
  };
}
