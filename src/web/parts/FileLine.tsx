import './FileLine.css';
import type { ReactNode } from 'react';
import { say } from '../words/say.ts';
import { FailureNotice } from './FailureNotice.tsx';

/** One thing that may be added from a file: what it is for, what is held, and how to change or drop it. */
export function FileLine({
  title,
  advice,
  held,
  accept,
  busy = false,
  trouble,
  onFile,
  onDrop,
  children,
}: {
  title: string;
  advice: string;
  /** Name of what is held; null when nothing is. */
  held: string | null;
  accept: string;
  busy?: boolean;
  trouble: { readonly message: string; readonly remedy: string } | null;
  onFile: (file: File) => void;
  onDrop: () => void;
  /** Another way to it. */
  children?: ReactNode;
}) {
  return (
    <li className="file-line">
      <div>
        <b>{title}</b>
        <p className="soft">{held ?? advice}</p>
      </div>
      <div className="file-line-acts">
        {held && (
          <button
            type="button"
            className="button quiet"
            onClick={onDrop}
            aria-label={say('Leave out: {title}', { title })}
          >
            {say('Leave out')}
          </button>
        )}
        <label className="button plain">
          {busy ? say('Copying …') : held ? say('Change') : say('Add')}
          <input
            className="unseen"
            type="file"
            accept={accept}
            disabled={busy}
            aria-label={held ? say('Change: {title}', { title }) : say('Add: {title}', { title })}
            onChange={(event) => {
              const file = event.target.files?.[0];
              if (file) onFile(file);
              event.target.value = '';
            }}
          />
        </label>
        {children}
      </div>
      {trouble && <FailureNotice failure={trouble} />}
    </li>
  );
}
