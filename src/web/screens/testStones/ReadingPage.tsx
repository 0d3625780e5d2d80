import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { TestStoneReading } from '../../../records/patchReading.ts';
import type { TestStone } from '../../../records/testStone.ts';
import { findingsTableAddress, readTestStone, testStoneReadingKey } from '../../client/testStones.ts';
import { holdHeadline } from '../../managers/testStones/holdWords.ts';
import { ButtonFile, ButtonLink } from '../../parts/Button.tsx';
import { CautionList } from '../../parts/CautionList.tsx';
import { Choice } from '../../parts/Choice.tsx';
import { EmptyPage } from '../../parts/EmptyPage.tsx';
import { Fold } from '../../parts/Fold.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { PatchPicture } from '../../parts/PatchPicture.tsx';
import { CorrectPatch } from './CorrectPatch.tsx';
import { PrintPicture, shownFinding } from './FindingPicture.tsx';
import { FindingTable } from './FindingTable.tsx';
import type { TestStonePageParts } from './testStonePageParts.ts';

/** How often one asks while prints are being read, ms. */
const askAgainMs = 1000;

/** What became of every patch: on the print, in a table, and put right by hand. */
export function ReadingPage(parts: TestStonePageParts) {
  const { stone } = parts;
  const { data } = useQuery({
    queryKey: testStoneReadingKey(stone.id),
    queryFn: () => readTestStone(stone.id),
    refetchInterval: ({ state }) => (state.data && isRunning(state.data) ? askAgainMs : false),
  });
  if (!data) return <p className="unseen">Opening …</p>;
  if (data.findings.length === 0) return <Unread {...parts} reading={data} />;
  return <Findings {...parts} reading={data} />;
}

function isRunning({ prints }: TestStoneReading): boolean {
  return prints.some(({ state }) => state === 'waiting' || state === 'measuring');
}

function Unread({ stone, reading }: TestStonePageParts & { reading: TestStoneReading }) {
  const running = isRunning(reading);
  const stopped = reading.prints.filter(({ reason }) => reason !== null);
  const typed =
    stone.list?.sealed === true || stone.patches.some(({ treatment }) => Object.keys(treatment).length > 0);
  const next = typed ? 'photographs' : 'patches';
  return (
    <>
      <PageHead
        stamp={`${stone.name}, ${stone.patches.length} patches`}
        headline={running ? 'The patches are being read' : 'Not read yet'}
      />
      {running ? (
        <p className="list-foot" role="status">
          Straightening the photographs and laying the print onto the stone; this takes some seconds.
        </p>
      ) : (
        <EmptyPage
          title={stopped.length > 0 ? 'A print could not be read' : 'Two photographs, and it can be read'}
          act={
            <ButtonLink kind="act" href={`/test-stones/${stone.id}/${next}`}>
              {typed ? 'To the photographs' : 'Say what each patch got'}
            </ButtonLink>
          }
        >
          {stopped.length > 0 ? (
            stopped.map(({ print, name, reason }) => (
              <p key={print}>
                {name}: {reason}.
              </p>
            ))
          ) : (
            <p>
              Say what each patch got; then add a photograph of the drawn stone and one of a print, with the
              same four corners on both.
            </p>
          )}
        </EmptyPage>
      )}
      {reading.cautions.length > 0 && (
        <div className="list-foot">
          <CautionList cautions={reading.cautions.map(({ message }) => message)} />
        </div>
      )}
    </>
  );
}

function Findings({ stone, reading, save, saving }: TestStonePageParts & { reading: TestStoneReading }) {
  const [picked, setPicked] = useState<string | null>(null);
  const { findings, cautions, judgedBy, prints } = reading;
  const chosen = findings.find(({ patch }) => patch === picked) ?? null;
  const read = prints.filter(({ patches }) => patches.length > 0);
  return (
    <>
      <PageHead stamp={`${stone.name}, ${varied(stone)}`} headline={holdHeadline(findings)}>
        <ButtonLink kind="act" href={`/test-stones/${stone.id}/answer`}>
          What does it answer?
        </ButtonLink>
      </PageHead>
      <div className="test-stone-two">
        <PatchPicture
          label="Patches on the print, laid as on the stone"
          sizeMm={stone.sizeMm}
          patches={findings.map(shownFinding)}
          picked={new Set(picked === null ? [] : [picked])}
          onPick={(id) => setPicked(id === picked ? null : id)}
          picture={<PrintPicture stone={stone} print={judgedBy} />}
        />
        <div className="test-stone-form">
          <p className="soft">
            H held, W weak, L lost, F filled in, ? not sure or not read, – guide line or stop-out. Press a
            patch to see it and to put it right.
          </p>
          {chosen ? (
            <CorrectPatch key={chosen.patch} stone={stone} print={judgedBy!} finding={chosen} />
          ) : (
            cautions.length > 0 && <CautionList cautions={cautions.map(({ message }) => message)} />
          )}
          {read.length > 1 && (
            <Choice
              label="Judged by"
              hint="Prints of one stone are no replicates: one of them speaks for it."
              value={judgedBy!}
              options={read.map(({ print, name }) => [print, name] as const)}
              onChoose={(print) => void (!saving.pending && save({ judgedBy: print }))}
            />
          )}
          <Fold title="The rule by which a patch is told">
            <RuleWords reading={reading} />
          </Fold>
        </div>
      </div>
      <FindingTable stone={stone} findings={findings} picked={picked} onPick={setPicked} />
      <p className="list-foot">
        <ButtonFile href={findingsTableAddress(stone.id)}>Take the table along (CSV)</ButtonFile>
      </p>
    </>
  );
}

function varied({ factors, patches }: TestStone): string {
  const names = factors.map(({ name }) => name).join(', ');
  return names === '' ? `${patches.length} patches` : `${names} in ${patches.length} patches`;
}

function RuleWords({ reading: { rule } }: { reading: TestStoneReading }) {
  const percent = (share: number) => `${Math.round(share * 100)} %`;
  return (
    <>
      <p>
        A patch is <b>lost</b> where it printed at most {percent(rule.lostAtMost)} of what was drawn;{' '}
        <b>weak</b> where it is lighter than drawn by more than {percent(rule.weakBeyond.atMost)} of full
        cover, or by more than {percent(rule.weakBeyond.share)} of itself where little was drawn;{' '}
        <b>filled in</b> where at most {percent(rule.filled.drawnAtMost)} was drawn and at least{' '}
        {percent(rule.filled.printedAtLeast)} printed; else it <b>held</b>. Fainter than{' '}
        {percent(rule.drawnAtLeast)} on the stone it is not judged.
      </p>
      <p className="soft">
        Our rule, without a source. Intervals are those of the camera’s reading, 95 %. Where their ends say
        something else, both are told.
      </p>
    </>
  );
}
