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
const nonePlanned = 'none planned';

/** A protocol in words, part by part, in the order of the work. */
export function protocolParts(protocol: WorkProtocol): readonly ProtocolPart[] {
  const { stone, table, people, filmMm, series } = protocol;
  const whole = (name: string, absent: string, lines: readonly ProtocolLine[]) => ({
    name,
    absent,
    lines: merged(lines),
  });
  return [
    whole('Stone and plan', notRecorded, [
      line('stone', 'Stone', `${stone.widthMm} × ${stone.heightMm} mm`),
      line('colour', 'Its colour', stone.colour === '' ? null : stone.colour),
      line('table', 'Etch table', table && `${table.name}, version ${table.version}`),
      line('people', 'People planned for', people === null ? null : String(people)),
      line('film', 'Film of etch', filmMm === null ? null : `${filmMm} mm`),
    ]),
    whole('Materials of the first etch', nonePlanned, protocol.materials.map(materialLine)),
    whole('Etches', nonePlanned, protocol.etches.map(etchLine)),
    whole('Poured and used', notRecorded, protocol.poured.map(pouredLine)),
    whole(
      'Second etch',
      notRecorded,
      protocol.secondEtches.flatMap(({ line: quick, zones }) =>
        zones.map(({ strength, etch }) =>
          line(
            `${quick} ${strength ?? 'no rule'}`,
            `${quick}, ${strength ?? 'no rule'}`,
            etch ?? 'no rule here',
          ),
        ),
      ),
    ),
    whole(
      'Stages',
      notRecorded,
      protocol.stages.map(({ stage, name, state, startedAt, spent }) =>
        line(
          stage,
          name,
          state === 'skipped'
            ? 'skipped'
            : `${spanWords(spent)}${startedAt === null ? '' : `, from ${timeWords(startedAt)}`}${state === 'open' ? ', not ended' : ''}`,
        ),
      ),
    ),
    whole(
      'Tools and set-ups',
      notRecorded,
      protocol.picked.map(({ tool, words }) => line(tool, tool, words === '' ? null : words)),
    ),
    whole('What came of it', notRecorded, [
      ...protocol.comparisons.flatMap(({ finding, counts }) => [
        line('finding', 'Stone against print', finding),
        line(
          'zones',
          'Zones',
          counts.length === 0 ? null : counts.map(({ change, zones }) => `${zones} ${change}`).join(', '),
        ),
      ]),
      line('pulls', 'Proofs', series && `${series.pulls}: ${series.reason}`),
      line(
        'sigma',
        'Spread of one reading',
        series && (series.sigma === null ? null : `σ ${series.sigma.toFixed(3)}`),
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
    const told = (from: readonly ProtocolLine[], key: string) => {
      const found = from.find((one) => one.key === key);
      return found === undefined ? absent : (found.value ?? notRecorded);
    };
    const all = [...lines, ...mine.filter(({ key }) => !lines.some((one) => one.key === key))];
    const beside = all.map(({ key, label }) => ({
      key,
      label,
      theirs: told(lines, key),
      ours: told(mine, key),
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
    `${ml} ml made ready`,
    mlPer100Cm2 !== null && `${mlPer100Cm2.toPrecision(2)} ml on 100 cm²`,
    drops !== null && `${drops} drops`,
    gramsPerLitre !== null && `${gramsPerLitre} g/l`,
    pH !== null && `pH ${pH}`,
    gum !== null && (gum ? 'holds gum' : 'without gum'),
  ].filter((part) => part !== false);
  return line(name.toLowerCase(), name, parts.join(', '));
}

function etchLine(etch: ProtocolEtch): ProtocolLine {
  const { strength, medium, mediumName, areaCm2, areaPlusMinusCm2 } = etch;
  const area = `${areaCm2.toPrecision(3)}${areaPlusMinusCm2 === null ? '' : ` ±${areaPlusMinusCm2.toPrecision(1)}`} cm²`;
  const laid =
    etch.etch === null
      ? 'no rule here'
      : `${etch.etch}; planned ${plannedWords(etch)}; lay ${contactWords(etch.done)}`;
  return line(
    `${strength} ${medium}`,
    medium === null ? 'ground' : `${strength ?? 'no rule'}, ${mediumName ?? medium}`,
    `${area}: ${laid}`,
  );
}

function pouredLine({ stage, material, plannedMl, amounts, alsoUnmeasured }: ProtocolPoured): ProtocolLine {
  const at = stage === null ? 'no stage named' : lineRule(stage).name.toLowerCase();
  const told = [
    ...amounts.map(pouredAmountWords),
    ...(alsoUnmeasured ? [amounts.length === 0 ? 'used, not measured' : 'and more, not measured'] : []),
  ];
  const planned = plannedMl === null ? '' : `, planned ${plannedMl} ml`;
  return line(
    `${stage} ${material.toLowerCase()}`,
    `${material}, ${at}`,
    told.length === 0 ? (plannedMl === null ? null : `${notRecorded}${planned}`) : told.join('; ') + planned,
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
