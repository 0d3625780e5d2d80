import './NotFound.css';
import { useLocation } from 'wouter';
import { ButtonLink } from '../parts/Button.tsx';
import { EmptyPage } from '../parts/EmptyPage.tsx';
import { PageHead } from '../parts/PageHead.tsx';
import { say } from '../words/say.ts';
import { listAbove, nearestPlace } from './nearestPlace.ts';

/**
 * An address that leads nowhere, with the way to the nearest place that is there.
 * @param within address of what is known to be there; without one, the list it would stand in
 */
export function NotFound({ within }: { within?: string }) {
  const [here] = useLocation();
  const near = within === undefined ? listAbove(here) : nearestPlace(within);
  return (
    <>
      <PageHead stamp={say('Not found')} headline={say('There is nothing at this address')} />
      <EmptyPage
        title={say('It may have been taken away')}
        act={
          <p className="not-found-ways">
            {near && (
              <ButtonLink kind="act" href={near.href}>
                {near.words}
              </ButtonLink>
            )}
            <ButtonLink kind={near ? 'plain' : 'act'} href="/">
              {say('To the rack')}
            </ButtonLink>
          </p>
        }
      >
        <p>{say('Or the address was cut short on its way here.')}</p>
      </EmptyPage>
    </>
  );
}
