import type { ProtocolEtch, ProtocolPoured, WorkProtocol } from '../../../records/workProtocol.ts';
import { lineRule } from '../../../studio/bench/lineStages.ts';
import { pouredAmountWords } from '../../../studio/bench/pouredWords.ts';
import {
  contactWords,
  notRecorded,
  plannedWords,
  spanWords,
  timeWords,
} from '../../../studio/papers/paperWords.ts';
import { figureText, fixed } from '../../words/figures.ts';
import { areaIn, lengthWords, sizeWords } from '../../words/lengths.ts';
import { midSentence } from '../../words/midSentence.ts';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';

/** One thing that a protocol tells; null: it does not. */
export interface ProtocolLine {
  /** The same for the same thing in another protocol. */
  readonly key: string;
  readonly label: string;
  readonly value: string | null;
}

/** What is told of one side of the work. */
export interface ProtocolPart {
  readonly name: string;
  /** What to say of a line that the other protocol has and this one lacks. */
  readonly absent: string;
  readonly lines: readonly ProtocolLine[];
}

/** One thing as two protocols tell it. */
export interface BesideLine {
  readonly key: string;
  readonly label: string;
  readonly theirs: string;
  readonly ours: string;
}

/** What to say where a plan, or its want, leaves something out. */
const nonePlanned = say('none planned');

/** A protocol in words, part by part, in the order of the work. */
export function protocolParts(protocol: WorkProtocol): readonly ProtocolPart[] {
  const { stone, table, people, filmMm, series } = protocol;
  const whole = (name: string, absent: string, lines: readonly ProtocolLine[]) => ({
    name,
    absent,
    lines: merged(lines),
  });
  return [
    whole(say('Stone and plan'), notRecorded, [
      line('stone', say('Stone'), sizeWords(stone.widthMm, stone.heightMm)),
      line('colour', say('Its colour'), stone.colour === '' ? null : stone.colour),
      line(
        'table',
        say('Etch table'),
        table && say('{table}, issue {issue}', { table: told(table.name), issue: table.version }),
      ),
      line('people', say('People planned for'), people === null ? null : String(people)),
      line('film', say('Film of etch'), filmMm === null ? null : lengthWords(filmMm, 2)),
    ]),
    whole(say('Materials of the first etch'), nonePlanned, protocol.materials.map(materialLine)),
    whole(say('Etches'), nonePlanned, protocol.etches.map(etchLine)),
    whole(say('Poured and used'), notRecorded, protocol.poured.map(pouredLine)),
    whole(
      say('Second etch'),
      notRecorded,
      protocol.secondEtches.flatMap(({ line: quick, zones }) =>
        zones.map(({ strength, etch }) =>
          line(
            `${quick} ${strength ?? 'no rule'}`,
            `${quick}, ${strength ?? 'no rule'}`,
            etch ?? say('no rule here'),
          ),
        ),
      ),
    ),
    whole(
      say('Stages'),
      notRecorded,
      protocol.stages.map(({ stage, name, state, startedAt, spent }) =>
        line(
          stage,
          name,
          state === 'skipped'
            ? say('skipped')
            : startedAt === null
              ? state === 'open'
                ? say('{span}, not ended', { span: spanWords(spent) })
                : `${spanWords(spent)}`
              : state === 'open'
                ? say('{span}, from {time}, not ended', {
                    span: spanWords(spent),
                    time: timeWords(startedAt),
                  })
                : say('{span}, from {time}', { span: spanWords(spent), time: timeWords(startedAt) }),
        ),
      ),
    ),
    whole(
      say('Tools and set-ups'),
      notRecorded,
      protocol.picked.map(({ tool, words }) => line(tool, tool, words === '' ? null : words)),
    ),
    whole(say('What came of it'), notRecorded, [
      ...protocol.comparisons.flatMap(({ finding, counts }) => [
        line('finding', say('Stone against print'), finding),
        line(
          'zones',
          say('Zones'),
          counts.length === 0 ? null : counts.map(({ change, zones }) => `${zones} ${change}`).join(', '),
        ),
      ]),
      line('pulls', say('Proofs'), series && `${series.pulls}: ${series.reason}`),
      line(
        'sigma',
        say('How far one reading strays'),
        series && (series.sigma === null ? null : fixed(series.sigma, 3)),
      ),
    ]),
  ];
}

