import { useQuery } from '@tanstack/react-query';
import type { HTMLInputTypeAttribute } from 'react';
import type { Edition } from '../../../records/edition.ts';
import type { PullEntry } from '../../../records/pullTones.ts';
import type { Approval } from '../../../records/workSeries.ts';
import { editionStartKey, readEditionStart, saveEdition } from '../../client/editions.ts';
import { listPulls, pullsKey } from '../../client/pulls.ts';
import { approvalsKey, listApprovals } from '../../client/series.ts';
import {
  type EditionField,
  type EditionTyped,
  editionFieldWords,
  editionOfTyped,
  editionTroubles,
  editionTyped,
} from '../../managers/editions/editionForm.ts';
import { type StartedField, startHint } from '../../managers/editions/startWords.ts';
import { Choice } from '../../parts/Choice.tsx';
import { Field } from '../../parts/Field.tsx';
import { Fold } from '../../parts/Fold.tsx';
import { Picks } from '../../parts/Picks.tsx';
import { SaveForm } from '../../parts/SaveForm.tsx';
import { Words } from '../../parts/Words.tsx';
import { say } from '../../words/say.ts';
import { useTypedForm } from '../useTypedForm.ts';

const grainSides = [
  ['long', say('long side')],
  ['short', say('short side')],
] as const;

/** Where it is written when the prints were signed. */
export const signingId = 'edition-signing';

/** All that a person writes about an edition. */
export function EditionForm({ edition, onSaved }: { edition: Edition; onSaved: (kept: Edition) => void }) {
  const form = useTypedForm<Edition, EditionTyped>({
    entry: edition,
    typedOf: (entry) => editionTyped(entry!),
    check: editionTroubles,
    send: (typed, entry) => saveEdition(edition.id, entry!.version, editionOfTyped(typed)),
  });
  const pulls = useQuery({
    queryKey: pullsKey(edition.workId),
    queryFn: () => listPulls(edition.workId),
  });
  const approvals = useQuery({
    queryKey: approvalsKey(edition.workId),
    queryFn: () => listApprovals(edition.workId),
  });
  const start =
    useQuery({
      queryKey: editionStartKey(edition.workId),
      queryFn: () => readEditionStart(edition.workId),
    }).data ?? null;
  const from = (field: StartedField, or = '') => ({
    hint: startHint(start, field, form.values[field]) || or,
  });
  const save = async () => {
    const kept = await form.save();
    if (kept) onSaved(kept);
    return kept;
  };
  const line = (
    field: EditionField,
    more: { unit?: string; hint?: string; type?: HTMLInputTypeAttribute } = {},
  ) => (
    <Field
      label={editionFieldWords[field]}
      {...more}
      {...(more.unit === undefined ? {} : { inputMode: 'decimal' as const })}
      autoComplete="off"
      maxLength={200}
      value={form.values[field]}
      trouble={form.troubleOf(field)}
      onChange={(event) => form.set({ [field]: event.target.value })}
    />
  );
  const picks = (field: EditionField, options: readonly (readonly [string, string])[]) => (
    <Picks
      label={editionFieldWords[field]}
      value={form.values[field]}
      options={options}
      onPick={(value) => form.set({ [field]: value })}
    />
  );
  return (
    <SaveForm
      label={say('The edition')}
      act={say('Save')}
      actKind="plain"
      form={form}
      words={editionFieldWords}
      onSave={save}
    >
      <div className="fields">
        {line('title')}
        {line('size', { unit: say('prints') })}
        {line('artistProofs', { unit: say('prints'), hint: say('Empty: one in ten, at least one.') })}
      </div>
      <Fold title={say('Paper, ink, rack')}>
        <div className="fields">
          {line('paperName', from('paperName', say('As the maker calls it.')))}
          {line('gramsPerM2', { unit: 'g/m²', ...from('gramsPerM2') })}
          {line('sheetWide', { unit: 'mm' })}
          {line('sheetHigh', { unit: 'mm' })}
          {line('pieceWide', { unit: 'mm', hint: say('Empty: the sheet is printed whole.') })}
          {line('pieceHigh', { unit: 'mm' })}
          {line('tearLoss', { unit: 'mm', hint: say('The edge that the tear itself costs. Empty: none.') })}
        </div>
        {picks('sheetGrain', [...grainSides, ['unknown', say('not known')]])}
        {picks('pieceGrain', [...grainSides, ['any', say('either side')]])}
        {picks('damped', [
          ['yes', say('damp')],
          ['no', say('dry')],
          ['unknown', say('not decided')],
        ])}
        <p className="soft field-hint">{from('damped').hint}</p>
        <div className="fields">
          {line('inkedCm2', {
            unit: 'cm²',
            ...from('inkedCm2', say('As if every inked place were covered whole.')),
          })}
          {line('rackPlaces', { unit: say('places') })}
          {line('ink', from('ink'))}
        </div>
      </Fold>
      <Fold title={say('People, press, materials')}>
        <div className="fields">
          {line('artist')}
          {line('printer')}
          {line('press')}
          {line('drawingMaterials')}
          {line('etches')}
        </div>
      </Fold>
      <Fold title={say('Approval proof')}>
        <Choice
          label={editionFieldWords.approvalPull}
          value={form.values.approvalPull}
          options={approvable(pulls.data ?? [], approvals.data ?? [], edition.approvalPullId)}
          onChoose={(approvalPull) => form.set({ approvalPull })}
        />
        <p className="soft">
          {say('Its photograph is what the prints are held against. Only without one, type:')}
        </p>
        <div className="fields">
          {line('approvedBy', from('approvedBy'))}
          {line('approvalLights', { unit: say('darkness'), hint: say('0 bare paper, 1 black.') })}
          {line('approvalMiddles', { unit: say('darkness') })}
          {line('approvalDarks', { unit: say('darkness') })}
        </div>
      </Fold>
      <div id={signingId} tabIndex={-1}>
        <Fold title={say('Signature, chop, cancellation')} open={edition.prints.length > 0}>
          <div className="fields">
            {line('signature')}
            {line('signedOn', { type: 'date' })}
            {line('chop')}
          </div>
          <div className="fields">
            {line('cancellation')}
            {line('cancelledOn', { type: 'date' })}
          </div>
        </Fold>
      </div>
      <Words
        label={editionFieldWords.note}
        maxLength={10_000}
        value={form.values.note}
        onChange={(event) => form.set({ note: event.target.value })}
      />
    </SaveForm>
  );
}

/** The pulls that can be named as approved, good-to-print ones first; one that was laid aside since is still named. */
function approvable(
  pulls: readonly PullEntry[],
  approvals: readonly Approval[],
  held: string | null,
): readonly (readonly [string, string])[] {
  const good = new Set(approvals.filter(({ withdrawn }) => withdrawn === null).map(({ pullId }) => pullId));
  const words = ({ id, number, paper }: PullEntry) =>
    good.has(id)
      ? say('pull {number}, {paper}, good to print', { number, paper: paper.words })
      : say('pull {number}, {paper}', { number, paper: paper.words });
  const ordered = [...pulls].sort((a, b) => Number(good.has(b.id)) - Number(good.has(a.id)));
  const gone = held !== null && !pulls.some(({ id }) => id === held);
  return [
    ['', say('none, or not kept here')],
    ...ordered.map((pull) => [pull.id, words(pull)] as const),
    ...(gone ? [[held, say('one that was laid aside')] as const] : []),
  ];
}
