import type { Edition } from '../../records/edition.ts';
import type { KeptPlan, KeptSecondEtch } from '../../records/keptPlan.ts';
import type { LedgerEntry } from '../../records/ledger.ts';
import type { Pull } from '../../records/pull.ts';
import type { BookChapter, BookEntry } from '../../records/stoneBook.ts';
import type { KeptStone } from '../../records/stoneEntry.ts';
import type { Approval } from '../../records/workSeries.ts';
import { ledgerState } from '../editions/ledgerState.ts';
import { gapsOf, type WorkRecords } from './gaps.ts';
import { spanWords } from './paperWords.ts';

/** What is kept of one work, for its chapter. */
export interface BookWork extends WorkRecords {
  readonly plans: readonly Pick<KeptPlan, 'id' | 'createdAt' | 'table'>[];
  readonly secondEtches: readonly KeptSecondEtch[];
  readonly pulls: readonly Pull[];
  readonly approvals: readonly Pick<Approval, 'pull' | 'givenAt' | 'artist' | 'printer' | 'withdrawn'>[];
  readonly editions: readonly { readonly edition: Edition; readonly entries: readonly LedgerEntry[] }[];
}

/** What a stone itself went through: graining and level readings. */
export function stoneChapter(stone: KeptStone): BookChapter {
  const at = (field: string) => ({ record: 'stone' as const, id: stone.id, field });
  const entries: BookEntry[] = [
    ...stone.graining.map(({ at: moment, grit, charges, minutes, note }, index) => ({
      at: moment,
      what: `grained with ${grit} grit, ${charges} ${charges === 1 ? 'charge' : 'charges'}`,
      more: [minutes === null ? 'minutes not recorded' : `${minutes} min`, note].filter(Boolean).join(', '),
      from: at(`graining.${index}`),
    })),
    ...stone.straightedge.map(({ at: moment, gapMm, where }, index) => ({
      at: moment,
      what: `level read: largest gap ${gapMm} mm`,
      more: where,
      from: at(`straightedge.${index}`),
    })),
  ];
  return {
    name: `The stone ${stone.name}`,
    entries: inOrder(entries),
    notRecorded: [
      ...(stone.graining.length === 0 ? ['its graining'] : []),
      ...(stone.straightedge.length === 0 ? ['how level it is'] : []),
    ],
  };
}

/** What one work went through, from every record that tells of it. */
export function workChapter(kept: BookWork): BookChapter {
  const { work } = kept;
  const entries: BookEntry[] = [
    {
      at: work.createdAt,
      what: work.origin.kind === 'new' ? 'entered here' : 'entered here halfway',
      more: work.note,
      from: { record: 'work', id: work.id, field: 'createdAt' },
    },
    ...kept.plans.map(({ id, createdAt, table }) => ({
      at: createdAt,
      what: 'first etch planned',
      more: `${table.name}, issue ${table.version}`,
      from: { record: 'plan' as const, id, field: 'createdAt' },
    })),
    ...kept.secondEtches.map(({ id, createdAt, plan }) => ({
      at: createdAt,
      what: `second etch planned, ${plan.line}`,
      more: '',
      from: { record: 'second-etch' as const, id, field: 'createdAt' },
    })),
    ...runEntries(kept),
    ...kept.pulls.map((pull) => pullEntry(pull)),
    ...kept.approvals.map(({ pull, givenAt, artist, printer, withdrawn }) => ({
      at: givenAt,
      what: `pull ${pull} good to print`,
      more: `${artist}, ${printer}${withdrawn ? `; no longer good to print, says ${withdrawn.who}: ${withdrawn.why}` : ''}`,
      from: { record: 'series' as const, id: work.id, field: 'pulls' },
    })),
    ...kept.comparisons.map(({ id, createdAt, title, finding }) => ({
      at: createdAt,
      what: `${title}: stone against print`,
      more: finding ?? 'not measured',
      from: { record: 'comparison' as const, id, field: 'finding' },
    })),
    ...kept.editions.flatMap(({ edition, entries: ledger }) => editionEntries(edition, ledger)),
  ];
  return { name: work.title, entries: inOrder(entries), notRecorded: gapsOf(kept) };
}

function runEntries({ runs }: BookWork): BookEntry[] {
  return runs.flatMap(({ id, stages }) =>
    stages.map(
      ({ startedAt, endedAt, name, state, spent }, index): BookEntry => ({
        at: startedAt ?? endedAt,
        what: state === 'skipped' ? `${name}: left out` : state === 'open' ? `${name}: begun` : name,
        more: state === 'done' ? spanWords(spent) : '',
        from: { record: 'run', id, field: `stages.${index}` },
      }),
    ),
  );
}

function pullEntry({ workId, number, kind, paper, madeAt, remarks, faults }: Pull): BookEntry {
  const open = faults.filter(({ closed }) => closed === null).map(({ words }) => words);
  return {
    at: madeAt,
    what: `pull ${number}, ${kind.replace('-', ' ')}, on ${paper.words}`,
    more: [...open, remarks].filter(Boolean).join('; '),
    from: { record: 'series', id: workId, field: 'pulls' },
  };
}

function editionEntries(edition: Edition, ledger: readonly LedgerEntry[]): BookEntry[] {
  const { impressions, good, second, torn } = ledgerState(ledger, new Date(0));
  const first = impressions[0];
  const from = (field: string) => ({ record: 'edition' as const, id: edition.id, field });
  return [
    ...(first
      ? [
          {
            at: first.at,
            what: `${edition.title}: printing begun`,
            more: `${impressions.length} prints in all: ${good} good, ${second} seconds, ${torn} torn`,
            from: { record: 'ledger' as const, id: edition.id, field: 'impressions' },
          },
        ]
      : []),
    ...(edition.signedOn === null
      ? []
      : [
          {
            at: edition.signedOn,
            what: `${edition.title}: signed`,
            more: edition.signature,
            from: from('signedOn'),
          },
        ]),
    ...(edition.cancelledOn === null
      ? []
      : [
          {
            at: edition.cancelledOn,
            what: `${edition.title}: image cancelled`,
            more: edition.cancellation,
            from: from('cancelledOn'),
          },
        ]),
  ];
}

/** By time; what carries none comes first, since it can't be placed. */
function inOrder(entries: readonly BookEntry[]): readonly BookEntry[] {
  const moment = ({ at }: BookEntry) => (at === null ? Number.NEGATIVE_INFINITY : Date.parse(at));
  return entries.toSorted((one, other) => {
    const [first, second] = [moment(one), moment(other)];
    return first === second ? 0 : first < second ? -1 : 1;
  });
}
