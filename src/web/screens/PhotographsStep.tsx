import './PhotographsStep.css';
import { useEffect } from 'react';
import { useLocation } from 'wouter';
import { protocolAddress } from '../client/photographs.ts';
import { missingPart } from '../managers/draft.ts';
import { Button } from '../parts/Button.tsx';
import { PageHead } from '../parts/PageHead.tsx';
import { PhotographPlaceholder } from '../parts/PhotographPlaceholder.tsx';
import { say } from '../words/say.ts';
import { sayRich } from '../words/sayRich.ts';
import type { PhotographedThing } from './camera/photographedThing.ts';
import { TakeHere } from './camera/TakeHere.tsx';
import { useDraft } from './useDraft.ts';
import { usePhotographUpload } from './usePhotographUpload.ts';

/** First step: the two photographs, dropped, pasted or chosen. */
export function PhotographsStep() {
  const draft = useDraft();
  const [, go] = useLocation();
  const stone = usePhotographUpload('stone', 'photograph');
  const proof = usePhotographUpload('proof', 'photograph');
  const ready = missingPart(draft) !== 'photographs';
  useEffect(() => {
    // The stone's place is filled first, then the print's.
    const takeAll = (pictures: readonly File[]) => {
      const first = draft.stone.photograph ? proof : stone;
      if (pictures[0]) first.take(pictures[0]);
      if (pictures[1] && first === stone) proof.take(pictures[1]);
    };
    const paste = (event: ClipboardEvent) => takeAll([...(event.clipboardData?.files ?? [])]);
    // A file let go beside its place would take the browser away from this page.
    const over = (event: DragEvent) => event.preventDefault();
    const drop = (event: DragEvent) => {
      if (event.defaultPrevented) return;
      event.preventDefault();
      takeAll([...(event.dataTransfer?.files ?? [])]);
    };
    document.addEventListener('paste', paste);
    document.addEventListener('dragover', over);
    document.addEventListener('drop', drop);
    return () => {
      document.removeEventListener('paste', paste);
      document.removeEventListener('dragover', over);
      document.removeEventListener('drop', drop);
    };
  });
  return (
    <>
      <PageHead
        stamp={say('New comparison')}
        headline={say('One photograph of the stone, one of the print')}
      />
      <p className="step-lead">
        {sayRich(
          'Both square on and under the same light, with bare stone and clean paper showing all round. <span>Lay them here, paste them, or choose them. </span><a>The sheet on how to photograph (PDF)</a>',
          {
            span: (words) => <span className="with-keys">{words}</span>,
            a: (words) => <a href={protocolAddress}>{words}</a>,
          },
        )}
      </p>
      <div className="photograph-pair">
        <PhotographPlaceholder
          kind="stone"
          title={say('The drawn stone')}
          advice={say('drawn, or inked and fanned dry before powder')}
          photograph={draft.stone.photograph}
          upload={stone}
          onSecond={proof.take}
        >
          <TakeHere thing={pictured(say('the drawn stone'), 'stone')} onPhotographs={stone.take} />
        </PhotographPlaceholder>
        <PhotographPlaceholder
          kind="print"
          title={say('A print from it')}
          advice={say('as it came off the press, flat')}
          photograph={draft.proof.photograph}
          upload={proof}
          onSecond={stone.take}
        >
          <TakeHere thing={pictured(say('the print'), 'sheet')} onPhotographs={proof.take} />
        </PhotographPlaceholder>
      </div>
      <div className="new-foot">
        <Button kind="act" disabled={!ready} onClick={() => go('/new/stone')}>
          {say('Set the corners')}
        </Button>
        {!ready && <p className="soft">{say('Both photographs are needed first.')}</p>}
      </div>
    </>
  );
}

/** Its size is asked for later. */
function pictured(name: string, sizeOf: PhotographedThing['sizeOf']): PhotographedThing {
  return { name, sizeMm: null, sizeOf };
}
