import { logEvent } from '../../../application/bench/logEvent.ts';
import { startRun } from '../../../application/bench/startRun.ts';
import type { Random } from '../../../foundation/random.ts';
import type { LineStage, RunEventKind, RunPayloads } from '../../../records/run.ts';
import { must } from './must.ts';
import { minuteMs, type YearParts } from './yearClock.ts';

/** A run that is being logged: each call happens at the clock's time, which then moves on. */
export interface RunWriter {
  readonly runId: string;
  /** Logs one event, `minutes` after the one before; gives its client id. */
  log<Kind extends RunEventKind>(kind: Kind, payload: RunPayloads[Kind], minutes?: number): Promise<string>;
  /** A stage from start to end, `minutes` long. */
  stage(stage: LineStage, minutes: number, words?: string): Promise<void>;
  /** Nothing happens for so many minutes, a little more or less. */
  wait(minutes: number): void;
}

/** Begins a run of a work at the clock's time. */
export async function beginRun(
  parts: YearParts,
  random: Random,
  workId: string,
  actor: string,
): Promise<RunWriter> {
  const { clock } = parts;
  const run = must(await startRun(parts, { workId, planId: null, clientId: `${workId} ${parts.newId()}` }));
  let taps = 0;
  let moment = clock.now().getTime();
  const pass = (minutes: number) => {
    const since = Math.max(moment, clock.now().getTime());
    moment = since + Math.round(minutes * minuteMs * (0.95 + 0.1 * random()));
    clock.at(moment);
  };
  async function log<Kind extends RunEventKind>(kind: Kind, payload: RunPayloads[Kind], minutes = 0.2) {
    pass(minutes);
    const clientId = `tap ${++taps}`;
    const at = clock.now().toISOString();
    // kept a moment later, as over the room's network
    moment += 400;
    clock.at(moment);
    const event = { clientId, kind, at, sentAt: at, actor, device: 'bench tablet', payload };
    must(await logEvent(parts, run.id, event));
    return clientId;
  }
  return {
    runId: run.id,
    log,
    async stage(stage, minutes, words) {
      await log('stage-started', { stage });
      await log('stage-ended', words === undefined ? { stage } : { stage, words }, minutes);
    },
    wait: pass,
  };
}
