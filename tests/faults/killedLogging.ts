import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { setTimeout as sleep } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import type { Random } from '../../src/foundation/random.ts';
import type { RunEvent } from '../../src/records/run.ts';
import { openStore } from '../../src/store/openStore.ts';

const logFolder = fileURLToPath(new URL('./logFolder.ts', import.meta.url));
/** The longest that a life goes on after its first event, ms. */
const longestLifeMs = 400;
/** Share of the lives that end before anything was logged: while the folder is opened. */
const shareKilledAtStart = 0.15;

export interface KilledLogging {
  readonly kills: number;
  /** How many events were acknowledged in all. */
  readonly acknowledged: number;
  /** What was wrong after a kill; empty when nothing was lost, doubled or out of order. */
  readonly faults: readonly string[];
}

/** Logs into a folder and kills it, again and again, each time looking whether all that was acknowledged is there. */
export async function killLogging(dataFolder: string, kills: number, random: Random): Promise<KilledLogging> {
  const faults: string[] = [];
  let acknowledged = 0;
  for (let life = 1; life <= kills; life++) {
    const child = spawn(
      process.execPath,
      ['--import', 'tsx', logFolder, dataFolder, String(acknowledged || 1)],
      {
        stdio: ['ignore', 'pipe', 'inherit'],
      },
    );
    const gone = once(child, 'exit');
    const first = once(child.stdout, 'data');
    let text = '';
    child.stdout.on('data', (chunk: Buffer) => {
      text += chunk.toString();
    });
    const ended = once(child.stdout, 'end');
    if (random() > shareKilledAtStart) await Promise.race([first, gone]);
    await sleep(longestLifeMs * random());
    child.kill('SIGKILL');
    await gone;
    await ended;
    const told = text.split('\n').slice(0, -1).map(Number);
    acknowledged = Math.max(acknowledged, ...told);
    const fault = faultOf(await keptEvents(dataFolder), acknowledged);
    if (fault) faults.push(`life ${life}: ${fault}`);
  }
  return { kills, acknowledged, faults };
}

async function keptEvents(dataFolder: string): Promise<readonly RunEvent[]> {
  const opened = await openStore(dataFolder);
  if (!opened.ok) throw new Error(opened.error.message);
  const events = await opened.value.runs.events('run', { after: 0, limit: 1e6 });
  await opened.value.close();
  return events;
}

/** The event under way when it was killed may be kept though nobody heard so: that one and no other. */
function faultOf(events: readonly RunEvent[], acknowledged: number): string | null {
  if (events.length !== acknowledged && events.length !== acknowledged + 1) {
    return `${acknowledged} were acknowledged, ${events.length} are there`;
  }
  const wrong = events.findIndex(
    ({ sequence, clientId }, index) => sequence !== index + 1 || clientId !== `tap ${index + 1}`,
  );
  return wrong < 0 ? null : `event ${wrong + 1} is ${JSON.stringify(events[wrong])}`;
}
