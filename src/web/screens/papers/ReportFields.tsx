import { useQueries, useQuery } from '@tanstack/react-query';
import type { Report } from '../../../records/report.ts';
import { reportWordParts } from '../../../records/report.ts';
import type { ReportFigure } from '../../../records/setReport.ts';
import { listComparisons } from '../../client/comparisons.ts';
import { editionsKey, listEditions } from '../../client/editions.ts';
import { listWorks, worksKey } from '../../client/workList.ts';
import { type ReportTyped, reportFieldId, reportFieldWords } from '../../managers/papers/reportForm.ts';
import { Field } from '../../parts/Field.tsx';
import { Ticks } from '../../parts/Ticks.tsx';
import { say } from '../../words/say.ts';
import type { TypedForm } from '../useTypedForm.ts';
import { FigureWords } from './FigureWords.tsx';
import { ReplacementFields } from './ReplacementFields.tsx';

/** How many a form lists; a longer choice is over HTTP. */
const listedAtOnce = 100;

/** The fields of a report: what it tells of, then its words part by part. */
export function ReportFields({
  form,
  figures,
  offered,
}: {
  form: TypedForm<Report, ReportTyped>;
  figures: readonly ReportFigure[];
  /** Those that can be put among its words. */
  offered: readonly ReportFigure[];
}) {
  const line = (field: 'title' | 'reader' | 'from' | 'to', type = 'text') => (
    <Field
      label={reportFieldWords[field]}
      type={type}
      autoComplete="off"
      maxLength={200}
      value={form.values[field]}
      trouble={form.troubleOf(field)}
      onChange={(event) => form.set({ [field]: event.target.value })}
    />
  );
  return (
    <>
      <p className="report-purpose">
        {say(
          'Two things are yours: tick what it tells of, and write a few sentences to each part. Tables, pictures and what nobody recorded come from the records by themselves.',
        )}
      </p>
      <h2 className="big">{say('What it tells of')}</h2>
      {line('title')}
      {line('reader')}
      <div className="fields">
        {line('from', 'date')}
        {line('to', 'date')}
      </div>
      <div id={reportFieldId('works')} tabIndex={-1}>
        <ChosenRecords form={form} />
      </div>
      <h2 className="big">{say('In your own words')}</h2>
      <p className="soft">
        {say('A figure that you put among them stays that of the records, and changes with them.')}
      </p>
      {reportWordParts.map((part) => (
        <FigureWords
          key={part}
          id={reportFieldId(part)}
          label={reportFieldWords[part]}
          value={form.values[part]}
          figures={figures}
          offered={offered}
          onChange={(words) => form.set({ [part]: words })}
        />
      ))}
      <h2 className="big">{say('What took the place of what')}</h2>
      <ReplacementFields form={form} />
    </>
  );
}

function ChosenRecords({ form }: { form: TypedForm<Report, ReportTyped> }) {
  const works = useQuery({
    queryKey: [...worksKey, 'for reports'],
    queryFn: ({ signal }) => listWorks({ search: '', putBy: 'all', stage: null }, null, signal, listedAtOnce),
  });
  const comparisons = useQuery({
    queryKey: ['comparisons', 'for reports'],
    queryFn: () => listComparisons('', null, listedAtOnce),
  });
  const chosen = idsIn(form.values.works);
  const editions = useQueries({
    queries: chosen.map((id) => ({ queryKey: editionsKey(id), queryFn: () => listEditions(id) })),
  }).flatMap(({ data }) => data ?? []);
  const ticks = (
    field: 'works' | 'comparisons' | 'editions',
    options: readonly (readonly [string, string])[],
    none: string,
  ) =>
    options.length === 0 ? (
      <p className="soft">{none}</p>
    ) : (
      <Ticks
        label={reportFieldWords[field]}
        values={idsIn(form.values[field])}
        options={options}
        onTick={(ticked) => form.set({ [field]: ticked.join(' ') })}
      />
    );
  return (
    <>
      {ticks(
        'works',
        (works.data?.works ?? []).map(({ id, title, stoneName }) => [id, `${title}, ${stoneName}`]),
        say('There is no work yet that it could tell of.'),
      )}
      {ticks(
        'comparisons',
        (comparisons.data?.comparisons ?? []).map(({ id, title }) => [id, title]),
        say('There is no comparison yet that it could show.'),
      )}
      {ticks(
        'editions',
        editions.map(({ id, title }) => [id, title]),
        chosen.length === 0
          ? say('Choose works first: their editions then stand here.')
          : say('The works chosen have no edition.'),
      )}
    </>
  );
}

function idsIn(text: string): readonly string[] {
  return text.split(' ').filter(Boolean);
}
