import type { RunState } from '../../records/bench.ts';
import type {
  DocumentationLine,
  DocumentationPart,
  EditionDocumentation,
  RecordedAt,
} from '../../records/documentation.ts';
import type { Edition, PrintKind } from '../../records/edition.ts';
import type { KeptPlan } from '../../records/keptPlan.ts';
import type { LedgerEntry, LedgerState } from '../../records/ledger.ts';
import type { WorkEntry } from '../../records/workEntry.ts';
import { isoDayWords } from '../../science/calendar/dateWords.ts';
import { etches } from '../bench/stagesDone.ts';
import { mediumOf } from '../etch/mediumCatalogue.ts';
import { ledgerState } from './ledgerState.ts';
import { openMatters } from './openMatters.ts';

interface Kept {
  readonly edition: Edition;
  readonly work: WorkEntry;
  readonly entries: readonly LedgerEntry[];
  /** The plan that the work's runs followed, else the newest; null: none. */
  readonly plan: KeptPlan | null;
  /** Oldest first. */
  readonly runs: readonly RunState[];
}

/** Lines of the sheet for each kind of print, in the order in which the trade lists them. */
const kindLines: readonly (readonly [PrintKind, string])[] = [
  ['edition', 'Numbered'],
  ['artist', 'Artist’s proofs (A.P.)'],
  ['printer', 'Printer’s proofs (P.P.)'],
  ['trial', 'Trial proofs (T.P.)'],
  ['approval', 'Approval proof (good to print)'],
  ['archive', 'Archive prints'],
  ['cancellation', 'Cancellation proof (C.P.)'],
  ['destroyed', 'Destroyed'],
];

/**
 * What the trade records of an edition, from what is kept and nothing else; what isn't kept is a blank line. Which
 * things are recorded: common practice, no source.
 */
export function documentationOf({ edition, work, entries, plan, runs }: Kept): EditionDocumentation {
  const ledger = ledgerState(entries, new Date(0));
  const { stone } = work;
  const of = (field: keyof Edition & string, shown: string): RecordedAt => ({
    record: 'edition',
    id: edition.id,
    field,
    shown,
  });
  const words = (label: string, field: keyof Edition & string): DocumentationLine => {
    const typed = String(edition[field] ?? '').trim();
    const text = field === 'signedOn' || field === 'cancelledOn' ? isoDayWords(typed) : typed;
    return line(label, text, [of(field, text)]);
  };
  const onStone = (field: 'name' | 'widthMm' | 'heightMm' | 'colour', shown: string): RecordedAt => ({
    record: 'stone',
    id: stone.id,
    field,
    shown,
  });
  return {
    editionId: edition.id,
    title: edition.title,
    parts: [
      {
        name: 'The work',
        lines: [
          words('Title', 'title'),
          line('Image', work.title, [{ record: 'work', id: work.id, field: 'title', shown: work.title }]),
          words('Artist', 'artist'),
          words('Printed by', 'printer'),
        ],
      },
      {
        name: 'Stone and drawing',
        lines: [
          line('Stone', stone.name, [onStone('name', stone.name)]),
          line('Size of the stone', `${stone.widthMm} × ${stone.heightMm} mm`, [
            onStone('widthMm', String(stone.widthMm)),
            onStone('heightMm', String(stone.heightMm)),
          ]),
          line('Colour of the stone', stone.colour, [onStone('colour', stone.colour)]),
          edition.drawingMaterials.trim() === ''
            ? drawnWith(work)
            : words('Drawing materials', 'drawingMaterials'),
          edition.etches.trim() === '' ? etchedWith(plan, runs) : words('Etches', 'etches'),
        ],
      },
      {
        name: 'Paper, ink, press',
        lines: [...paperLines(edition, of), words('Ink', 'ink'), words('Press', 'press')],
      },
      { name: 'Printing', lines: printingLines(edition, ledger) },
      {
        name: 'The prints',
        lines: kindLines.map(([kind, label]) =>
          kindLine(edition, kind, kind === 'edition' && edition.signedOn ? 'Numbered and signed' : label),
        ),
      },
      {
        name: 'Approval, signature, end of the stone',
        lines: [
          words('Approved by', 'approvedBy'),
          words('Signature and place', 'signature'),
          words('Signed on', 'signedOn'),
          words('Chop', 'chop'),
          words('How the image was cancelled', 'cancellation'),
          words('Cancelled on', 'cancelledOn'),
          words('Remarks', 'note'),
        ],
      },
    ] satisfies readonly DocumentationPart[],
    open: openMatters(edition, ledger),
  };
}

/** What prints on no paper is no drawing material. */
const bare: readonly string[] = ['blank', 'stop-out', 'scraped-white'];

