import { type ReactNode, useState } from 'react';
import { Button } from '../../parts/Button.tsx';
import { useReturnFocus } from '../useReturnFocus.ts';

/** A part of a stone's page that is read, and opens as a form where it may be changed. */
export function StoneSection({
  title,
  change,
  changeable,
  form,
  children,
}: {
  title: string;
  /** What the button says that opens the form. */
  change: string;
  changeable: boolean;
  form: (onLeave: () => void) => ReactNode;
  children: ReactNode;
}) {
  const [open, setOpen] = useState(false);
  const opener = useReturnFocus(open);
  return (
    <section aria-label={title}>
      <h2 className="big">{title}</h2>
      {open ? (
        form(() => setOpen(false))
      ) : (
        <>
          {children}
          {changeable && (
            <Button ref={opener} onClick={() => setOpen(true)}>
              {change}
            </Button>
          )}
        </>
      )}
    </section>
  );
}
