import './Masthead.css';
import { Link, useRoute } from 'wouter';
import { protocolAddress } from '../client/photographs.ts';

/** The head of every screen: whose page it is, and the rooms there are. */
export function Masthead() {
  const [atNew] = useRoute('/new/*?');
  return (
    <header className="masthead">
      <a className="past-the-head" href="#main">
        Past the head of the page
      </a>
      <Link href="/" className="masthead-name">
        Stonetone
      </Link>
      <nav aria-label="Rooms">
        <Link href="/" aria-current={atNew ? undefined : 'page'}>
          Proof desk
        </Link>
        <Link href="/new" aria-current={atNew ? 'page' : undefined}>
          New comparison
        </Link>
        <a href={protocolAddress} className="masthead-paper">
          How to photograph <span className="soft">PDF</span>
        </a>
      </nav>
    </header>
  );
}
