import './WarningList.css';
import type { ComparisonWarning } from '../../records/comparison.ts';
import { Notice } from '../parts/Notice.tsx';

/** What stands against the numbers, each in words with what to do. Nothing where nothing does. */
export function WarningList({ warnings }: { warnings: readonly ComparisonWarning[] }) {
  if (warnings.length === 0) return null;
  return (
    <section className="warning-list" aria-labelledby="warning-title">
      <h2 id="warning-title" className="stamp">
        Bear in mind
      </h2>
      {warnings.map(({ code, message }) => (
        <Notice key={`${code} ${message}`} kind="caution" title={message} />
      ))}
    </section>
  );
}
