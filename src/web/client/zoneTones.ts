import type { ZoneTones } from '../../records/zoneTones.ts';
import { ask, withJson } from './ask.ts';

/** Reads the tones of a work's saved zones from an attached photograph with marks; nothing is saved by it; `signal` calls it off. */
export function readZoneTones(work: string, photograph: string, signal: AbortSignal): Promise<ZoneTones> {
  return ask(`/api/works/${work}/zone-tones`, { ...withJson('POST', { photograph }), signal });
}
