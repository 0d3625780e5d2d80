import './StoneScreen.css';
import { Link } from 'wouter';
import type { Basis } from '../../../foundation/measured.ts';
import type { StoneEntry } from '../../../records/stoneEntry.ts';
import { levelLimits } from '../../../studio/stones/levelVerdict.ts';
import { liftingCaution } from '../../../studio/stones/liftingCaution.ts';
import { inPageWords } from '../../client/inPageWords.ts';
import { labelsPage } from '../../client/labels.ts';
import { stoneColourWords } from '../../managers/stoneColours.ts';
import { ButtonLink } from '../../parts/Button.tsx';
import { Figure } from '../../parts/Figure.tsx';
import { Notice } from '../../parts/Notice.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { StoneDrawing } from '../../parts/StoneDrawing.tsx';
import { StonePlan } from '../../parts/StonePlan.tsx';
import { workStageWords } from '../../parts/stageWords.ts';
import { inchUnitOf, lengthFigure, lengthWords, sizeWords } from '../../words/lengths.ts';
import { dayOf } from '../../words/moments.ts';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';
import { StoneStanding } from '../rack/StoneStanding.tsx';
import { PressSetUp } from './PressSetUp.tsx';
import { PutStoneBy } from './PutStoneBy.tsx';
import { StoneFactsSection } from './StoneFactsSection.tsx';
import { StoneLog } from './StoneLog.tsx';
import { StonePhotographs } from './StonePhotographs.tsx';
import { grainingLog, levelLog } from './stoneLogs.ts';
import { kilograms, stoneFinding } from './stoneWords.ts';

/** A stone whole: how it lies, what it weighs, what was done to it, and what is on it. */
export function StonePage({ stone }: { stone: StoneEntry }) {
  const { widthMm, heightMm, cornerThicknessMm, colour } = stone;
  const first = workOn(stone);
  const anyCorner = cornerThicknessMm.some((thickness) => thickness !== null);
  const lastGrained = anyCorner
    ? stone.graining.toSorted((a, b) => a.at.localeCompare(b.at)).at(-1)
    : undefined;
  return (
    <div className="stone-screen">
      <div className="stone-head">
        <PageHead
          stamp={
            stone.sample
              ? say('Stone · {size}{colour} · sample from Saltreach, an invented studio', {
                  size: sizeWords(widthMm, heightMm),
                  colour: colour && `, ${stoneColourWords(colour)}`,
                })
              : say('Stone · {size}{colour}', {
                  size: sizeWords(widthMm, heightMm),
                  colour: colour && `, ${stoneColourWords(colour)}`,
                })
          }
          headline={stoneFinding(stone)}
        />
      </div>
      <div className="stone-bed">
        <div>
          <StonePlan widthMm={widthMm} heightMm={heightMm} corners={cornerThicknessMm} colour={colour}>
            {first && <StoneDrawing work={first.id} widthMm={widthMm} heightMm={heightMm} fineness={170} />}
          </StonePlan>
          <p className="stone-bed-words">
            {say('From above, head away from you; its thickness at each corner{first}', {
              first: first && say('; on it {title}', { title: first.title }),
            })}
          </p>
          {lastGrained && (
            <p className="stone-bed-words">
              {say('Last grained {day}: corners entered before that are to be measured again.', {
                day: dayOf(lastGrained.at),
              })}
            </p>
          )}
        </div>
      </div>
      <div className="stone-sheet">
        <StoneStanding stone={stone.id} />
        <StoneFigures stone={stone} />
        <StoneWorks stone={stone} />
        <p>
          <a href={inPageWords(`/api/stones/${stone.id}/book.pdf`)}>{say('Book of the stone')}</a>{' '}
          <span className="soft">{say('PDF')}</span>,{' '}
          <Link href={labelsPage({ stones: [stone.id] })}>{say('a label for it')}</Link>
        </p>
        <StoneLog kind={grainingLog} stone={stone} />
        <StoneLog kind={levelLog} stone={stone} />
        <PressSetUp stone={stone} />
        <StonePhotographs stone={stone} />
        <StoneFactsSection stone={stone} />
        <PutStoneBy stone={stone} />
      </div>
    </div>
  );
}

