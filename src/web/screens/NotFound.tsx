import { ButtonLink } from '../parts/Button.tsx';
import { EmptyPage } from '../parts/EmptyPage.tsx';
import { PageHead } from '../parts/PageHead.tsx';

/** An address that leads nowhere. */
export function NotFound() {
  return (
    <>
      <PageHead stamp="Not found" headline="There is nothing at this address" />
      <EmptyPage
        title="It may have been deleted"
        act={
          <ButtonLink kind="act" href="/comparisons">
            To the comparisons
          </ButtonLink>
        }
      >
        <p>Or the address was cut short on its way here.</p>
      </EmptyPage>
    </>
  );
}
