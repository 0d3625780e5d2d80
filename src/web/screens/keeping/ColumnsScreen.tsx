import '../entries/Entries.css';
import './Keeping.css';
import { useQuery } from '@tanstack/react-query';
import { Link } from 'wouter';
import type { ExportedKind } from '../../../records/exportDescription.ts';
import { exportColumnsKey, readExportColumns } from '../../client/exports.ts';
import { shownFailure } from '../../client/shownFailure.ts';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { Fold } from '../../parts/Fold.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { say } from '../../words/say.ts';

/** What every column of the exported tables means, and in which unit it stands. */
export default function ColumnsScreen() {
  const columns = useQuery({ queryKey: exportColumnsKey, queryFn: readExportColumns });
  return (
    <>
      <PageHead
        stamp={<Link href="/keeping">{say('Copies and labels')}</Link>}
        headline={say('What the tables hold')}
      />
      <div className="entry-body columns">
        {columns.isError && <FailureNotice failure={shownFailure(columns.error)} />}
        {columns.isPending && <p className="soft">{say('Reading the list of columns …')}</p>}
        <p>
          {say(
            'Each kind of record is one table and one list, under its name. An empty cell means: not known. Times carry their zone; lists and parts stand as JSON in one cell. A text that a spreadsheet could take for a formula begins with an apostrophe.',
          )}
        </p>
        {columns.data?.kinds.map((kind) => (
          <Kind key={kind.name} kind={kind} />
        ))}
      </div>
    </>
  );
}

function Kind({ kind: { name, words, columns } }: { kind: ExportedKind }) {
  return (
    <Fold
      title={
        <>
          <Coded>{words.replace(/\.$/, '')}</Coded> <code className="soft">{name}</code>
        </>
      }
    >
      <table className="columns-table" aria-label={name}>
        <thead>
          <tr>
            <th scope="col">{say('Column')}</th>
            <th scope="col">{say('Unit')}</th>
            <th scope="col">{say('What it says')}</th>
          </tr>
        </thead>
        <tbody>
          {columns.map((column) => (
            <tr key={column.name}>
              <th scope="row">
                <code>{column.name}</code>
              </th>
              <td lang="en">{column.unit}</td>
              <td lang="en">
                <Coded>{column.words}</Coded>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </Fold>
  );
}

/** Words of the export, English as its columns are, in which names of fields and files stand between backticks. */
function Coded({ children }: { children: string }) {
  return (
    <span>
      {children.split('`').map((part, index) =>
        // biome-ignore lint/suspicious/noArrayIndexKey: the same words always stand in the same order
        index % 2 === 1 ? <code key={index}>{part}</code> : part,
      )}
    </span>
  );
}
