import { type RefObject, useEffect, useRef } from 'react';

/** For a button that opens a form in its place: when the form closes, the focus goes back to the button. */
export function useReturnFocus(open: boolean): RefObject<HTMLButtonElement | null> {
  const opener = useRef<HTMLButtonElement>(null);
  const was = useRef(open);
  useEffect(() => {
    if (was.current && !open) opener.current?.focus();
    was.current = open;
  }, [open]);
  return opener;
}
