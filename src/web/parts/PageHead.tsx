import './PageHead.css';
import { type ReactNode, useEffect, useRef } from 'react';

/**
 * The head of a screen: a small line that says what one looks at, and the finding or the thing to do as the headline.
 * Takes the focus when the screen opens, so that a keyboard or a voice starts here.
 */
export function PageHead({
  stamp,
  headline,
  children,
}: {
  stamp: ReactNode;
  headline: string;
  children?: ReactNode;
}) {
  const head = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    document.title = `${headline} · Stonetone`;
  }, [headline]);
  useEffect(() => head.current?.focus({ preventScroll: true }), []);
  return (
    <div className="page-head">
      <div>
        <p className="stamp">{stamp}</p>
        <h1 ref={head} tabIndex={-1} className={headline.length > 52 ? 'big long' : 'big'}>
          {unbroken(headline)}
        </h1>
      </div>
      {children && <div className="page-head-act">{children}</div>}
    </div>
  );
}

/** Such as S-01: the name of a stone, which must not break at its hyphen. */
const hyphened = /(\S*[^\s-]-\d\S*)/u;

function unbroken(words: string): ReactNode {
  const parts = words.split(hyphened);
  if (parts.length === 1) return words;
  return parts.map((part, index) =>
    index % 2 === 0 ? (
      part
    ) : (
      // the same words always stand in the same order
      // biome-ignore lint/suspicious/noArrayIndexKey: see above
      <span key={index} className="unbroken">
        {part}
      </span>
    ),
  );
}
