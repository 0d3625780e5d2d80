import { ButtonLink } from '../parts/Button.tsx';
import { EmptyPage } from '../parts/EmptyPage.tsx';
import { PageHead } from '../parts/PageHead.tsx';
import { say } from '../words/say.ts';

/** An address that leads nowhere. */
export function NotFound() {
  return (
    <>
      <PageHead stamp={say('Not found')} headline={say('There is nothing at this address')} />
      <EmptyPage
        title={say('It may have been taken away')}
        act={
          <ButtonLink kind="act" href="/">
            {say('To the rack')}
          </ButtonLink>
        }
      >
        <p>{say('Or the address was cut short on its way here.')}</p>
      </EmptyPage>
    </>
  );
}
