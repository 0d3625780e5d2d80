/** How many a search found, told to those who hear the page; `found` null: nothing to tell. */
export function FoundStatus({ found, more = false }: { found: number | null; more?: boolean }) {
  return (
    <p className="unseen" role="status">
      {found === null ? '' : `${found}${more ? ' and more' : ''} found`}
    </p>
  );
}
