import type { CopiesState, DailyCopy } from '../../../records/copies.ts';
import { checkCopy } from '../../client/copies.ts';
import { checkWords, thinningWords } from '../../managers/copiesTold.ts';
import { Button } from '../../parts/Button.tsx';
import { byteWords } from '../../parts/byteWords.ts';
import { dayWords } from '../../parts/entryWords.ts';
import { Fold } from '../../parts/Fold.tsx';
import { Notice } from '../../parts/Notice.tsx';
import { dayOf } from '../../words/moments.ts';
import { say } from '../../words/say.ts';
import { sayRich } from '../../words/sayRich.ts';

/** What went wrong with copies, those that there are, each to be read back, and which of them stay. */
export function CopiesList({
  state,
  act,
}: {
  state: CopiesState;
  act: (asked: Promise<CopiesState>) => Promise<boolean>;
}) {
  const { folder, notMade, lastGood, copies, sameDisk, keeps } = state;
  if (folder === null)
    return (
      <p>
        {say(
          'If this machine dies, everything in it dies too. Choose a folder on another disk, such as a drive that stays plugged in: a copy goes there once a day, with every record and photograph, and is read back before an older one goes.',
        )}
      </p>
    );
  return (
    <>
      {notMade && (
        <Notice kind="caution" title={notMade.failure.message}>
          {lastGood
            ? say(
                '{remedy} It is tried again every hour; last tried {day}. The last good copy is of {day2}: {file}.',
                {
                  remedy: notMade.failure.remedy,
                  day: dayWords(notMade.at),
                  day2: dayWords(lastGood.madeAt),
                  file: lastGood.file,
                },
              )
            : say('{remedy} It is tried again every hour; last tried {day}. There is no good copy yet.', {
                remedy: notMade.failure.remedy,
                day: dayWords(notMade.at),
              })}
        </Notice>
      )}
      {sameDisk === true && (
        <Notice kind="caution" title={say('The copies lie on the disk that holds the records.')}>
          {say('What takes this disk takes both. Choose a folder on another one.')}
        </Notice>
      )}
      {copies.length > 0 && (
        <ul className="copy-lines" aria-label={say('Copies')}>
          {copies.map((copy) => (
            <CopyLine
              key={copy.day}
              copy={copy}
              busy={state.busy !== null}
              onCheck={() => act(checkCopy(copy.day))}
            />
          ))}
        </ul>
      )}
      {copies.length === 0 && (
        <p>{say('The first copy is made within the hour, or at once by “Copy now”.')}</p>
      )}
      <Fold title={say('Which are kept, and how one is put back')}>
        <p>{thinningWords(keeps)}</p>
        <p>
          {sayRich(
            'One is put back by {code} into a folder that is empty or not there yet; what is in use now is never written over. Any machine’s {code2} opens it too.',
            { code: <code>stonetone restore FILE --data FOLDER</code>, code2: <code>tar</code> },
          )}
        </p>
      </Fold>
    </>
  );
}

function CopyLine({ copy, busy, onCheck }: { copy: DailyCopy; busy: boolean; onCheck: () => void }) {
  const { day, bytes, check } = copy;
  return (
    <li>
      <div>
        <b>{dayOf(day)}</b> <span className="soft">{byteWords(bytes)}</span>
        <p className={check?.failure ? 'field-trouble' : 'soft'}>{checkWords(check)}</p>
        {check?.concerns.map((concern) => (
          <p key={concern} className="soft">
            {say('Mind: {concern}', { concern })}
          </p>
        ))}
      </div>
      <Button
        disabled={busy}
        onClick={onCheck}
        aria-label={say('Read it back: {isoDay}', { isoDay: dayOf(day) })}
      >
        {say('Read it back')}
      </Button>
    </li>
  );
}
