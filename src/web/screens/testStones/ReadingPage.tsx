import { useState } from 'react';
import { patchMark } from '../../../paper/charts/patchMark.ts';
import type { PrintReading, TestStoneReading } from '../../../records/patchReading.ts';
import type { TestStone } from '../../../records/testStone.ts';
import { findingsTableAddress } from '../../client/testStones.ts';
import { holdHeadline } from '../../managers/testStones/holdWords.ts';
import { ButtonFile, ButtonLink } from '../../parts/Button.tsx';
import { CautionList } from '../../parts/CautionList.tsx';
import { Choice } from '../../parts/Choice.tsx';
import { EmptyPage } from '../../parts/EmptyPage.tsx';
import { Fold } from '../../parts/Fold.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { PatchPicture } from '../../parts/PatchPicture.tsx';
import { say } from '../../words/say.ts';
import { sayRich } from '../../words/sayRich.ts';
import { told } from '../../words/told.ts';
import { CorrectPatch } from './CorrectPatch.tsx';
import { PrintPicture, shownFinding } from './FindingPicture.tsx';
import { FindingTable } from './FindingTable.tsx';
import { PrintsBeingRead } from './PrintsBeingRead.tsx';
import { canGoOn, ReadAgain, StoppedPrints, stoppedPrints, stoppedWords } from './StoppedPrints.tsx';
import type { TestStonePageParts } from './testStonePageParts.ts';
import { isBeingRead, useTestStoneReading } from './useTestStoneReading.ts';

/** What became of every patch: on the print, in a table, and put right by hand. */
export function ReadingPage(parts: TestStonePageParts) {
  const reading = useTestStoneReading(parts.stone.id);
  if (!reading) return <p className="unseen">{say('Opening …')}</p>;
  if (reading.findings.length === 0) return <Unread {...parts} reading={reading} />;
  return <Findings {...parts} reading={reading} />;
}

function Unread({ stone, reading, saving, keep }: TestStonePageParts & { reading: TestStoneReading }) {
  const running = isBeingRead(reading);
  const stopped = stoppedPrints(reading.prints);
  const typed =
    stone.list?.sealed === true || stone.patches.some(({ treatment }) => Object.keys(treatment).length > 0);
  // a planned one that nobody has put on a stone yet has its steps before it
  const unmade = stone.planned !== undefined && stone.workId === null && stone.drawn === null;
  const [next, nextWords] = unmade
    ? ['steps', say('To the steps')]
    : typed
      ? ['photographs', say('To the photographs')]
      : ['patches', say('Say what each patch got')];
  return (
    <>
      <PageHead
        stamp={say('{stone}, {count} patches', { stone: stone.name, count: stone.patches.length })}
        headline={running ? say('The patches are being read') : say('Not read yet')}
      />
      {running ? (
        <PrintsBeingRead reading={reading} />
      ) : (
        <EmptyPage
          title={unmade ? say('First it is drawn and etched') : titleOf(stopped)}
          act={
            canGoOn(stopped) ? (
              <ReadAgain stone={stone} saving={saving} keep={keep} kind="act" />
            ) : (
              <ButtonLink kind="act" href={`/test-stones/${stone.id}/${next}`}>
                {nextWords}
              </ButtonLink>
            )
          }
        >
          {stopped.length > 0 ? (
            stopped.map((print) => <p key={print.print}>{stoppedWords(print)}</p>)
          ) : (
            <p>
              {unmade
                ? say(
                    'The steps say on which stone, and what each patch gets. Photograph it drawn, before it is etched, and then a print.',
                  )
                : stone.list?.sealed === true
                  ? say(
                      'Who got what is sealed, and need not be known to read it: add a photograph of the drawn stone and one of a print, with the same four corners on both.',
                    )
                  : typed
                    ? say(
                        'Add a photograph of the drawn stone and one of a print, with the same four corners on both.',
                      )
                    : say(
                        'Say what each patch got; then add a photograph of the drawn stone and one of a print, with the same four corners on both.',
                      )}
            </p>
          )}
        </EmptyPage>
      )}
      {reading.cautions.length > 0 && (
        <div className="list-foot">
          <CautionList cautions={reading.cautions.map(({ message }) => told(message))} />
        </div>
      )}
    </>
  );
}

