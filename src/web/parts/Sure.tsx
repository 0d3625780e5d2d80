import './Sure.css';
import { type ReactNode, useEffect, useRef } from 'react';
import { say } from '../words/say.ts';
import { Button } from './Button.tsx';

/** Asks once more before something is gone for good. Escape and the first button leave all as it is. */
export function Sure({
  title,
  children,
  act,
  onAct,
  onLeave,
}: {
  title: string;
  children: ReactNode;
  act: string;
  onAct: () => void;
  onLeave: () => void;
}) {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => dialog.current?.showModal(), []);
  return (
    <dialog ref={dialog} className="sure" aria-labelledby="sure-title" onClose={onLeave}>
      <h2 id="sure-title" className="big">
        {title}
      </h2>
      {children}
      <div>
        <Button onClick={onLeave}>{say('Keep it')}</Button>
        <Button kind="danger" onClick={onAct}>
          {act}
        </Button>
      </div>
    </dialog>
  );
}
