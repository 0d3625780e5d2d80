import './Masthead.css';
import { useState } from 'react';
import { Link, useLocation } from 'wouter';
import { protocolAddress } from '../client/photographs.ts';
import { say } from '../words/say.ts';
import { sayRich } from '../words/sayRich.ts';

/** The rooms, each with the addresses that lie in it. */
const rooms: readonly { readonly name: string; readonly href: string; readonly within: RegExp }[] = [
  { name: say('Rack'), href: '/', within: /^\/($|leaving(\/|$))/ },
  { name: say('Stones'), href: '/stones', within: /^\/stones(\/|$)/ },
  { name: say('Works'), href: '/works', within: /^\/(works|changes|editions)(\/|$)/ },
  { name: say('Week'), href: '/week', within: /^\/(week|studio)(\/|$)/ },
  { name: say('Comparisons'), href: '/comparisons', within: /^\/(comparisons|new)(\/|$)/ },
  { name: say('Test stones'), href: '/test-stones', within: /^\/test-stones(\/|$)/ },
  { name: say('Etch tables'), href: '/tables', within: /^\/(tables|known)(\/|$)/ },
  { name: say('Mixing and kit'), href: '/mixing', within: /^\/(mixing|batches|inks|kit)(\/|$)/ },
  { name: say('Reports'), href: '/reports', within: /^\/reports(\/|$)/ },
  { name: say('Copies and labels'), href: '/keeping', within: /^\/(keeping|protocols|labels)(\/|$)/ },
  { name: say('Phones'), href: '/phones', within: /^\/(phones|join)(\/|$)/ },
  { name: say('Room'), href: '/room', within: /^\/(room|materials)(\/|$)/ },
];

/** The head of every screen: whose page it is, and the rooms there are; on a phone those lie folded behind a word. */
export function Masthead() {
  const [path] = useLocation();
  const [unfoldedAt, setUnfoldedAt] = useState<string | null>(null);
  // Going to a room folds the list of them again.
  const unfolded = unfoldedAt === path;
  const here = rooms.find(({ within }) => within.test(path));
  return (
    <header className={unfolded ? 'masthead unfolded' : 'masthead'}>
      <a className="past-the-head" href="#main">
        {say('Past the head of the page')}
      </a>
      <Link href="/" className="masthead-name">
        {say('Stonetone')}
      </Link>
      <nav aria-label={say('The pages of Stonetone')}>
        <button
          type="button"
          className="masthead-fold"
          aria-expanded={unfolded}
          onClick={() => setUnfoldedAt(unfolded ? null : path)}
        >
          {here && <b>{here.name}</b>}
          <span>{unfolded ? say('Close') : say('All pages')}</span>
        </button>
        <div className="masthead-rooms">
          {rooms.map((room) => (
            <Link key={room.href} href={room.href} aria-current={room === here ? 'page' : undefined}>
              {room.name}
            </Link>
          ))}
        </div>
      </nav>
      <Link href="/words" className="masthead-paper" aria-current={path === '/words' ? 'page' : undefined}>
        {say('Language')}
      </Link>
      <a href={protocolAddress} className="masthead-paper">
        {sayRich('How to photograph <span>PDF</span>', {
          span: (words) => <span className="soft">{words}</span>,
        })}
      </a>
    </header>
  );
}
