import './PlanTable.css';
import type { PlannedPart, PlannedZone } from '../../../records/etch.ts';
import type { KeptPlan } from '../../../records/keptPlan.ts';
import { areaDoubts, areaDoubtWords, doubtWords, filmDoubtMl } from '../../../studio/etch/areaDoubt.ts';
import { benchRun } from '../../../studio/etch/benchRun.ts';
import { minutesSeconds } from '../../../studio/etch/clockWords.ts';
import { groundId } from '../../../studio/etch/planAreas.ts';
import { StrengthSwatch } from '../../parts/StrengthSwatch.tsx';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';
import { toldText } from '../../words/toldText.ts';
import { areaDoubtText, areaWords } from './drawingWords.ts';
import { PlanRowWhy } from './PlanRowWhy.tsx';
import { amountWords, contactRange, plannedContact } from './planWords.ts';

/** Every zone with its etch, amounts and times, and why it is so. Pointing at a row shows it on the stone. */
export function PlanTable({
  kept,
  pointed,
  onPoint,
}: {
  kept: KeptPlan;
  pointed: string | null;
  onPoint: (id: string | null) => void;
}) {
  const doubts = areaDoubts(kept.request);
  const { filmMm } = kept.request;
  const liftAt = new Map(benchRun(kept.plan).lines.map((line) => [line.row.id, line.liftAt]));
  return (
    <section aria-labelledby="rows-head">
      <h2 id="rows-head" className="big">
        {say('Zone by zone')}
      </h2>
      <p className="soft">
        {say(
          'Laid and lift at: when it begins, by the clock from the first touch, as on the step sheet. Contact: from the end of laying to the end of lifting. {areaDoubtWords}',
          { areaDoubtWords: toldText(areaDoubtWords) },
        )}
      </p>
      <table className="plan-table">
        <thead>
          <tr>
            <th scope="col">{say('Zone')}</th>
            <th scope="col">{say('Etch')}</th>
            <th scope="col" className="figure">
              {say('To measure out')}
            </th>
            <th scope="col" className="figure">
              {say('Laid')}
            </th>
            <th scope="col" className="figure">
              {say('Lift at')}
            </th>
            <th scope="col" className="figure">
              {say('Contact')}
            </th>
            <th scope="col" className="figure">
              {say('Moved within')}
            </th>
          </tr>
        </thead>
        {kept.plan.zones.map((zone) => (
          <tbody
            key={zone.id}
            className={zone.id === pointed ? 'pointed' : undefined}
            onPointerEnter={() => onPoint(zone.id)}
            onPointerLeave={() => onPoint(null)}
          >
            {zone.parts.length === 0 ? (
              <PlanRow
                row={zone}
                name={zone.id === groundId ? told(zone.name) : zone.name}
                liftAt={liftAt.get(zone.id) ?? null}
                doubtCm2={doubts.get(zone.id) ?? null}
                filmMm={filmMm}
              />
            ) : (
              zone.parts.map((part) => (
                <PlanRow
                  key={part.id}
                  row={part}
                  name={`${zone.name}, ${told(part.strength)}`}
                  liftAt={liftAt.get(part.id) ?? null}
                  doubtCm2={doubts.get(part.id) ?? null}
                  filmMm={filmMm}
                />
              ))
            )}
            <tr>
              <td colSpan={7} className="plan-why">
                <PlanRowWhy zone={zone} kept={kept} />
              </td>
            </tr>
          </tbody>
        ))}
      </table>
    </section>
  );
}

function PlanRow({
  row,
  name,
  liftAt,
  doubtCm2,
  filmMm,
}: {
  row: PlannedZone | PlannedPart;
  name: string;
  /** When lifting begins, seconds from the first touch; null without a schedule. */
  liftAt: number | null;
  /** The ± of its area, 95 %; null: unknown. */
  doubtCm2: number | null;
  filmMm: number;
}) {
  const { letter, areaCm2, strength, etch } = row;
  const contact = plannedContact(row);
  return (
    <tr>
      <th scope="row">
        <b className="big">{letter}</b>
        <span>
          {name}
          <span className="soft">
            {areaWords(areaCm2)} {areaDoubtText(doubtCm2)}
          </span>
        </span>
      </th>
      <td data-label={say('Etch')}>
        <span className="plan-etch">
          {strength ? <StrengthSwatch strength={strength} /> : <span className="no-rule-swatch" />}
          <span>
            {etch ? told(etch.name) : say('no rule here: test a patch first')}
            {strength && <span className="soft">{told(strength)}</span>}
          </span>
        </span>
      </td>
      <td data-label={say('To measure out')} className="figure">
        {etch ? (
          <>
            <b>{say('{ml} ml', { ml: etch.ml })}</b>
            <span className="soft">{toldText(doubtWords(filmDoubtMl(doubtCm2, filmMm)))}</span>
            {etch.parts.length > 1 && <span className="soft">{etch.parts.map(amountWords).join(', ')}</span>}
          </>
        ) : (
          '–'
        )}
      </td>
      <td data-label={say('Laid')} className="figure">
        {row.layFrom === null ? '–' : minutesSeconds(row.layFrom)}
      </td>
      <td data-label={say('Lift at')} className="figure">
        {liftAt === null ? '–' : minutesSeconds(liftAt)}
      </td>
      <td data-label={say('Contact')} className="figure">
        <b>{contact ?? '–'}</b>
        <span className="soft">{contactRange(row.contactSeconds)}</span>
      </td>
      <td data-label={say('Moved within')} className="figure">
        {row.longestGapSeconds === null
          ? '–'
          : say('{longestGapSeconds} s', { longestGapSeconds: row.longestGapSeconds })}
      </td>
    </tr>
  );
}
