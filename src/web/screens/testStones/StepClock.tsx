import { useQuery } from '@tanstack/react-query';
import type { KeptPlan } from '../../../records/keptPlan.ts';
import { type BenchLine, benchRun } from '../../../studio/etch/benchRun.ts';
import { minutesSeconds } from '../../../studio/etch/clockWords.ts';
import { openWork, workKey } from '../../client/works.ts';
import { CautionList } from '../../parts/CautionList.tsx';
import { Figure } from '../../parts/Figure.tsx';
import { Notice } from '../../parts/Notice.tsx';
import { ToTheBench } from '../work/ToTheBench.tsx';

/** The etch of a test stone by the clock: how long, in how many rounds, what is laid where, and the way to the bench. */
export function StepClock({ kept }: { kept: KeptPlan }) {
  const { workId, request, plan } = kept;
  const work = useQuery({ queryKey: workKey(workId), queryFn: () => openWork(workId) });
  const run = benchRun(plan);
  const rounds = request.rounds?.length ?? 1;
  const hands = request.people === 1 ? 'one person' : 'two people';
  return (
    <>
      {run.lastsSeconds === null ? (
        <Notice kind="caution" title={`Not by the clock with ${hands}:`}>
          {plan.schedule.reason ?? 'no order was found that can be kept'}. The order of laying stands below.
        </Notice>
      ) : (
        <Figure value={minutesSeconds(run.lastsSeconds)} beside="from first to last">
          {rounds > 1
            ? `The etch with ${hands}, in ${rounds} rounds, replicates apart where they can be, so that the hour tells nothing of the etch.`
            : `The etch with ${hands}, all at once.`}
        </Figure>
      )}
      {work.data && <ToTheBench work={work.data} kind="act" />}
      <div className="plan-power plan-clock">
        <table>
          <caption className="unseen">What is laid where, when, and when it is lifted</caption>
          <thead>
            <tr>
              <th scope="col">Lay at</th>
              <th scope="col">Place</th>
              <th scope="col">What, ml</th>
              <th scope="col">Lift at</th>
            </tr>
          </thead>
          <tbody>
            {run.lines.map((line) => (
              <tr key={line.row.id}>
                <td>{line.row.layFrom === null ? '–' : minutesSeconds(line.row.layFrom)}</td>
                <th scope="row">
                  {line.row.letter} {line.name}
                </th>
                <td>{whatWords(line)}</td>
                <td>{line.liftAt === null ? '–' : minutesSeconds(line.liftAt)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <CautionList cautions={plan.cautions} />
    </>
  );
}

function whatWords({ row }: BenchLine): string {
  if (row.etch) return `${row.etch.name}, ${row.etch.ml} ml`;
  return 'why' in row ? row.why : 'no rule here';
}
