import type { ProtocolEtch, WorkProtocol } from '../../records/workProtocol.ts';
import { isoDayWords } from '../../science/calendar/dateWords.ts';
import { lineRule } from '../../studio/bench/lineStages.ts';
import { pouredAmountWords } from '../../studio/bench/pouredWords.ts';
import { areaDoubtWords, doubtWords } from '../../studio/etch/areaDoubt.ts';
import { mediumOf } from '../../studio/etch/mediumCatalogue.ts';
import { contactWords, plannedWords, spanWords, timeWords } from '../../studio/papers/paperWords.ts';
import { changeWord } from '../../studio/proofs/changeWords.ts';
import { coverageFigure } from '../../studio/proofs/coverageWords.ts';
import { asWritten } from '../../words/asWritten.ts';
import { inchUnitOf } from '../../words/lengths.ts';
import { type SheetContent, sheetPdf } from './pdfDocument.ts';
import { plainTable } from './plainTable.ts';
import { headline, note, paragraph, partName, rule, stamp } from './sheetParts.ts';

const blank = 'not recorded';

/**
 * A work's protocol as a PDF for another studio: materials, what was laid where with planned and done, the stages, what
 * went otherwise, what came of it, and what was not recorded. Equal input gives equal bytes.
 */
export async function workProtocolPdf(protocol: WorkProtocol): Promise<Uint8Array> {
  const { stone, madeAt, engine } = protocol;
  const title = asWritten(protocol.title);
  return sheetPdf({
    title: `${title}: protocol`,
    createdAt: new Date(madeAt),
    foot: `${title}, protocol of ${isoDayWords(madeAt)}. ${asWritten(engine)}. From records alone; nothing is filled in.`,
    content: [
      stamp(`Protocol of a work · stone ${asWritten(stone.name)}`),
      headline(title),
      rule(1.5),
      paragraph(
        `Stone ${asWritten(stone.name)}, ${stone.widthMm} × ${stone.heightMm} mm${stone.colour === '' ? '' : `, ${stone.colour}`}. ` +
          tableWords(protocol),
      ),
      ...past(protocol),
      ...materials(protocol),
      ...etches(protocol),
      ...poured(protocol),
      ...secondEtches(protocol),
      ...stages(protocol),
      ...list('Otherwise than planned', protocol.deviations, 'The log tells of nothing that went otherwise.'),
      ...outcome(protocol),
      ...list('Not recorded', protocol.notRecorded, 'Nothing that is asked for here is missing.'),
      note(
        'Times marked “remembered” were told afterwards. Planned amounts are those to measure out, losses included. ' +
          `${areaDoubtWords} ` +
          'What a safety data sheet or a local code says comes before anything here.',
      ),
    ],
  });
}

function tableWords({ table, people, filmMm }: WorkProtocol): string {
  if (table === null) return 'No first etch was planned from a table.';
  const hands = people === null ? '' : `, ${people} ${people === 1 ? 'person' : 'people'}`;
  return `Etch table: ${table.name}, issue ${table.version}; film ${filmMm ?? blank} mm${hands}.`;
}

function past({ origin, past: facts }: WorkProtocol): SheetContent[] {
  if (origin === 'new') return [];
  return [
    partName('Before it was entered, as told'),
    plainTable(
      [110, '*'],
      facts.map(({ fact, value }) => [fact.replaceAll('-', ' '), value ?? 'not known']),
    ),
  ];
}

function materials({ materials: rows }: WorkProtocol): SheetContent[] {
  if (rows.length === 0) return [];
  const head = ['Material', 'To have ready', 'On 100 cm²', 'Strength', 'pH'];
  return [
    partName('Materials of the first etch'),
    plainTable(
      ['*', 90, 70, 110, 60],
      rows.map(({ name, ml, drops, mlPer100Cm2, gramsPerLitre, pH, gum }) => [
        name,
        drops === null ? `${ml} ml` : `${ml} ml (${drops} drops)`,
        mlPer100Cm2 === null ? blank : `${mlPer100Cm2} ml`,
        name !== 'tannic solution'
          ? blank
          : `${gramsPerLitre === null ? blank : `${gramsPerLitre} g/l`}${gum === null ? '' : gum ? ', with gum' : ', no gum'}`,
        pH === null ? blank : String(pH),
      ]),
      { head },
    ),
  ];
}

function etches(protocol: WorkProtocol): SheetContent[] {
  const { etches: rows } = protocol;
  if (rows.length === 0) return [];
  const inch = inchUnitOf('cm²');
  const per = inch?.per ?? 1;
  return [
    partName('First etch, place by place'),
    plainTable(
      [16, 84, 58, '*', 82, 88],
      rows.map((etch) => [
        asWritten(etch.letter),
        etch.medium === null ? etch.name : `${asWritten(etch.name)}, ${mediumName(protocol, etch.medium)}`,
        `${rounded(etch.areaCm2 / per)} ${doubtWords(etch.areaPlusMinusCm2 === null ? null : etch.areaPlusMinusCm2 / per)}`,
        etchWords(etch),
        plannedWords(etch),
        contactWords(etch.done),
      ]),
      { head: ['', 'Place', inch?.unit ?? 'cm²', 'Laid', 'Planned', 'Done'] },
    ),
  ];
}

