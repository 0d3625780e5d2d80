import {
  type PatchIntention,
  patchIntentions,
  type StonePatch,
  type TestFactor,
} from '../../../records/testStone.ts';
import { patchNames } from '../../../studio/trials/places/patchName.ts';
import { intentionWords } from '../../managers/testStones/holdWords.ts';
import { patchWords } from '../../managers/testStones/patchLetters.ts';
import { sharedLevel, withLevel } from '../../managers/testStones/pickedPatches.ts';
import { Button } from '../../parts/Button.tsx';
import { Choice } from '../../parts/Choice.tsx';
import { Field } from '../../parts/Field.tsx';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';
import { PatchLevelField } from './PatchLevelField.tsx';

const given = patchIntentions.map((each) => [each, intentionWords[each]] as const);

/** What the picked patches got: one line for each factor, and what they are for. */
export function PatchFields({
  patches,
  factors,
  picked,
  onPatches,
  onDone,
}: {
  patches: readonly StonePatch[];
  factors: readonly TestFactor[];
  picked: ReadonlySet<string>;
  onPatches: (patches: readonly StonePatch[]) => void;
  onDone: () => void;
}) {
  const chosen = patches.filter((patch) => picked.has(patch.id));
  const intentions = new Set(chosen.map(({ intention }) => intention));
  const strips = new Set(chosen.map(({ strip }) => strip ?? ''));
  const each = (change: (patch: StonePatch) => StonePatch) =>
    onPatches(patches.map((patch) => (picked.has(patch.id) ? change(patch) : patch)));
  return (
    <section className="test-stone-picked" aria-label={say('Picked patches')}>
      <p>
        <b>
          {chosen.length === 1 ? patchWords(chosen[0]!) : say('{count} patches', { count: chosen.length })}
        </b>{' '}
        <span className="soft">{chosen.length > 1 && chosen.length <= 12 && told(patchNames(chosen))}</span>
      </p>
      {factors.map(({ name }) => {
        const shared = sharedLevel(patches, picked, name);
        return (
          <span key={name}>
            <PatchLevelField
              name={name}
              shared={shared}
              given={[...new Set(patches.flatMap((patch) => patch.treatment[name] ?? []))]}
              onLevel={(level) => onPatches(typedLevel(patches, picked, name, level))}
            />
          </span>
        );
      })}
      <Choice<PatchIntention | ''>
        label={say('Meant as')}
        value={intentions.size === 1 ? [...intentions][0]! : ''}
        options={intentions.size === 1 ? given : [['', say('they differ')], ...given]}
        onChoose={(intention) => intention !== '' && each((patch) => ({ ...patch, intention }))}
      />
      <Field
        label={say('Treated together as')}
        hint={say(
          'Such as strip 1, where one brush of etch went over several patches; empty: each for itself.',
        )}
        value={strips.size === 1 ? ([...strips][0] ?? '') : ''}
        placeholder={strips.size > 1 ? say('they differ') : ''}
        onChange={(event) => {
          const strip = event.target.value.slice(0, 60);
          each((patch) => ({ ...patch, strip: strip === '' ? null : strip }));
        }}
      />
      <Button kind="quiet" onClick={onDone}>
        {say('Pick others')}
      </Button>
    </section>
  );
}

/** Spaces stay while they are typed; only what is nothing but spaces says that it is not known. */
function typedLevel(
  patches: readonly StonePatch[],
  picked: ReadonlySet<string>,
  factor: string,
  text: string,
): StonePatch[] {
  if (text.trim() === '') return withLevel(patches, picked, factor, '');
  return patches.map((patch) =>
    picked.has(patch.id)
      ? { ...patch, treatment: { ...patch.treatment, [factor]: text.trimStart().slice(0, 120) } }
      : patch,
  );
}
