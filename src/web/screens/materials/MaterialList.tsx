import { told } from '../../words/told.ts';
import '../entries/Entries.css';
import { Link } from 'wouter';
import type { Material } from '../../../records/material.ts';
import { hazardsTold, keptApart } from '../../../studio/room/hazardWords.ts';
import { listMaterials, materialsKey } from '../../client/materials.ts';
import { FoundStatus } from '../../parts/FoundStatus.tsx';
import { ListPage } from '../../parts/ListPage.tsx';
import { ListTools } from '../../parts/ListTools.tsx';
import { Notice } from '../../parts/Notice.tsx';
import { Picks } from '../../parts/Picks.tsx';
import { ShowMore } from '../../parts/ShowMore.tsx';
import { say } from '../../words/say.ts';
import { type Shelf, useShelvedList } from '../useShelvedList.ts';
import { CardLinks } from './CardLinks.tsx';

/** What to do first. */
const first = (
  <p>
    {say(
      'Take the safety data sheets that came with what is in the room, and enter what they say: the card for the door and the cards beside the stone are set from it. What is not entered stays a blank on them, never a guess.',
    )}
  </p>
);

/** The hazard register: what is in the room, and what its safety data sheets say. */
export default function MaterialList() {
  const {
    pages,
    items: materials,
    narrowed,
    nothingYet,
    ...list
  } = useShelvedList({
    key: materialsKey,
    narrowing: [],
    read: (asked, after, signal) => listMaterials(asked, after, signal),
    itemsOf: (page) => page.materials,
  });
  const settled = pages.isSuccess && !pages.isPlaceholderData;
  return (
    <ListPage
      stamp={<Link href="/room">{say('Room and hands')}</Link>}
      headline={nothingYet ? say('Materials and hazards') : say('What is in the room')}
      act={{ href: '/materials/new', words: say('Enter a material') }}
      failed={pages.error}
      empty={nothingYet}
      emptyTitle={say('No material is entered yet')}
      emptyWords={first}
    >
      {!nothingYet && (
        <ListTools label={say('Search names and statements')} typed={list.typed} onType={list.setTyped}>
          <Picks<Shelf>
            label={say('Which materials')}
            shownLabel={false}
            value={list.putBy}
            options={[
              ['no', say('In the room')],
              ['yes', say('No longer')],
            ]}
            onPick={list.setPutBy}
          />
        </ListTools>
      )}
      <FoundStatus found={settled && narrowed ? materials.length : null} />
      {materials.length > 0 && list.putBy === 'no' && <CardLinks />}
      {list.putBy === 'no' &&
        keptApart(materials).map((words) => (
          <div key={words} className="list-foot">
            <Notice kind="danger" title={say('Keep apart:')}>
              {words}
            </Notice>
          </div>
        ))}
      {materials.length > 0 && (
        <ul className="entry-lines" aria-label={say('Materials')}>
          {materials.map((material) => (
            <MaterialLine key={material.id} material={material} />
          ))}
        </ul>
      )}
      {settled && narrowed && materials.length === 0 && (
        <p className="list-foot">{say('No material is found so. Ask for fewer words.')}</p>
      )}
      {pages.hasNextPage && (
        <p className="list-foot">
          <ShowMore pages={pages}>{say('Show older entries')}</ShowMore>
        </p>
      )}
    </ListPage>
  );
}

function MaterialLine({ material }: { material: Material }) {
  const { flashPointC, limitMgPerM3, sheetPlace } = material;
  const figures = [
    flashPointC !== null && say('flash point {flashPointC} °C', { flashPointC }),
    limitMgPerM3 !== null && say('limit {limitMgPerM3} mg/m³', { limitMgPerM3 }),
  ].filter((words) => words !== false);
  return (
    <li>
      <Link href={`/materials/${material.id}`}>
        <span className="entry-name">
          <b className="big">{material.name}</b>
          <span className="soft">{figures.join(', ')}</span>
        </span>
        <span>{told(hazardsTold(material))}</span>
        <span className="entry-end">
          {sheetPlace === '' ? say('where its sheet lies is not entered') : ''}
        </span>
      </Link>
    </li>
  );
}
