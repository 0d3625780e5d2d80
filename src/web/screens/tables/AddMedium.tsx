import { useQueryClient } from '@tanstack/react-query';
import type { MediumEntry } from '../../../records/medium.ts';
import { addMedium, mediaKey } from '../../client/media.ts';
import { mediumIdOf, type RuleChoice, ruleChoices, ruleOfChoice } from '../../managers/mediumForm.ts';
import type { Typed } from '../../managers/typedMerge.ts';
import { Choice } from '../../parts/Choice.tsx';
import { Field } from '../../parts/Field.tsx';
import { SaveForm } from '../../parts/SaveForm.tsx';
import { say } from '../../words/say.ts';
import { useTypedForm } from '../useTypedForm.ts';

/** Names a medium and says which etch it asks for. */
export function AddMedium({ onLeave }: { onLeave: () => void }) {
  const queries = useQueryClient();
  const form = useTypedForm<MediumEntry, Typed>({
    entry: null,
    typedOf: () => ({ name: '', rule: 'none' }),
    check: ({ name = '' }) => ({
      name:
        mediumIdOf(name) === ''
          ? say('A name with letters or figures of the Latin alphabet is needed, such as River crayon.')
          : null,
    }),
    send: ({ name = '', rule = 'none' }) =>
      addMedium({ id: mediumIdOf(name), name: name.trim(), rule: ruleOfChoice(rule as RuleChoice) }),
  });
  const add = async () => {
    const added = await form.save();
    if (added) {
      await queries.invalidateQueries({ queryKey: mediaKey });
      onLeave();
    }
    return added;
  };
  return (
    <div className="copy-table">
      <SaveForm
        label={say('A medium of our own')}
        act={say('Add it')}
        form={form}
        words={{ name: say('Name'), rule: say('Which etch') }}
        onSave={add}
        onLeave={onLeave}
      >
        <Field
          label={say('What it is called')}
          autoComplete="off"
          autoFocus
          maxLength={100}
          value={form.values.name ?? ''}
          trouble={form.troubleOf('name')}
          onChange={(event) => form.set({ name: event.target.value })}
        />
        <Choice<RuleChoice>
          label={say('Which etch it asks for')}
          hint={say('Where nothing is known of it, the plan says so and goes on.')}
          value={(form.values.rule ?? 'none') as RuleChoice}
          options={ruleChoices}
          onChoose={(rule) => form.set({ rule })}
        />
      </SaveForm>
    </div>
  );
}