/** One part as two protocols tell it, and what of it neither does. */
export interface BesidePart {
  readonly name: string;
  readonly lines: readonly BesideLine[];
  readonly untold: readonly string[];
}

/** Two protocols line by line; what neither tells is named, never shown as equal. */
export function protocolsBeside(theirs: WorkProtocol, ours: WorkProtocol): readonly BesidePart[] {
  const own = protocolParts(ours);
  return protocolParts(theirs).map(({ name, absent, lines }, index) => {
    const mine = own[index]!.lines;
    const toldOf = (from: readonly ProtocolLine[], key: string) => {
      const found = from.find((one) => one.key === key);
      return found === undefined ? absent : (found.value ?? notRecorded);
    };
    const all = [...lines, ...mine.filter(({ key }) => !lines.some((one) => one.key === key))];
    const beside = all.map(({ key, label }) => ({
      key,
      label,
      theirs: toldOf(lines, key),
      ours: toldOf(mine, key),
    }));
    const untold = beside.filter((one) => one.theirs === notRecorded && one.ours === notRecorded);
    return {
      name,
      lines: beside.filter((one) => !untold.includes(one)),
      untold: untold.map(({ label }) => label),
    };
  });
}

function line(key: string, label: string, value: string | null): ProtocolLine {
  return { key, label, value };
}

function materialLine({
  name,
  ml,
  mlPer100Cm2,
  gramsPerLitre,
  pH,
  gum,
  drops,
}: WorkProtocol['materials'][number]): ProtocolLine {
  const parts = [
    say('{ml} ml made ready', { ml }),
    mlPer100Cm2 !== null && say('{mlPer100Cm2} ml on 100 cm²', { mlPer100Cm2: mlPer100Cm2.toPrecision(2) }),
    drops !== null && say('{drops} drops', { drops }),
    gramsPerLitre !== null && say('{gramsPerLitre} g/l', { gramsPerLitre }),
    pH !== null && say('pH {pH}', { pH }),
    gum !== null && (gum ? say('holds gum') : say('without gum')),
  ].filter((part) => part !== false);
  return line(name.toLowerCase(), name, parts.join(', '));
}

function etchLine(etch: ProtocolEtch): ProtocolLine {
  const { strength, medium, mediumName, areaCm2, areaPlusMinusCm2 } = etch;
  const area =
    areaPlusMinusCm2 === null
      ? areaIn(areaCm2, (figure) => figureText(figure.toPrecision(3)))
      : say('{area} ± {areaPlusMinus}', {
          area: areaIn(areaCm2, (figure) => figureText(figure.toPrecision(3))),
          areaPlusMinus: areaIn(areaPlusMinusCm2, (figure) => figureText(figure.toPrecision(1))),
        });
  const laid =
    etch.etch === null
      ? say('no rule here')
      : say('{etch}; planned {planned}; lay {contact}', {
          etch: etch.etch,
          planned: plannedWords(etch),
          contact: contactWords(etch.done),
        });
  return line(
    `${strength} ${medium}`,
    medium === null ? say('ground') : `${strength ?? 'no rule'}, ${mediumName ?? medium}`,
    `${area}: ${laid}`,
  );
}

function pouredLine({ stage, material, plannedMl, amounts, alsoUnmeasured }: ProtocolPoured): ProtocolLine {
  const at = stage === null ? say('no stage named') : midSentence(told(lineRule(stage).name));
  const amountsTold = [
    ...amounts.map(pouredAmountWords),
    ...(alsoUnmeasured
      ? [amounts.length === 0 ? say('used, not measured') : say('and more, not measured')]
      : []),
  ];
  const planned = plannedMl === null ? '' : say(', planned {plannedMl} ml', { plannedMl });
  return line(
    `${stage} ${material.toLowerCase()}`,
    `${material}, ${at}`,
    amountsTold.length === 0
      ? plannedMl === null
        ? null
        : `${notRecorded}${planned}`
      : amountsTold.join('; ') + planned,
  );
}

/** Several places that are told under one key stand in one line. */
function merged(lines: readonly ProtocolLine[]): readonly ProtocolLine[] {
  const byKey = new Map<string, ProtocolLine>();
  for (const one of lines) {
    const before = byKey.get(one.key);
    if (before === undefined) byKey.set(one.key, one);
    else if (one.value !== null && one.value !== before.value) {
      const value = before.value === null ? one.value : `${before.value}. ${one.value}`;
      byKey.set(one.key, { ...before, value });
    }
  }
  return [...byKey.values()];
}
