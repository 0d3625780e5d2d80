import { type CaseSource, readCase } from './caseFeatures.ts';
import { fittingSettings, scoringSettings } from './plantedCase.ts';

/** What a process is asked: cases of one kind, one message each. */
export interface AskedCase {
  readonly settings: 'fitting' | 'scoring';
  readonly source: CaseSource;
  readonly index: number;
}

process.on('message', async ({ settings, source, index }: AskedCase) => {
  const before = process.cpuUsage();
  const read = await readCase(settings === 'fitting' ? fittingSettings : scoringSettings, source, index);
  const { user, system } = process.cpuUsage(before);
  process.send!({ ...read, cpuSeconds: Math.round((user + system) / 1e4) / 100 });
});
