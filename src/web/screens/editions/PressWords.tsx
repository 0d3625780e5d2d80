import { useState } from 'react';

/** Words of one's own, written with an inky finger: a line, what it is kept by, and what is missing while it is empty. */
export function PressWords({
  label,
  act,
  missing,
  maxLength,
  onWords,
}: {
  label: string;
  act: string;
  missing: string;
  maxLength: number;
  onWords: (words: string) => void;
}) {
  const [typed, setTyped] = useState('');
  const words = typed.trim();
  return (
    <form
      className="press-say"
      onSubmit={(event) => {
        event.preventDefault();
        if (words !== '') onWords(words);
      }}
    >
      <label>
        {label}
        <input
          maxLength={maxLength}
          autoComplete="off"
          value={typed}
          onChange={(event) => setTyped(event.target.value)}
        />
      </label>
      <button type="submit" className="bench-target" disabled={words === ''}>
        {act}
      </button>
      {words === '' && <p className="press-missing">{missing}</p>}
    </form>
  );
}
