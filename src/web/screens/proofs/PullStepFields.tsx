import type { PullDraft } from '../../../records/pull.ts';
import { pullKinds } from '../../../records/pull.ts';
import type { WorkEntry } from '../../../records/workEntry.ts';
import { inPageWords } from '../../client/inPageWords.ts';
import { chipsBefore } from '../../managers/proofs/pullChips.ts';
import { type PullStep, type PullTyped, usedBefore } from '../../managers/proofs/pullDraft.ts';
import { pullKindWords } from '../../managers/proofs/pullWords.ts';
import { ButtonFile } from '../../parts/Button.tsx';
import { Field } from '../../parts/Field.tsx';
import { Words } from '../../parts/Words.tsx';
import { say } from '../../words/say.ts';
import { ChipMarks } from './ChipMarks.tsx';
import { Counter } from './Counter.tsx';
import { EyeTone } from './EyeTone.tsx';
import { PhotographStep } from './PhotographStep.tsx';
import { PickThing } from './PickThing.tsx';
import { PrintMarks } from './PrintMarks.tsx';
import { TextPick } from './TextPick.tsx';
import { Touches } from './Touches.tsx';

const ages: readonly (readonly [value: string, words: string])[] = [
  ['5', say('5 minutes')],
  ['30', say('half an hour')],
  ['120', say('2 hours')],
  ['1440', say('a day')],
  ['2880', say('two days or more')],
  ['', say('not known')],
];

/** What one step of entering a pull asks for. */
export function PullStepFields({
  step,
  typed,
  pulls,
  work,
  onSet,
  onGoOn,
}: {
  step: PullStep;
  typed: PullTyped;
  pulls: readonly PullDraft[];
  work: WorkEntry;
  onSet: (changes: Partial<PullTyped>) => void;
  onGoOn: (changes?: Partial<PullTyped>) => void;
}) {
  switch (step) {
    case 'number':
      return (
        <>
          <Counter
            label={say('Number on the stone')}
            value={typed.number}
            least={1}
            onValue={(number) => onSet({ number: number ?? 1 })}
            needed
          />
          <Touches
            label={say('Made as a')}
            value={typed.kind}
            options={pullKinds.map((kind) => [kind, pullKindWords[kind]] as const)}
            onPick={(kind) => onSet({ kind })}
          />
        </>
      );
    case 'photograph':
    case 'again':
      return <PhotographStep again={step === 'again'} typed={typed} work={work} onGoOn={onGoOn} />;
    case 'marks':
    case 'marks-again': {
      const index = step === 'marks' ? 0 : 1;
      const taken = typed.photographs[index];
      if (!taken) return null;
      return (
        <PrintMarks
          taken={taken}
          onMarks={(corners) =>
            onSet({
              photographs: typed.photographs.map((each, at) => (at === index ? { ...each, corners } : each)),
            })
          }
        />
      );
    }
    case 'chips':
    case 'chips-again': {
      const index = step === 'chips' ? 0 : 1;
      const taken = typed.photographs[index];
      if (!taken) return null;
      const earlier = index === 1 ? (typed.photographs[0]?.chips ?? []) : [];
      return (
        <ChipMarks
          photograph={taken.photograph}
          chips={taken.chips ?? []}
          before={earlier.length > 0 ? earlier : chipsBefore(pulls)}
          onChips={(chips) =>
            onSet({
              photographs: typed.photographs.map((each, at) => (at === index ? { ...each, chips } : each)),
            })
          }
        />
      );
    }
    case 'lights':
    case 'middles':
    case 'darks':
      return (
        <>
          <EyeTone
            tone={step}
            value={typed.eye[step]}
            onPick={(value) => onSet({ eye: { ...typed.eye, [step]: value } })}
          />
          <p>
            <ButtonFile kind="quiet" href={inPageWords('/api/hatch-scale.pdf')}>
              {say('Print the hatch scale (PDF)')}
            </ButtonFile>
          </p>
        </>
      );
    case 'age':
      return (
        <Touches
          label={say('When it was looked at, it was this old')}
          value={typed.ageMinutes === null ? '' : String(typed.ageMinutes)}
          options={ages}
          onPick={(age) => onSet({ ageMinutes: age === '' ? null : Number(age) })}
        />
      );
    case 'paper':
      return (
        <>
          <PickThing
            tool="paper"
            picked={typed.paper}
            before={usedBefore(pulls, (pull) => pull.paper, words)}
            // a paper that is used damp or dry here says so itself, until a hand says otherwise
            onPick={(paper, entry) =>
              onSet({ paper, ...(entry?.tool === 'paper' && typed.damp === null && { damp: entry.damp }) })
            }
          />
          <Touches
            label={say('Printed')}
            value={typed.damp === null ? '' : typed.damp ? 'damp' : 'dry'}
            options={[
              ['damp', say('damp')],
              ['dry', say('dry')],
              ['', say('not known')],
            ]}
            onPick={(damp) => onSet({ damp: damp === '' ? null : damp === 'damp' })}
          />
        </>
      );
    case 'ink':
      return (
        <>
          <PickThing
            tool="ink"
            picked={typed.ink}
            before={usedBefore(pulls, (pull) => pull.ink, words)}
            onPick={(ink) => onSet({ ink })}
            onNone={() => onSet({ ink: null })}
          />
          <PickThing
            tool="roller"
            picked={typed.roller}
            before={usedBefore(pulls, (pull) => pull.roller, words)}
            onPick={(roller) => onSet({ roller })}
            onNone={() => onSet({ roller: null })}
          />
        </>
      );
    case 'rolling':
      return (
        <>
          <Counter
            label={say('Charges')}
            value={typed.charges}
            least={0}
            onValue={(charges) => onSet({ charges })}
          />
          <Counter
            label={say('Passes a charge')}
            value={typed.passes}
            least={0}
            onValue={(passes) => onSet({ passes })}
          />
        </>
      );
    case 'press':
      return (
        <>
          <Counter
            label={say('Eighths from contact')}
            value={typed.pressureEighths}
            least={-100}
            onValue={(pressureEighths) => onSet({ pressureEighths })}
          />
          <TextPick
            label={say('Packing')}
            value={typed.packing}
            before={usedBefore(
              pulls,
              (pull) => pull.packing,
              (packing) => packing,
            )}
            onValue={(packing) => onSet({ packing })}
          />
        </>
      );
    case 'who':
      return (
        <TextPick
          label={say('Initials')}
          value={typed.who}
          before={usedBefore(
            pulls,
            (pull) => pull.who,
            (who) => who,
          )}
          onValue={(who) => onSet({ who })}
        />
      );
    case 'remarks':
      return (
        <>
          <Words
            label={say('Remarks')}
            maxLength={10_000}
            value={typed.remarks}
            onChange={(event) => onSet({ remarks: event.target.value })}
          />
          <Field
            label={say('A fault that has to go before it is good to print')}
            hint={say('Left empty: none.')}
            autoComplete="off"
            maxLength={200}
            value={typed.fault}
            onChange={(event) => onSet({ fault: event.target.value })}
          />
        </>
      );
    default:
      return step satisfies never;
  }
}

function words({ words: told }: { readonly words: string }): string {
  return told;
}
