import './Masthead.css';
import { Link, useLocation } from 'wouter';
import { protocolAddress } from '../client/photographs.ts';
import { say } from '../words/say.ts';
import { sayRich } from '../words/sayRich.ts';

/** The rooms, each with the addresses that lie in it. */
const rooms: readonly { readonly name: string; readonly href: string; readonly within: RegExp }[] = [
  { name: say('Rack'), href: '/', within: /^\/($|leaving(\/|$))/ },
  { name: say('Stones'), href: '/stones', within: /^\/stones(\/|$)/ },
  { name: say('Works'), href: '/works', within: /^\/(works|changes)(\/|$)/ },
  { name: say('Week'), href: '/week', within: /^\/(week|studio)(\/|$)/ },
  { name: say('Comparisons'), href: '/comparisons', within: /^\/(comparisons|new)(\/|$)/ },
  { name: say('Tests'), href: '/test-stones', within: /^\/test-stones(\/|$)/ },
  { name: say('Tables'), href: '/tables', within: /^\/(tables|known)(\/|$)/ },
  { name: say('Mixing'), href: '/mixing', within: /^\/(mixing|batches|inks)(\/|$)/ },
  { name: say('Reports'), href: '/reports', within: /^\/reports(\/|$)/ },
  { name: say('Keeping'), href: '/keeping', within: /^\/(keeping|protocols|labels)(\/|$)/ },
  { name: say('Phones'), href: '/phones', within: /^\/(phones|join)(\/|$)/ },
  { name: say('Room'), href: '/room', within: /^\/(room|materials)(\/|$)/ },
];

/** The head of every screen: whose page it is, and the rooms there are. */
export function Masthead() {
  const [path] = useLocation();
  return (
    <header className="masthead">
      <a className="past-the-head" href="#main">
        {say('Past the head of the page')}
      </a>
      <Link href="/" className="masthead-name">
        {say('Stonetone')}
      </Link>
      <nav aria-label={say('Rooms')}>
        {rooms.map(({ name, href, within }) => (
          <Link key={href} href={href} aria-current={within.test(path) ? 'page' : undefined}>
            {name}
          </Link>
        ))}
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
