import type { ReportPiece } from '../../../records/report.ts';

/** How a figure stands among typed words. */
export interface ShownFigure {
  readonly text: string;
  /** What it is, for the tip and for who hears the page. */
  readonly label: string;
}

const figureMark = 'figure';

/** Shows pieces in an editable place; a figure stands there as one sign that typing goes around. */
export function showPieces(
  place: HTMLElement,
  pieces: readonly ReportPiece[],
  shown: (name: string) => ShownFigure,
): void {
  place.replaceChildren(
    ...pieces.map((piece) => (typeof piece === 'string' ? piece : signOf(piece.figure, shown(piece.figure)))),
  );
}

/** What stands in an editable place, line breaks as such however the browser made them. */
export function readPieces(place: Node): readonly ReportPiece[] {
  const pieces: ReportPiece[] = [];
  const add = (text: string) => {
    const last = pieces.at(-1);
    if (typeof last === 'string') pieces[pieces.length - 1] = last + text;
    else if (text !== '') pieces.push(text);
  };
  const read = (node: Node) => {
    for (const child of node.childNodes) {
      const name = child instanceof HTMLElement ? child.dataset[figureMark] : undefined;
      if (name !== undefined) pieces.push({ figure: name });
      else if (child.nodeName === 'BR') add('\n');
      else if (child.nodeType === Node.TEXT_NODE) add((child.textContent ?? '').replaceAll('\u00a0', ' '));
      else {
        if (/^(DIV|P)$/.test(child.nodeName) && pieces.length > 0) add('\n');
        read(child);
      }
    }
  };
  read(place);
  return pieces;
}

/** Puts pieces in place of what is chosen, or at the end where nothing in the place is; the caret stands after them. */
export function insertPieces(
  place: HTMLElement,
  at: Range | null,
  pieces: readonly ReportPiece[],
  shown: (name: string) => ShownFigure,
): Range {
  const range = at && place.contains(at.commonAncestorContainer) ? at : endOf(place);
  range.deleteContents();
  const put = place.ownerDocument.createDocumentFragment();
  for (const piece of pieces)
    put.append(typeof piece === 'string' ? piece : signOf(piece.figure, shown(piece.figure)));
  const last = put.lastChild;
  range.insertNode(put);
  if (last !== null) range.setStartAfter(last);
  range.collapse(true);
  return range;
}

/** The characters right before and right after a caret; empty at an end or beside a figure. */
export function besideCaret({ startContainer, startOffset }: Range): readonly [string, string] {
  const at = startContainer.nodeType === Node.TEXT_NODE ? startOffset : null;
  const text = (node: Node | null | undefined) =>
    (node?.nodeType === Node.TEXT_NODE ? node.textContent : '') ?? '';
  const before =
    at === null ? text(startContainer.childNodes[startOffset - 1]) : text(startContainer).slice(0, at);
  const after = at === null ? text(startContainer.childNodes[startOffset]) : text(startContainer).slice(at);
  return [before.slice(-1), after.slice(0, 1)];
}

function endOf(place: HTMLElement): Range {
  const range = place.ownerDocument.createRange();
  range.selectNodeContents(place);
  range.collapse(false);
  return range;
}

function signOf(name: string, { text, label }: ShownFigure): HTMLElement {
  const sign = document.createElement('span');
  sign.dataset[figureMark] = name;
  sign.contentEditable = 'false';
  sign.className = 'figure-sign';
  sign.setAttribute('role', 'img');
  sign.setAttribute('aria-label', `${text} (${label})`);
  sign.title = label;
  sign.textContent = text;
  return sign;
}
