import './Button.css';
import type { ButtonHTMLAttributes, ReactNode, Ref } from 'react';
import { Link } from 'wouter';

export type ButtonKind = 'act' | 'plain' | 'danger' | 'quiet';

/** A button. `act` is the one thing to do next on a screen; `danger` destroys and says so; `quiet` is words alone. */
export function Button({
  kind = 'plain',
  type = 'button',
  ...rest
}: { kind?: ButtonKind; ref?: Ref<HTMLButtonElement> } & ButtonHTMLAttributes<HTMLButtonElement>) {
  return <button type={type} className={`button ${kind}`} {...rest} />;
}

/** A link that looks as a button does, for going to another screen. */
export function ButtonLink({
  kind = 'plain',
  href,
  children,
}: {
  kind?: ButtonKind;
  href: string;
  children: ReactNode;
}) {
  return (
    <Link href={href} className={`button ${kind}`}>
      {children}
    </Link>
  );
}

/** A link to a file that looks as a button does. */
export function ButtonFile({
  kind = 'plain',
  href,
  children,
}: {
  kind?: ButtonKind;
  href: string;
  children: ReactNode;
}) {
  return (
    <a href={href} className={`button ${kind}`}>
      {children}
    </a>
  );
}
