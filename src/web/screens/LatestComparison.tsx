import './ComparisonList.css';
import { useQuery } from '@tanstack/react-query';
import { Link } from 'wouter';
import { listComparisons } from '../client/comparisons.ts';
import { listKey } from '../client/events.ts';
import { RackItem } from '../parts/RackItem.tsx';
import { say } from '../words/say.ts';

/** The comparison entered last, for the foot of the first page: what was found, and the way to all of them. */
export function LatestComparison() {
  const latest = useQuery({ queryKey: [...listKey, 'latest'], queryFn: () => listComparisons('', null, 1) });
  const comparison = latest.data?.comparisons[0];
  if (!comparison) return null;
  return (
    <section className="latest" aria-labelledby="latest-comparison">
      <h2 id="latest-comparison" className="stamp">
        {say('Compared last')}
      </h2>
      <ul className="rack few">
        <RackItem comparison={comparison} />
      </ul>
      <p className="list-note">
        <Link href="/comparisons">{say('All comparisons')}</Link>
      </p>
    </section>
  );
}
