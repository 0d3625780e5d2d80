import './StoneScreen.css';
import { useQuery } from '@tanstack/react-query';
import { shownFailure } from '../../client/shownFailure.ts';
import { openStone, stoneKey } from '../../client/stones.ts';
import { ButtonLink } from '../../parts/Button.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { say } from '../../words/say.ts';
import { StonePage } from './StonePage.tsx';

/** One stone, as far as it could be read. */
export default function StoneScreen({ id }: { id: string }) {
  const stone = useQuery({ queryKey: stoneKey(id), queryFn: () => openStone(id) });
  if (stone.data) return <StonePage stone={stone.data} />;
  if (stone.isPending) return <p className="unseen">{say('Opening the stone …')}</p>;
  return (
    <>
      <PageHead stamp={say('Stone')} headline={say('This stone cannot be shown')} />
      <div className="list-foot">
        <FailureNotice failure={shownFailure(stone.error)} />
        <ButtonLink href="/stones">{say('To the stones')}</ButtonLink>
      </div>
    </>
  );
}
