import type { Change } from '../../../records/comparison.ts';
import type { KeptAt } from '../../../records/keptAt.ts';
import type { ReportFigure } from '../../../records/setReport.ts';
import { ledgerState } from '../../editions/ledgerState.ts';
import { changeWord } from '../../proofs/changeWords.ts';
import { materialFigures } from './materialFigures.ts';
import type { ReportInput } from './reportInput.ts';

/** Every figure that a report's words may name, with where it is kept. */
export function reportFigures(input: ReportInput): readonly ReportFigure[] {
  return [
    ...workFigures(input),
    ...comparisonFigures(input),
    ...editionFigures(input),
    ...materialFigures(input),
  ];
}

/**
 * A figure that counts fields of records.
 * @param known whether nothing counted means none; without records to tell, it means that nobody knows
 */
function counted(
  name: string,
  label: string,
  from: readonly KeptAt[],
  { note = '', known = true }: { readonly note?: string; readonly known?: boolean } = {},
): ReportFigure {
  const value = from.length === 0 && !known ? null : from.length;
  return { name, label, value, plusMinus: null, unit: '', from, of: [], how: 'count', note };
}

function workFigures({ works }: ReportInput): ReportFigure[] {
  const stones = [...new Set(works.map(({ work }) => work.stone.id))];
  const runs = works.flatMap((one) => one.runs);
  const stages = runs.flatMap(({ id, stages }) =>
    stages.flatMap(({ state }, index): KeptAt[] =>
      state === 'done' ? [{ record: 'run', id, field: `stages.${index}.state` }] : [],
    ),
  );
  const troubles = runs.flatMap(({ id, facts }) =>
    facts.flatMap(({ fact }, index): KeptAt[] =>
      fact === 'trouble' ? [{ record: 'run', id, field: `facts.${index}.fact` }] : [],
    ),
  );
  return [
    counted(
      'works',
      'Works',
      works.map(({ work }) => ({ record: 'work', id: work.id, field: 'title' })),
    ),
    counted(
      'stones',
      'Stones',
      stones.map((id) => ({ record: 'stone', id, field: 'name' })),
    ),
    counted(
      'runs',
      'Runs logged at the bench',
      runs.map(({ id }) => ({ record: 'run', id, field: 'startedAt' })),
      { note: 'those that began in the period', known: false },
    ),
    counted('stages', 'Stages logged as done', stages, { known: false }),
    counted('troubles', 'Troubles logged', troubles, {
      note: 'a trouble that nobody logged is not among them',
      known: runs.length > 0,
    }),
    counted(
      'pulls',
      'Pulls recorded',
      works.flatMap(({ series }) =>
        series.pulls.map(
          (_, index): KeptAt => ({ record: 'series', id: series.workId, field: `pulls.${index}.number` }),
        ),
      ),
      { note: 'all of the chosen works, whenever they were made', known: false },
    ),
  ];
}

const changes: readonly Change[] = ['held', 'lost', 'lighter', 'darker', 'filled', 'scum', 'undecided'];

function comparisonFigures({ comparisons }: ReportInput): ReportFigure[] {
  const measured = comparisons.filter(({ record }) => record?.verdict === 'ok');
  const zones = measured.flatMap(({ id, record }) =>
    record!.zones.map(({ change }, index) => ({ change, id, field: `record.zones.${index}.change` })),
  );
  return [
    counted(
      'comparisons',
      'Prints measured against their stone',
      measured.map(({ id }) => ({ record: 'comparison', id, field: 'record.verdict' })),
    ),
    counted(
      'zones',
      'Zones measured',
      zones.map(({ id, field }) => ({ record: 'comparison', id, field })),
      { known: false },
    ),
    ...changes.map((change) =>
      counted(
        `zones ${changeWord(change)}`,
        `Zones ${changeWord(change)}`,
        zones
          .filter((zone) => zone.change === change)
          .map(({ id, field }) => ({ record: 'comparison', id, field })),
        { known: measured.length > 0 },
      ),
    ),
  ];
}

function editionFigures({ editions }: ReportInput): ReportFigure[] {
  if (editions.length === 0) return [];
  const ledgers = editions.map(({ edition, entries }) => ({
    id: edition.id,
    state: ledgerState(entries, new Date(0)),
  }));
  const kept = ledgers.filter(({ state }) => state.impressions.length > 0);
  const summed = (field: 'impressions' | 'good' | 'second' | 'torn', label: string): ReportFigure => ({
    name: field,
    label,
    // a ledger that nobody kept is no record of nothing printed
    value:
      kept.length === 0
        ? null
        : kept.reduce(
            (sum, { state }) => sum + (field === 'impressions' ? state.impressions.length : state[field]),
            0,
          ),
    plusMinus: null,
    unit: '',
    from: kept.map(({ id }) => ({ record: 'ledger', id, field })),
    of: [],
    how: 'sum',
    note: kept.length < editions.length ? 'of those editions whose ledger was kept' : '',
  });
  const given = editions.filter(({ edition }) => edition.prints.some(({ kind }) => kind === 'edition'));
  return [
    {
      name: 'edition size',
      label: 'Prints asked for',
      value: editions.reduce((sum, { edition }) => sum + edition.size, 0),
      plusMinus: null,
      unit: '',
      from: editions.map(({ edition }) => ({ record: 'edition', id: edition.id, field: 'size' })),
      of: [],
      how: 'sum',
      note: '',
    },
    {
      name: 'prints numbered',
      label: 'Prints numbered',
      value:
        given.length === 0
          ? null
          : given.reduce(
              (sum, { edition }) => sum + edition.prints.filter(({ kind }) => kind === 'edition').length,
              0,
            ),
      plusMinus: null,
      unit: '',
      from: given.map(({ edition }) => ({ record: 'prints', id: edition.id, field: 'kind:edition' })),
      of: [],
      how: 'sum',
      note: '',
    },
    summed('impressions', 'Prints pulled for the edition'),
    summed('good', 'Good impressions'),
    summed('second', 'Seconds'),
    summed('torn', 'Torn'),
  ];
}
