import { useQuery } from '@tanstack/react-query';
import type { KeptPlan } from '../../../records/keptPlan.ts';
import { type BenchLine, benchRun } from '../../../studio/etch/benchRun.ts';
import { minutesSeconds } from '../../../studio/etch/clockWords.ts';
import { openWork, workKey } from '../../client/works.ts';
import { CautionList } from '../../parts/CautionList.tsx';
import { Figure } from '../../parts/Figure.tsx';
import { Notice } from '../../parts/Notice.tsx';
import { figureText } from '../../words/figures.ts';
import { say } from '../../words/say.ts';
import { told, toldOr } from '../../words/told.ts';
import { WorkStanding } from '../rack/StoneStanding.tsx';
import { ToTheBench } from '../work/ToTheBench.tsx';

/**
 * The etch of a test stone by the clock: how long, in how many rounds, how its stone stands and since when, the way to the
 * bench, and what is laid where.
 */
export function StepClock({ kept }: { kept: KeptPlan }) {
  const { workId, request, plan } = kept;
  const work = useQuery({ queryKey: workKey(workId), queryFn: () => openWork(workId) });
  const run = benchRun(plan);
  const rounds = request.rounds?.length ?? 1;
  const { people } = request;
  return (
    <>
      {run.lastsSeconds === null ? (
        <Notice
          kind="caution"
          title={say('Not by the clock with {people, plural, one {one person} other {two people}}:', {
            people,
          })}
        >
          {say('{reason}. The order of laying stands below.', {
            reason: toldOr(plan.schedule.reason) ?? say('no order was found that can be kept'),
          })}
        </Notice>
      ) : (
        <Figure value={minutesSeconds(run.lastsSeconds)} beside={say('from first to last')}>
          {say(
            '{rounds, plural, one {The etch with {people, plural, one {one person} other {two people}}, all at once.} other {The etch with {people, plural, one {one person} other {two people}}, in {rounds} rounds, patches that get the same apart where they can be, so that the hour tells nothing of the etch.}}',
            { rounds, people },
          )}
        </Figure>
      )}
      <WorkStanding work={workId} />
      {work.data && <ToTheBench work={work.data} kind="act" />}
      <div className="plan-power plan-clock">
        <table>
          <caption className="unseen">{say('What is laid where, when, and when it is lifted')}</caption>
          <thead>
            <tr>
              <th scope="col">{say('Lay at')}</th>
              <th scope="col">{say('Place')}</th>
              <th scope="col">{say('What, ml')}</th>
              <th scope="col">{say('Lift at')}</th>
            </tr>
          </thead>
          <tbody>
            {run.lines.map((line) => (
              <tr key={line.row.id}>
                <td>{line.row.layFrom === null ? '–' : minutesSeconds(line.row.layFrom)}</td>
                <th scope="row">
                  {line.row.letter} {told(line.name)}
                </th>
                <td>{whatWords(line)}</td>
                <td>{line.liftAt === null ? '–' : minutesSeconds(line.liftAt)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <CautionList cautions={plan.cautions.map(told)} />
    </>
  );
}

function whatWords({ row }: BenchLine): string {
  if (row.etch) return `${told(row.etch.name)}, ${figureText(row.etch.ml)} ml`;
  return 'why' in row ? told(row.why) : say('no rule here');
}