/** What the zones were drawn with, where nobody wrote it; `shown` is the medium's name. */
function drawnWith({ id, zones }: WorkEntry): DocumentationLine {
  const from = zones.flatMap(({ medium, intention }, index): RecordedAt[] => {
    if ((intention ?? 'drawn') !== 'drawn' || bare.includes(medium)) return [];
    const shown = mediumOf(medium)?.name ?? medium;
    return [{ record: 'work', id, field: `zones.${index}.medium`, shown }];
  });
  return line('Drawing materials', [...new Set(from.map(({ shown }) => shown))].join(', '), from);
}

/** What the log tells of etching, and with what by the plan that it followed, where nobody wrote it. */
function etchedWith(plan: KeptPlan | null, runs: readonly RunState[]): DocumentationLine {
  const told = runs.flatMap(({ id, planId, stages }) =>
    stages.flatMap(({ stage, state, name }, index) =>
      etches.includes(stage) && state === 'done' ? [{ id, planId, stage, name, index }] : [],
    ),
  );
  const from: RecordedAt[] = [];
  const said = told.map(({ id, planId, stage, name, index }) => {
    from.push({ record: 'run', id, field: `stages.${index}.name`, shown: name });
    if (stage !== 'first-etch' || plan === null || planId !== plan.id) return name;
    const names = plan.plan.zones.flatMap(({ etch }, zone): RecordedAt[] =>
      etch === null
        ? []
        : [{ record: 'plan', id: plan.id, field: `plan.zones.${zone}.etch.name`, shown: etch.name }],
    );
    const each = names.filter(({ shown }, at) => names.findIndex((one) => one.shown === shown) === at);
    from.push(...each);
    return each.length === 0 ? name : `${name} (planned: ${each.map(({ shown }) => shown).join(', ')})`;
  });
  return line('Etches', [...new Set(said)].join('; '), from);
}

function line(label: string, value: string, from: readonly RecordedAt[]): DocumentationLine {
  const known = value.trim() !== '';
  return { label, value: known ? value : null, from: known ? from : [] };
}

function paperLines(
  { paper }: Edition,
  of: (field: 'paper', shown: string) => RecordedAt,
): readonly DocumentationLine[] {
  const at = (field: string, shown: string): RecordedAt => ({
    ...of('paper', shown),
    field: `paper.${field}`,
  });
  const size = paper.pieceMm === null ? 'sheetMm' : 'pieceMm';
  const mm = paper[size];
  return [
    line('Paper', paper.name, [at('name', paper.name)]),
    line('Paper, g/m²', paper.gramsPerM2 === null ? '' : String(paper.gramsPerM2), [
      at('gramsPerM2', String(paper.gramsPerM2)),
    ]),
    line(
      'Size of the sheet',
      mm === null ? '' : `${mm[0]} × ${mm[1]} mm`,
      mm === null ? [] : [at(`${size}.0`, String(mm[0])), at(`${size}.1`, String(mm[1]))],
    ),
    line('Printed', paper.damped === 'unknown' ? '' : paper.damped === 'yes' ? 'damp' : 'dry', [
      at('damped', ''),
    ]),
  ];
}

function printingLines(edition: Edition, ledger: LedgerState): readonly DocumentationLine[] {
  const at = (field: string, shown: string): RecordedAt => ({
    record: 'ledger',
    id: edition.id,
    field,
    shown,
  });
  const count = (label: string, field: 'impressions' | 'good' | 'second' | 'torn' | 'charges') => {
    const value = field === 'impressions' ? ledger.impressions.length : ledger[field];
    // a ledger that nobody kept is no record of nothing printed, nor one without charges of none made
    const kept = ledger.impressions.length > 0 && (field !== 'charges' || value > 0);
    return line(label, kept ? String(value) : '', [at(field, String(value))]);
  };
  const day = (label: string, which: 'first' | 'last') => {
    const impression = ledger.impressions.at(which === 'first' ? 0 : -1);
    const text = impression === undefined ? '' : isoDayWords(impression.at);
    return line(label, text, [at(which, text)]);
  };
  return [
    day('First print pulled', 'first'),
    day('Last print pulled', 'last'),
    count('Prints pulled in all', 'impressions'),
    count('Good', 'good'),
    count('Seconds', 'second'),
    count('Torn', 'torn'),
    count('Charges of ink', 'charges'),
  ];
}

function kindLine(edition: Edition, kind: PrintKind, label: string): DocumentationLine {
  const count = edition.prints.filter((print) => print.kind === kind).length;
  // what was never entered is not known to be none
  const known = count > 0;
  const from: RecordedAt = { record: 'prints', id: edition.id, field: `kind:${kind}`, shown: String(count) };
  if (kind !== 'edition' || !known) return line(label, known ? String(count) : '', [from]);
  const size: RecordedAt = { record: 'edition', id: edition.id, field: 'size', shown: String(edition.size) };
  const whole = edition.size;
  return line(label, `${count} of ${whole}`, [from, size]);
}
