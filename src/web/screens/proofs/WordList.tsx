import { Told } from '../../parts/Told.tsx';
/** Sentences one below the other; nothing where there are none. */
export function WordList({ words }: { words: readonly string[] }) {
  if (words.length === 0) return null;
  return (
    <ul className="proof-warnings">
      {words.map((each) => (
        <li key={each} className="minded">
          <Told>{each}</Told>
        </li>
      ))}
    </ul>
  );
}