/** As the studio that wrote it calls a medium, else as the catalogue does, else its own word. */
function mediumName({ etches: all }: WorkProtocol, medium: string): string {
  const told = all.find((etch) => etch.medium === medium)?.mediumName;
  return told ?? mediumOf(medium)?.name ?? medium;
}

function rounded(value: number): string {
  return String(Math.round(value * 10) / 10);
}

function poured({ poured: rows }: WorkProtocol): SheetContent[] {
  if (rows.length === 0) return [];
  return [
    partName('Poured and used, by the log'),
    plainTable(
      [84, '*', 70, '*', '*'],
      rows.map(({ stage, material, plannedMl, amounts, alsoUnmeasured }) => [
        stage === null ? 'no stage named' : lineRule(stage).name,
        material,
        plannedMl === null ? 'no plan' : `${plannedMl} ml`,
        amounts.length === 0
          ? alsoUnmeasured
            ? 'used, not measured'
            : `${blank}: only planned`
          : `${amounts.map(pouredAmountWords).join('; ')}${alsoUnmeasured ? '; and more, not measured' : ''}`,
        amounts.length === 0
          ? blank
          : amounts
              .map(({ per100Cm2, unit }) => (per100Cm2 === null ? blank : `${per100Cm2} ${unit}`))
              .join('; '),
      ]),
      { head: ['Stage', 'Material', 'Planned', 'Done', 'On 100 cm²'] },
    ),
    note('On 100 cm²: of the places that take it in the first etch, of the whole stone in other stages.'),
  ];
}

function etchWords({ etch, parts, mlPlusMinus }: ProtocolEtch): string {
  if (etch === null) return 'the table has no rule';
  return `${etch}: ${parts
    .map(
      ({ material, ml, drops, mlPer100Cm2 }) =>
        `${ml} ml ${material}${drops === null ? '' : ` (${drops} drops)`}${
          mlPer100Cm2 === null ? '' : `, ${mlPer100Cm2} on 100 cm²`
        }`,
    )
    .join(
      '; ',
    )}; ${mlPlusMinus === null ? '± unknown' : `${doubtWords(mlPlusMinus)} ml from the area alone`}`;
}

function secondEtches({ secondEtches: all }: WorkProtocol): SheetContent[] {
  return all.flatMap(({ line, zones }) => [
    partName(`Second etch, ${line}, as planned`),
    plainTable(
      [110, 110, '*'],
      zones.map(({ name, etch, why }) => [asWritten(name), etch ?? 'none here', why]),
    ),
  ]);
}

function stages({ stages: rows }: WorkProtocol): SheetContent[] {
  return [
    partName('Stages, in the order in which they were done'),
    rows.length === 0
      ? paragraph('No stage was logged.')
      : plainTable(
          ['*', 84, 100, 120],
          rows.map(({ name, startedAt, expected, state, spent }) => [
            name,
            timeWords(startedAt) ?? blank,
            state === 'skipped' ? 'left out' : spanWords(spent),
            expected === null || (expected.lowSeconds === null && expected.highSeconds === null)
              ? (expected?.note ?? 'no time is usual')
              : `${expected.lowSeconds ?? '?'}–${expected.highSeconds ?? '?'} s (${expected.basis})`,
          ]),
          { head: ['Stage', 'Begun', 'Took', 'Usual'] },
        ),
  ];
}

function outcome(protocol: WorkProtocol): SheetContent[] {
  const { comparisons, series } = protocol;
  return [
    partName('What came of it'),
    paragraph(
      series === null
        ? 'No pull is recorded.'
        : `${series.pulls} ${series.pulls === 1 ? 'pull' : 'pulls'}: ${series.reason} Tolerance ${series.tolerance} darkness; one reading strays by a standard deviation of ${
            series.sigma === null ? 'no known size' : Number(series.sigma.toPrecision(2))
          }.`,
    ),
    ...(comparisons.length === 0 ? [paragraph('No print was measured against the stone.')] : []),
    ...comparisons.flatMap(({ title, finding, zones, counts, warnings }) => [
      paragraph(
        `${asWritten(title)}. ${finding ?? ''} ${counts.map(({ change, zones: n }) => `${n} ${changeWord(change)}`).join(', ')}.`,
      ),
      plainTable(
        ['*', 90, 80, 80, 70],
        zones.map(({ name, medium, drawn, printed, change }) => [
          asWritten(name),
          mediumName(protocol, medium),
          percent(drawn),
          percent(printed),
          changeWord(change),
        ]),
        { head: ['Zone', 'Medium', 'Drawn, %', 'Printed, %', ''] },
      ),
      note(`The truth lies within ±, 19 times of 20. ${warnings.join(' ')}`),
    ]),
  ];
}

function percent(interval: { coverage: number; low: number; high: number } | null): string {
  const figure = coverageFigure(interval);
  return figure === null ? 'not known' : `${figure.value} ${figure.plusMinus}`;
}

function list(name: string, items: readonly string[], none: string): SheetContent[] {
  return [partName(name), items.length === 0 ? paragraph(none) : { ul: [...items], margin: [0, 0, 0, 4] }];
}