/** The work whose image is on the stone; those that were grained away are only told of. */
function workOn(stone: StoneEntry): StoneEntry['works'][number] | undefined {
  return stone.works.find(({ stage }) => stage !== 'regrained');
}

function StoneFigures({ stone: { massKg, verdict, straightedge } }: { stone: StoneEntry }) {
  const last = straightedge.at(-1);
  const outdated = verdict.level === 'not measured';
  return (
    <section aria-label={say('Mass and level')}>
      <div className="stone-figures">
        <Figure value={massKg ? kilograms(massKg.value) : '–'} beside={say('kg')}>
          {massKg
            ? say('{kilograms} to {kilograms2} kg, by {density}', {
                kilograms: kilograms(massKg.low),
                kilograms2: kilograms(massKg.high),
                density: densityWords(massKg.basis),
              })
            : say('mass not known: no thickness yet')}
        </Figure>
        <Figure
          value={last && !outdated ? lengthFigure(last.gapMm, 2) : '–'}
          beside={inchUnitOf('mm')?.unit ?? 'mm'}
        >
          {last && outdated
            ? say('level not known: {gap} was read before it was grained', {
                gap: lengthWords(last.gapMm, 2),
              })
            : last
              ? say('under the straightedge; level up to {straightedgeMm}', {
                  straightedgeMm: lengthFigure(levelLimits.straightedgeMm, 2),
                })
              : say('level not measured')}
        </Figure>
        <Figure
          value={verdict.wedgeMm === null ? '–' : lengthFigure(verdict.wedgeMm, 2)}
          beside={inchUnitOf('mm')?.unit ?? 'mm'}
        >
          {verdict.wedgeMm === null
            ? say('four corners needed')
            : say('between the corners; even up to {cornersMm}', {
                cornersMm: lengthFigure(levelLimits.cornersMm, 2),
              })}
        </Figure>
      </div>
      <div className="stone-cautions">
        {verdict.sentences.map((sentence) => (
          <Notice key={sentence} kind="caution" title={say('Mind:')}>
            {told(sentence)}
          </Notice>
        ))}
        {massKg?.warnings.map((warning) => (
          <Notice key={warning} kind="aside" title={say('Mass:')}>
            {warning}
          </Notice>
        ))}
        <Notice kind="caution" title={say('Lifting:')}>
          {liftingCaution(massKg)}
        </Notice>
      </div>
    </section>
  );
}

function densityWords(basis: Basis): string {
  return basis === 'typed' ? say('the density typed') : say('the trade’s density');
}

function StoneWorks({ stone }: { stone: StoneEntry }) {
  const first = workOn(stone);
  if (stone.putBy && stone.works.length === 0) return null;
  return (
    <section className="stone-works" aria-label={say('Works on it')}>
      <h2 className="big">{first ? say('On this stone') : say('Nothing is on it')}</h2>
      <ul>
        {stone.works.map(({ id, title, stage }) => (
          <li key={id}>
            <Link href={`/works/${id}`}>
              <b>{title}</b> <span className="soft">{workStageWords[stage]}</span>
            </Link>
          </li>
        ))}
      </ul>
      <div className="stone-works-acts">
        {first && (
          <ButtonLink kind="act" href={`/works/${first.id}`}>
            {say('Open {title}', { title: first.title })}
          </ButtonLink>
        )}
        {!stone.putBy && (
          <ButtonLink kind={first ? 'quiet' : 'act'} href={`/works/new?stone=${stone.id}`}>
            {first ? say('Start another work on it') : say('Start a work on it')}
          </ButtonLink>
        )}
        {!stone.putBy && !first && <ButtonLink href="/test-stones/plan">{say('Plan a test')}</ButtonLink>}
      </div>
    </section>
  );
}
