import type { EtchTable } from '../../records/etch.ts';
import type { Medium } from '../../records/medium.ts';
import type { PlannedTreatment, TestPlanDraft } from '../../records/testPlan.ts';
import type { LevelFinding } from '../../records/testPlanEntry.ts';
import { etchNames, etchOfLevel } from '../../studio/etch/etchOfLevel.ts';
import { mediumCatalogue } from '../../studio/etch/mediumCatalogue.ts';
import { secondsOfWords } from '../../studio/etch/secondsOfWords.ts';
import { nearestWords } from '../../studio/trials/design/nearestWords.ts';

/** What levels are held against: the studio's own media beside the catalogue's, and every etch table's newest version. */
export interface KnownLevels {
  readonly ownMedia: readonly Medium[];
  readonly tables: readonly EtchTable[];
}

const deposits = ['light', 'middle', 'dark', 'solid', 'wash'] as const;
const noMedium = /^(none|nothing|bare|blank)$/;

/** What is known here of every level of a planned test. */
export function judgeLevels(
  plan: Pick<TestPlanDraft, 'treatments' | 'ownEtches'>,
  known: KnownLevels,
): LevelFinding[] {
  return plan.treatments.flatMap((treatment) =>
    treatment.levels.map((level) => findingOf(treatment, level, known, plan)),
  );
}

function findingOf(
  treatment: PlannedTreatment,
  level: string,
  known: KnownLevels,
  { ownEtches }: Pick<TestPlanDraft, 'ownEtches'>,
): LevelFinding {
  const base = { treatment: treatment.name, level, takenFor: null, nearest: null, message: null };
  const looked = lookUp(treatment, level, known, ownEtches);
  if (looked === 'free') return { ...base, state: 'free' };
  if (looked.takenFor !== null) return { ...base, state: 'known', takenFor: looked.takenFor };
  if (treatment.newLevels.includes(level)) {
    const unmixed = treatment.kind === 'etch';
    return {
      ...base,
      state: 'new',
      message: unmixed
        ? `“${level}” is a new etch: as long as nobody says what it is made of, no millilitres and no times can be worked out for it.`
        : null,
    };
  }
  const nearest = nearestWords(level, looked.names);
  const near = nearest === null ? '' : ` The nearest that is known is “${nearest}”.`;
  return {
    ...base,
    state: 'unknown',
    nearest,
    message: `“${level}” is ${looked.where}.${near} Put it right, or say that it is a new one.`,
  };
}

type LookedUp =
  | 'free'
  | { readonly takenFor: string | null; readonly names: readonly string[]; readonly where: string };

function lookUp(
  { kind }: PlannedTreatment,
  level: string,
  { ownMedia, tables }: KnownLevels,
  ownEtches: TestPlanDraft['ownEtches'],
): LookedUp {
  const words = level.trim().toLowerCase();
  switch (kind) {
    case 'medium': {
      const media = [...mediumCatalogue, ...ownMedia];
      const found = media.find(({ id, name }) => id.toLowerCase() === words || name.toLowerCase() === words);
      const takenFor = noMedium.test(words) ? 'nothing drawn' : (found?.name ?? null);
      return {
        takenFor,
        names: media.map(({ name }) => name),
        where: 'no medium of the catalogue',
      };
    }
    case 'deposit': {
      const takenFor = deposits.find((deposit) => deposit === words) ?? null;
      return { takenFor, names: deposits, where: 'no deposit that etches go by' };
    }
    case 'etch': {
      const found = tables.map((table) => etchOfLevel(level, table, ownEtches)).find((etch) => etch !== null);
      return {
        takenFor: found?.takenFor ?? null,
        names: tables.flatMap(etchNames),
        where: 'in no etch table here, and nothing that gum, water and tannic solution are mixed to',
      };
    }
    case 'contact': {
      const seconds = secondsOfWords(level);
      return {
        takenFor: seconds === null ? null : `${seconds} s`,
        names: [],
        where: 'no time such as 90 s or 2 min',
      };
    }
    case 'powder':
    case 'rest':
    case 'washout':
    case 'roll-up':
    case 'other':
      return 'free';
    default:
      return kind satisfies never;
  }
}
