import { engineVersion } from '../application/engineVersion.ts';
import { failure } from '../foundation/failure.ts';
import { compare } from './compare.ts';
import { exitDone } from './exitStatus.ts';
import { helpText } from './help.ts';
import { mix } from './mix.ts';
import { plan } from './plan.ts';
import { reportFailure } from './report.ts';
import { serve } from './serve.ts';

/** Runs one command. @returns the exit status. */
export async function main(words: readonly string[]): Promise<number> {
  const [command, ...rest] = words;
  switch (command) {
    case 'compare':
      return compare(rest);
    case 'serve':
      return serve(rest);
    case 'plan':
      return plan(rest);
    case 'mix':
      return mix(rest);
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
