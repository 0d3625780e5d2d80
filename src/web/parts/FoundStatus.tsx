import { say } from '../words/say.ts';
/** How many a search found, told to those who hear the page; `found` null: nothing to tell. */
export function FoundStatus({ found, more = false }: { found: number | null; more?: boolean }) {
  return (
    <p className="unseen" role="status">
      {found === null
        ? ''
        : more
          ? say('{found} and more found', { found })
          : say('{found} found', { found })}
    </p>
  );
}
