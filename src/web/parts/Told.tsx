import { isTold, told } from '../words/told.ts';

/**
 * A sentence that the server or a module of the craft tells, in the page's language; one that nobody translated stays English
 * and is marked so, for voices that read it out.
 */
export function Told({ children }: { children: string | null }) {
  if (children === null) return null;
  return isTold(children) ? told(children) : <span lang="en">{children}</span>;
}
