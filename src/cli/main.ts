import { engineVersion } from '../application/engineVersion.ts';
import { failure } from '../foundation/failure.ts';
import { exitDone } from './exitStatus.ts';
import { helpText } from './help.ts';
import { reportFailure } from './report.ts';

/** Runs one command; each is loaded only when asked for, as some bring heavy libraries. @returns the exit status. */
export async function main(words: readonly string[]): Promise<number> {
  const [command, ...rest] = words;
  switch (command) {
    case 'compare':
      return (await import('./compare.ts')).compare(rest);
    case 'serve':
      return (await import('./serve.ts')).serve(rest);
    case 'plan':
      return (await import('./plan.ts')).plan(rest);
    case 'mix':
      return (await import('./mix.ts')).mix(rest);
    case 'series':
      return (await import('./series.ts')).series(rest);
    case 'ink':
      return (await import('./ink.ts')).ink(rest);
    case 'trial':
      return (await import('./trial.ts')).trial(rest);
    case 'edition':
      return (await import('./edition.ts')).edition(rest);
    case 'suspects':
      return (await import('./suspects.ts')).suspects(rest);
    case 'room':
      return (await import('./room.ts')).room(rest);
    case 'export':
      return (await import('./export.ts')).exportRecords(rest);
    case 'demo':
      return (await import('./demo.ts')).demo(rest);
    case 'backup':
      return (await import('./backup.ts')).backup(rest);
    case 'restore':
      return (await import('./restore.ts')).restore(rest);
    case 'verify':
      return (await import('./verify.ts')).verify(rest);
    case 'version':
      console.log(engineVersion);
      return exitDone;
    case undefined:
    case 'help':
    case '--help':
      console.log(helpText);
      return exitDone;
    default:
      return reportFailure(failure('argument-unknown', { name: command }));
  }
}
