import { liftRank, type Task, type TouchTimes } from './task.ts';

/**
 * Whether one person can keep these areas in one stage, by looking breadth first at every state that can be
 * reached second by second. It shares nothing with the search it judges but the meaning of a task.
 */
export function checkedByBruteForce(tasks: readonly Task[], touch: TouchTimes): boolean {
  type Zone = { stage: 'dry' | 'wet' | 'done'; idle: number; contact: number };
  type World = { zones: Zone[]; busy: number; on: number; doing: 'lay' | 'move' | 'lift' | 'rest' };
  const key = (world: World) =>
    `${world.doing}${world.busy}@${world.on}|${world.zones.map((zone) => `${zone.stage}${zone.idle},${zone.contact}`).join('|')}`;
  const contactEnough = Math.max(...tasks.map((task) => task.highSeconds ?? task.lowSeconds)) + 1;
  let worlds: World[] = [
    { zones: tasks.map(() => ({ stage: 'dry', idle: 0, contact: 0 })), busy: 0, on: -1, doing: 'rest' },
  ];
  const seen = new Set<string>();

  const choices = (world: World): World[] => {
    if (world.busy > 0) return [world];
    const allLaid = world.zones.every((zone) => zone.stage !== 'dry');
    const wetRanks = tasks.filter((_, index) => world.zones[index]!.stage === 'wet').map(liftRank);
    const found: World[] = [{ ...world, doing: 'rest', on: -1, busy: 1 }];
    for (const [on, task] of tasks.entries()) {
      const zone = world.zones[on]!;
      if (zone.stage === 'dry') found.push({ ...world, doing: 'lay', on, busy: task.laySeconds });
      if (zone.stage !== 'wet') continue;
      found.push({ ...world, doing: 'move', on, busy: touch.moveSeconds });
      const ready = allLaid && zone.contact >= task.lowSeconds && liftRank(task) <= Math.min(...wetRanks);
      if (ready) found.push({ ...world, doing: 'lift', on, busy: touch.liftSeconds });
    }
    return found;
  };

  const oneSecond = (world: World): World | null => {
    const ends = world.busy === 1;
    const zones: Zone[] = [];
    for (const [index, zone] of world.zones.entries()) {
      const task = tasks[index]!;
      const under = index === world.on;
      if (zone.stage === 'wet') {
        const contact = Math.min(zone.contact + 1, contactEnough);
        const idle = under ? 0 : zone.idle + 1;
        if (idle > task.gapSeconds) return null;
        if (task.highSeconds !== null && contact > task.highSeconds) return null;
        if (under && ends && world.doing === 'lift') zones.push({ stage: 'done', idle: 0, contact: 0 });
        else zones.push({ stage: 'wet', idle, contact });
      } else if (under && ends) zones.push({ stage: 'wet', idle: 0, contact: 0 });
      else zones.push(zone);
    }
    return { zones, busy: world.busy - 1, on: ends ? -1 : world.on, doing: ends ? 'rest' : world.doing };
  };

  while (worlds.length > 0) {
    const after: World[] = [];
    for (const world of worlds.flatMap(choices)) {
      const next = oneSecond(world);
      if (!next) continue;
      if (next.zones.every((zone) => zone.stage === 'done')) return true;
      const name = key(next);
      if (seen.has(name)) continue;
      seen.add(name);
      after.push(next);
    }
    worlds = after;
  }
  return false;
}
