import { told } from '../words/told.ts';
import './WarningList.css';
import type { ComparisonWarning } from '../../records/comparison.ts';
import { Notice } from '../parts/Notice.tsx';
import { say } from '../words/say.ts';

/** What stands against the numbers, each in words with what to do. Nothing where nothing does. */
export function WarningList({ warnings }: { warnings: readonly ComparisonWarning[] }) {
  if (warnings.length === 0) return null;
  return (
    <section className="warning-list" aria-labelledby="warning-title">
      <h2 id="warning-title" className="stamp">
        {say('Bear in mind')}
      </h2>
      {warnings.map(({ code, message }) => {
        const [first, rest] = firstClause(told(message));
        return (
          <Notice key={`${code} ${message}`} kind="caution" title={first}>
            {rest}
          </Notice>
        );
      })}
    </section>
  );
}

/** What is the matter, and what follows from it or is to be done, parted at the first colon or full stop between words. */
function firstClause(message: string): readonly [string, string] {
  const [, first = message, rest = ''] = /^(.+?[.:])\s+(.+)$/s.exec(message) ?? [];
  return [first, rest];
}
