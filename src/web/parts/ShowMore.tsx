import { Button } from './Button.tsx';

/** Asks for the next page of a list, where there is one. */
export function ShowMore({
  pages,
  children,
}: {
  pages: {
    readonly hasNextPage: boolean;
    readonly isFetchingNextPage: boolean;
    readonly fetchNextPage: () => Promise<unknown>;
  };
  /** What the button says. */
  children: string;
}) {
  if (!pages.hasNextPage) return null;
  return (
    <Button onClick={() => void pages.fetchNextPage()} disabled={pages.isFetchingNextPage}>
      {children}
    </Button>
  );
}
