/** A stretch of a report's words: text as typed, or the name of a figure that stands there. */
export type WordPiece =
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'figure'; readonly name: string };

/**
 * Kept words in pieces: `{pulls}` is the figure of that name, `{{` and `}}` are the braces themselves; a brace alone is
 * text. Stretches of text are never empty and never follow one another.
 */
export function piecesOf(kept: string): readonly WordPiece[] {
  const pieces: WordPiece[] = [];
  let text = '';
  const end = () => {
    if (text !== '') pieces.push({ kind: 'text', text });
    text = '';
  };
  for (const part of kept.split(/(\{\{|\}\}|\{[^{}]*\})/)) {
    if (part === '{{' || part === '}}') text += part.charAt(0);
    else if (/^\{[^{}]*\}$/.test(part)) {
      end();
      pieces.push({ kind: 'figure', name: part.slice(1, -1).trim() });
    } else text += part;
  }
  end();
  return pieces;
}

/** Pieces as they are kept, such that `piecesOf` gives them back. */
export function keptOf(pieces: readonly WordPiece[]): string {
  return pieces
    .map((piece) => (piece.kind === 'figure' ? `{${piece.name}}` : piece.text.replace(/[{}]/g, '$&$&')))
    .join('');
}
