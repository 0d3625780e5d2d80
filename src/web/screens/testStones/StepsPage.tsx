import { useQuery } from '@tanstack/react-query';
import type { ExpectedTime } from '../../../records/bench.ts';
import type { TestCourse } from '../../../records/testCourse.ts';
import { shownFailure } from '../../client/shownFailure.ts';
import { courseSheetAddress, readTestCourse, testCourseKey } from '../../client/testBench.ts';
import { expectedWords } from '../../managers/bench/spanWords.ts';
import { ButtonFile } from '../../parts/Button.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { Fold } from '../../parts/Fold.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';
import { PutAtBench } from './PutAtBench.tsx';
import { StepClock } from './StepClock.tsx';
import type { TestStonePageParts } from './testStonePageParts.ts';

/** Every step of a test stone in order, for whoever etches: made ready for the bench, by the clock, on paper. */
export function StepsPage({ stone, keep }: Pick<TestStonePageParts, 'stone' | 'keep'>) {
  const asked = useQuery({ queryKey: testCourseKey(stone.id), queryFn: () => readTestCourse(stone.id) });
  if (asked.error)
    return (
      <div className="list-foot">
        <FailureNotice failure={shownFailure(asked.error)} />
      </div>
    );
  const course = asked.data;
  if (!course) return <p className="unseen">{say('Opening …')}</p>;
  const { plan } = course;
  return (
    <>
      <PageHead
        stamp={say('{stone}, steps', { stone: stone.name })}
        headline={plan ? say('Every step, in order') : say('On which stone, and with how many hands?')}
      />
      <div className="test-stone-two">
        <div className="test-stone-form">
          {plan ? (
            <StepClock kept={plan} />
          ) : (
            <PutAtBench stone={stone} words={say('Make it ready for the bench')} onReady={keep} />
          )}
          <div className="plan-sheets">
            <ButtonFile href={courseSheetAddress(stone.id, 'etch')}>
              {say('Steps, for whoever etches')}
            </ButtonFile>
            <ButtonFile href={courseSheetAddress(stone.id, 'draw')}>
              {say('What to draw, for whoever draws')}
            </ButtonFile>
          </div>
          {plan && (
            <Fold title={say('Plan the etch anew')}>
              <PutAtBench stone={stone} words={say('Plan it anew')} onReady={keep} />
            </Fold>
          )}
        </div>
        <Stages course={course} />
      </div>
    </>
  );
}

/** How long a stage usually takes, and by what right that is said. */
function timeWords(expected: ExpectedTime): string {
  const span = expectedWords(expected);
  return span === null
    ? say('Usually: {note}.', { note: told(expected.note) })
    : say('Usually {span}: {note}.', { span, note: told(expected.note) });
}

function Stages({ course: { stages, elsewhere } }: { course: TestCourse }) {
  return (
    <section className="test-stone-form" aria-label={say('The stages in order')}>
      <ol className="course-stages">
        {stages.map(({ stage, name, lines, expected, endSign }) => (
          <li key={stage}>
            <b>{told(name)}</b>
            {lines.map(({ what, where }) => (
              <p key={what}>
                {told(what)}: {where.map(told).join('; ')}
              </p>
            ))}
            {stage === 'draw' && <p>{say('As the sheet for whoever draws says.')}</p>}
            {expected && <p className="soft">{timeWords(expected)}</p>}
            <p className="soft">{say('Done when: {endSign}.', { endSign: told(endSign) })}</p>
          </li>
        ))}
      </ol>
      {elsewhere.map(({ treatment, what, where }) => (
        <p key={`${treatment} ${what}`}>
          {treatment}, {told(what)}: {where.map(told).join('; ')}
        </p>
      ))}
    </section>
  );
}
