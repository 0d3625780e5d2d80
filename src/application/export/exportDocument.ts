import { csvCell } from './csvText.ts';
import { exportKinds } from './exportKinds.ts';

/** What docs/export.md says: made from the same list as the files. */
export function exportDocument(): string {
  const head = `# What an export holds

\`stonetone export --data DIR --to FOLDER\` and \`GET /api/export.zip\` write the same files: of each kind of record one CSV
and one JSON file, all at one moment, also while the room goes on writing. This page is made from the list that writes
them (\`src/application/export\`); a test holds it to that.

- **CSV** as in RFC 4180, UTF-8, lines end with CR LF, the first line names the columns. An empty cell: not known. Lists
  and parts are JSON in one cell. A text that begins with \`=\`, \`+\`, \`-\`, \`@\`, a tab or a return has an apostrophe before
  it (${csvCell('=1+1')}), so that no spreadsheet takes it for a formula; numbers stay as they are.
- **JSON**: \`{schema: "stonetone/export/2", kind, records: […]}\`, one record a line, whole, with all that the columns
  say and more.
- Times are ISO 8601 with zone. Ids refer from file to file. Photographs and results are no part of it: a backup is.
- Examples that read it: \`examples/works_and_drift.py\`, \`examples/works_and_drift.R\`.
`;
  const kinds = exportKinds.map(({ name, words, columns }) => {
    const rows = columns.map((column) => `| \`${column.name}\` | ${column.unit} | ${column.words} |`);
    return `\n## ${name}\n\n${words}\n\n| column | unit | |\n| --- | --- | --- |\n${rows.join('\n')}\n`;
  });
  return head + kinds.join('');
}