function titleOf(stopped: readonly PrintReading[]): string {
  if (stopped.length === 0) return say('Two photographs, and it can be read');
  return canGoOn(stopped) ? say('A reading was not finished') : say('A print could not be read');
}

function Findings({
  stone,
  reading,
  save,
  saving,
  keep,
}: TestStonePageParts & { reading: TestStoneReading }) {
  const [picked, setPicked] = useState<string | null>(null);
  const { findings, cautions, judgedBy, prints } = reading;
  const chosen = findings.find(({ patch }) => patch === picked) ?? null;
  const read = prints.filter(({ patches }) => patches.length > 0);
  const marked = findings.some(({ patch: id, row, column }) => patchMark({ id, row, column }) !== null);
  return (
    <>
      <PageHead stamp={`${stone.name}, ${varied(stone)}`} headline={holdHeadline(findings)}>
        <ButtonLink kind="act" href={`/test-stones/${stone.id}/answer`}>
          {say('What does it answer?')}
        </ButtonLink>
      </PageHead>
      <PrintsBeingRead reading={reading} />
      <StoppedPrints stone={stone} saving={saving} keep={keep} prints={prints} />
      <div className="test-stone-two">
        <PatchPicture
          label={say('Patches on the print, laid as on the stone')}
          sizeMm={stone.sizeMm}
          patches={findings.map(shownFinding)}
          picked={new Set(picked === null ? [] : [picked])}
          onPick={(id) => setPicked(id === picked ? null : id)}
          picture={<PrintPicture stone={stone} print={judgedBy} />}
        />
        <div className="test-stone-form">
          <p className="soft">
            {say(
              'H held, W weak, L lost, F filled in, ? not sure or not read, – guide line or stop-out. Press a patch to see it and to put it right.',
            )}
          </p>
          {marked && (
            <p className="soft">
              {say(
                'In the corner of a patch strokes count its row from the head, points its place from the left; barred or a ring: five.',
              )}
            </p>
          )}
          {chosen ? (
            <CorrectPatch key={chosen.patch} stone={stone} print={judgedBy!} finding={chosen} />
          ) : (
            cautions.length > 0 && <CautionList cautions={cautions.map(({ message }) => told(message))} />
          )}
          {read.length > 1 && (
            <Choice
              label={say('Judged by')}
              hint={say('Prints of one stone do not count as more stones: one of them speaks for it.')}
              value={judgedBy!}
              options={read.map(({ print, name }) => [print, name] as const)}
              onChoose={(print) => void (!saving.pending && save({ judgedBy: print }))}
            />
          )}
          <Fold title={say('The rule by which a patch is told')}>
            <RuleWords reading={reading} />
          </Fold>
        </div>
      </div>
      <FindingTable stone={stone} findings={findings} picked={picked} onPick={setPicked} />
      <p className="list-foot">
        <ButtonFile href={findingsTableAddress(stone.id)}>{say('Take the table along (CSV)')}</ButtonFile>
      </p>
    </>
  );
}

function varied({ factors, patches }: TestStone): string {
  const names = factors.map(({ name }) => told(name)).join(', ');
  return names === ''
    ? say('{count} patches', { count: patches.length })
    : say('{names} in {count} patches', { names, count: patches.length });
}

function RuleWords({ reading: { rule } }: { reading: TestStoneReading }) {
  const percent = (share: number) => `${Math.round(share * 100)} %`;
  return (
    <>
      <p>
        {sayRich(
          'A patch is <b>lost</b> where it printed at most {percent} of what was drawn; <b>weak</b> where it is lighter than drawn by more than {percent2} of full cover, or by more than {percent3} of itself where little was drawn; <b>filled in</b> where at most {percent4} was drawn and at least {percent5} printed; else it <b>held</b>. Fainter than {percent6} on the stone it is not judged.',
          {
            b: (words) => <b>{words}</b>,
            percent: percent(rule.lostAtMost),
            percent2: percent(rule.weakBeyond.atMost),
            percent3: percent(rule.weakBeyond.share),
            percent4: percent(rule.filled.drawnAtMost),
            percent5: percent(rule.filled.printedAtLeast),
            percent6: percent(rule.drawnAtLeast),
          },
        )}
      </p>
      <p className="soft">
        {say(
          'Our rule, without a source. A reading by the camera stands with two figures: the truth lies within, 19 times of 20. Where they say something else, both are told.',
        )}
      </p>
    </>
  );
}
