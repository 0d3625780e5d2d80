import { useQuery } from '@tanstack/react-query';
import { Link } from 'wouter';
import type { WorkProtocol } from '../../../records/workProtocol.ts';
import { ownProtocolKey, readOwnProtocol } from '../../client/protocols.ts';
import { shownFailure } from '../../client/shownFailure.ts';
import { protocolsBeside } from '../../managers/papers/protocolLines.ts';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { midSentence } from '../../words/midSentence.ts';
import { say } from '../../words/say.ts';
import { sayRich } from '../../words/sayRich.ts';

/** Another studio's protocol and that of one's own work, line by line. */
export function ProtocolBeside({ theirs, workId }: { theirs: WorkProtocol; workId: string }) {
  const own = useQuery({
    queryKey: ownProtocolKey(workId),
    queryFn: () => readOwnProtocol(workId),
    staleTime: 0,
  });
  if (own.isError) return <FailureNotice failure={shownFailure(own.error)} />;
  if (own.data === undefined)
    return <p className="soft">{say('Putting the protocol of your work together …')}</p>;
  const ours = own.data;
  const parts = protocolsBeside(theirs, ours);
  const untold = parts.flatMap((part) => part.untold.map((label) => midSentence(label)));
  return (
    <div className="protocol-beside">
      <p className="soft">
        {sayRich(
          'Both as they were written, not judged: stones, water, air and inks differ between rooms, and a test patch settles more than a table. <link>Open {title}</link>',
          { link: (words) => <Link href={`/works/${workId}`}>{words}</Link>, title: ours.title },
        )}
      </p>
      {parts
        .filter(({ lines }) => lines.length > 0)
        .map(({ name, lines }) => (
          <table key={name} aria-label={name}>
            <caption className="big">{name}</caption>
            <thead>
              <tr>
                <th scope="col" className="protocol-what">
                  {say('What')}
                </th>
                <th scope="col">{say('Theirs, {title}', { title: theirs.title })}</th>
                <th scope="col">{say('Yours, {title}', { title: ours.title })}</th>
              </tr>
            </thead>
            <tbody>
              {lines.map(({ key, label, theirs: other, ours: mine }) => (
                <tr key={key}>
                  <th scope="row">{label}</th>
                  <td data-side="Theirs">{other}</td>
                  <td data-side="Yours">{mine}</td>
                </tr>
              ))}
            </tbody>
          </table>
        ))}
      {untold.length > 0 && (
        <p>{say('Told by neither: {untold}. Any of it may differ.', { untold: untold.join(', ') })}</p>
      )}
    </div>
  );
}
