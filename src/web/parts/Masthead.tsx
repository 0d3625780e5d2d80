import './Masthead.css';
import { Link, useLocation } from 'wouter';
import { protocolAddress } from '../client/photographs.ts';

/** The rooms, each with the addresses that lie in it. */
const rooms: readonly { readonly name: string; readonly href: string; readonly within: RegExp }[] = [
  { name: 'Rack', href: '/', within: /^\/($|leaving(\/|$))/ },
  { name: 'Stones', href: '/stones', within: /^\/stones(\/|$)/ },
  { name: 'Works', href: '/works', within: /^\/(works|changes)(\/|$)/ },
  { name: 'Week', href: '/week', within: /^\/(week|studio)(\/|$)/ },
  { name: 'Comparisons', href: '/comparisons', within: /^\/(comparisons|new)(\/|$)/ },
  { name: 'Tests', href: '/test-stones', within: /^\/test-stones(\/|$)/ },
  { name: 'Tables', href: '/tables', within: /^\/(tables|known)(\/|$)/ },
  { name: 'Mixing', href: '/mixing', within: /^\/(mixing|batches|inks)(\/|$)/ },
  { name: 'Reports', href: '/reports', within: /^\/reports(\/|$)/ },
  { name: 'Keeping', href: '/keeping', within: /^\/(keeping|protocols|labels)(\/|$)/ },
  { name: 'Phones', href: '/phones', within: /^\/(phones|join)(\/|$)/ },
  { name: 'Room', href: '/room', within: /^\/(room|materials)(\/|$)/ },
];

/** The head of every screen: whose page it is, and the rooms there are. */
export function Masthead() {
  const [path] = useLocation();
  return (
    <header className="masthead">
      <a className="past-the-head" href="#main">
        Past the head of the page
      </a>
      <Link href="/" className="masthead-name">
        Stonetone
      </Link>
      <nav aria-label="Rooms">
        {rooms.map(({ name, href, within }) => (
          <Link key={href} href={href} aria-current={within.test(path) ? 'page' : undefined}>
            {name}
          </Link>
        ))}
      </nav>
      <a href={protocolAddress} className="masthead-paper">
        How to photograph <span className="soft">PDF</span>
      </a>
    </header>
  );
}
