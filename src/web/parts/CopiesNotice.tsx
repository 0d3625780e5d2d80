import { useQuery } from '@tanstack/react-query';
import { Link } from 'wouter';
import { copiesKey, readCopies } from '../client/copies.ts';
import { dayText } from '../managers/localMoment.ts';
import { Notice } from './Notice.tsx';

/** Often enough for something that happens once a day, ms. */
const askEveryMs = 600_000;

/** Says that the daily copy failed, and which is the last good one; nothing while all is well. */
export function CopiesNotice() {
  const copies = useQuery({ queryKey: copiesKey, queryFn: readCopies, refetchInterval: askEveryMs });
  const failed = copies.data?.failed;
  if (!failed) return null;
  const good = copies.data?.lastGood;
  return (
    <div className="list-foot">
      <Notice kind="caution" title="Today’s copy of the records could not be made.">
        {failed.failure.message} {failed.failure.remedy} It is tried again every hour.{' '}
        {good
          ? `The last good copy is of ${dayText(good.madeAt)}: ${good.file}.`
          : 'There is no good copy yet.'}{' '}
        <Link href="/keeping">See the copies</Link>
      </Notice>
    </div>
  );
}
