import { useQuery } from '@tanstack/react-query';
import { Link } from 'wouter';
import { copiesKey, readCopies } from '../client/copies.ts';
import { dayText } from '../managers/localMoment.ts';
import { say } from '../words/say.ts';
import { sayRich } from '../words/sayRich.ts';
import { Notice } from './Notice.tsx';

/** Often enough for something that happens once a day, ms. */
const askEveryMs = 600_000;

/** Says that the daily copy failed, and which is the last good one; nothing while all is well. */
export function CopiesNotice() {
  const copies = useQuery({ queryKey: copiesKey, queryFn: readCopies, refetchInterval: askEveryMs });
  const notMade = copies.data?.notMade;
  if (!notMade) return null;
  const good = copies.data?.lastGood;
  return (
    <div className="list-foot">
      <Notice kind="caution" title={say('Today’s copy of the records could not be made.')}>
        {good
          ? sayRich(
              '{message} {remedy} It is tried again every hour. The last good copy is of {day}: {file}. <link>See the copies</link>',
              {
                message: notMade.failure.message,
                remedy: notMade.failure.remedy,
                day: dayText(good.madeAt),
                file: good.file,
                link: (words) => <Link href="/keeping">{words}</Link>,
              },
            )
          : sayRich(
              '{message} {remedy} It is tried again every hour. There is no good copy yet. <link>See the copies</link>',
              {
                message: notMade.failure.message,
                remedy: notMade.failure.remedy,
                link: (words) => <Link href="/keeping">{words}</Link>,
              },
            )}
      </Notice>
    </div>
  );
}
