import type { WorkZone } from '../../records/work.ts';
import { ask } from './ask.ts';

/** What a small picture of a work needs of it. */
export interface WorkDrawing {
  readonly zones: readonly WorkZone[];
}

/** The zones of a work, in stone mm. */
export function openDrawing(work: string, signal: AbortSignal): Promise<WorkDrawing> {
  return ask(`/api/works/${work}`, { signal });
}
