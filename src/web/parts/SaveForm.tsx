import './SaveForm.css';
import { type FormEvent, type ReactNode, useEffect, useRef } from 'react';
import type { ShownFailure } from '../client/shownFailure.ts';
import { say } from '../words/say.ts';
import { Button } from './Button.tsx';
import { FailureNotice } from './FailureNotice.tsx';

/** What a form tells when somebody else saved first. */
interface StaleForm {
  readonly clashes: readonly { readonly field: string; readonly kept: string }[];
  readonly taken: readonly { readonly field: string; readonly kept: string }[];
}

/**
 * A form with its save, what went wrong with it, and, where somebody else saved first, their version beside what was
 * typed. The first wrong field takes the focus when a save is tried.
 */
export function SaveForm({
  label,
  act,
  actKind = 'act',
  form,
  words,
  beside,
  onSave,
  onLeave,
  children,
}: {
  label: string;
  act: string;
  actKind?: 'act' | 'plain';
  form: {
    readonly pending: boolean;
    readonly trouble: ShownFailure | null;
    readonly stale: StaleForm | null;
    readonly takeKept: () => void;
  };
  /** What each field is called. */
  words: Readonly<Record<string, string>>;
  /** The other's version, told in another way than field by field. */
  beside?: ReactNode;
  onSave: () => Promise<unknown>;
  onLeave?: () => void;
  children: ReactNode;
}) {
  const whole = useRef<HTMLFormElement>(null);
  const notice = useRef<HTMLDivElement>(null);
  const { trouble, stale, pending } = form;
  useEffect(() => {
    if (trouble) notice.current?.scrollIntoView({ block: 'nearest' });
  }, [trouble]);
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    if ((await onSave()) === null)
      requestAnimationFrame(() => whole.current?.querySelector<HTMLElement>('[aria-invalid]')?.focus());
  };
  return (
    <form
      ref={whole}
      className="save-form"
      aria-label={label}
      onSubmit={(event) => void submit(event)}
      noValidate
    >
      {children}
      <div ref={notice}>
        {trouble && <FailureNotice failure={trouble} />}
        {stale && (beside ?? <StaleLines stale={stale} words={words} />)}
      </div>
      <div className="save-form-acts">
        <Button kind={actKind} type="submit" disabled={pending}>
          {pending ? say('Saving …') : stale ? say('Let mine stand') : act}
        </Button>
        {stale && (
          <Button onClick={form.takeKept} disabled={pending}>
            {say('Let theirs stand')}
          </Button>
        )}
        {onLeave && (
          <Button kind="quiet" onClick={onLeave}>
            {say('Leave it as it was')}
          </Button>
        )}
      </div>
    </form>
  );
}

function StaleLines({ stale, words }: { stale: StaleForm; words: Readonly<Record<string, string>> }) {
  const shown = ({ field, kept }: { readonly field: string; readonly kept: string }) => (
    <div key={field}>
      <dt>{words[field] ?? field}</dt>
      <dd>{kept === '' ? say('empty') : kept}</dd>
    </div>
  );
  return (
    <div className="save-form-stale hatched-head">
      {stale.clashes.length > 0 && (
        <>
          <p className="stamp">{say('Kept meanwhile, where you typed something else')}</p>
          <dl>{stale.clashes.map(shown)}</dl>
        </>
      )}
      {stale.taken.length > 0 && (
        <>
          <p className="stamp">{say('Kept meanwhile, and taken into your form')}</p>
          <dl>{stale.taken.map(shown)}</dl>
        </>
      )}
      {stale.clashes.length + stale.taken.length === 0 && (
        <p>{say('They changed something else: saving this takes nothing away from it.')}</p>
      )}
    </div>
  );
}
