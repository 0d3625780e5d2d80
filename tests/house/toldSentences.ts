import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import ts from 'typescript';
import { home } from './trackedFiles.ts';

/** A sentence that the server or a module of the craft can tell, as it stands in the source. */
interface ToldSentence {
  readonly place: string;
  /** With its fillings named in braces: `Pull {number} has no measured photograph yet.` */
  readonly template: string;
}

/** Where what is told on screens is put into words. */
const rooms = ['studio', 'application', 'foundation', 'imaging', 'science', 'records', 'server', 'contract'];
/** Files whose words go elsewhere: columns of the export, descriptions of routes and fields, sheets, calendars. */
const elsewhere =
  /^application\/(export|protocol|papers|comparison\/comparisonSheets)\/|^studio\/papers\/|^server\/(routes|guards|network)\/|^contract\/(?!issueWords)|\.testing\.ts$/;
/** More ways than this to fill one sentence are not written out. */
const mostWays = 64;

/** Every text of several words in the rooms that tell, each choice in it written out. */
export function toldSentences(): readonly ToldSentence[] {
  const found: ToldSentence[] = [];
  for (const room of rooms) {
    const folder = join(home, 'src', room);
    for (const name of readdirSync(folder, { recursive: true, encoding: 'utf8' }).toSorted()) {
      const path = join(folder, name);
      if (!/\.ts$/.test(name) || /\.test\.|\.d\.ts$/.test(name) || elsewhere.test(`${room}/${name}`))
        continue;
      gather(path, found);
    }
  }
  return found;
}

function gather(path: string, found: ToldSentence[]): void {
  const file = ts.createSourceFile(path, readFileSync(path, 'utf8'), ts.ScriptTarget.ES2023, true);
  const visit = (node: ts.Node): void => {
    if (isNotTold(node)) return;
    if (ts.isStringLiteralLike(node) || ts.isTemplateExpression(node) || isStrungTogether(node)) {
      const { line } = file.getLineAndCharacterOfPosition(node.getStart(file));
      const place = `${relative(home, path)}:${line + 1}`;
      for (const template of waysOf(node, file)) if (isWords(template)) found.push({ place, template });
      if (!ts.isStringLiteralLike(node)) visitInside(node);
      return;
    }
    ts.forEachChild(node, visit);
  };
  /** A choice between texts is written out in the sentence around it; what it chooses by, or calls, is not. */
  const visitInside = (inside: ts.Expression): void => {
    const node = bare(inside);
    if (ts.isConditionalExpression(node)) {
      for (const branch of [node.whenTrue, node.whenFalse]) visitInside(branch);
    } else if (ts.isTemplateExpression(node)) {
      for (const span of node.templateSpans) visitInside(span.expression);
    } else if (isStrungTogether(node)) {
      for (const side of [node.left, node.right]) visitInside(side);
    } else if (!ts.isStringLiteralLike(node)) {
      visit(node);
    }
  };
  visit(file);
}

function isStrungTogether(node: ts.Node): node is ts.BinaryExpression {
  return (
    ts.isBinaryExpression(node) &&
    node.operatorToken.kind === ts.SyntaxKind.PlusToken &&
    [node.left, node.right].some((side) => ts.isStringLiteralLike(side) || ts.isTemplateExpression(side))
  );
}

/** What no screen is told: names of types and modules, what is compared, and what only a mistake of the program says. */
function isNotTold(node: ts.Node): boolean {
  if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node) || ts.isTypeNode(node)) return true;
  if (ts.isNewExpression(node)) return /Error$/.test(node.expression.getText());
  if (ts.isCallExpression(node))
    return /(?:^sql$|\.(?:prepare|pragma|exec))$/.test(node.expression.getText());
  if (ts.isTaggedTemplateExpression(node)) return true;
  const { parent } = node;
  if (!parent || !ts.isStringLiteralLike(node)) return false;
  return (
    (ts.isPropertyAssignment(parent) && parent.name === node) ||
    (ts.isBinaryExpression(parent) && /^[!=]==$/.test(parent.operatorToken.getText())) ||
    ts.isCaseClause(parent)
  );
}

const units = /^(?:mm|cm|ml|min|kg|px|mol|ppm|bis|to)$/;

/** Two words at least: no key, no unit, no code, no path, and no bit that only ever ends another sentence. */
function isWords(template: string): boolean {
  if (/^[ ,;:.)]|[<>]|\.(?:json|png|jpeg|jpg|tar|ts|js|part|new|restoring)$|^[\w-]+, [\w-]+=/.test(template))
    return false;
  if (/^\S*\{\w+\}\S*$/.test(template)) return false;
  const words = template.replace(/\{\w+\}/g, ' ').match(/\p{L}{2,}/gu) ?? [];
  return /\S\s+\S/.test(template) && words.some((word) => /\p{Ll}{2}/u.test(word) && !units.test(word));
}

function waysOf(node: ts.Expression, file: ts.SourceFile): readonly string[] {
  const ways = expand(node, file, []);
  return [...new Set(ways.map(named))];
}

/** Every text that an expression can be, places still by the expression that fills them: `\0expression\0`. */
function expand(inside: ts.Expression, file: ts.SourceFile, within: readonly ts.Node[]): readonly string[] {
  const node = bare(inside);
  if (ts.isStringLiteralLike(node)) return [node.text];
  if (ts.isTemplateExpression(node)) {
    let ways: readonly string[] = [node.head.text];
    for (const { expression, literal } of node.templateSpans) {
      const fillings = expand(expression, file, [...within, node]);
      const many = ways.length * fillings.length > mostWays;
      const each = many ? [placeOf(expression, file)] : fillings;
      ways = ways.flatMap((way) => each.map((filling) => way + filling + literal.text));
    }
    return ways;
  }
  if (isStrungTogether(node)) {
    const rest = expand(node.right, file, [...within, node]);
    return expand(node.left, file, [...within, node]).flatMap((way) => rest.map((more) => way + more));
  }
  if (ts.isConditionalExpression(node) && within.length > 0) {
    return [...expand(node.whenTrue, file, within), ...expand(node.whenFalse, file, within)];
  }
  return [placeOf(node, file)];
}

function bare(node: ts.Expression): ts.Expression {
  return ts.isParenthesizedExpression(node) || ts.isNonNullExpression(node) ? bare(node.expression) : node;
}

function placeOf(node: ts.Expression, file: ts.SourceFile): string {
  return `\0${node.getText(file)}\0`;
}

/** Places named by the last name of their expression, each once. */
function named(way: string): string {
  const used = new Map<string, number>();
  return way.replace(/\0([^\0]*)\0/g, (_, expression: string) => {
    const [, table] = /^(\w+)\[[^\]]*\]!?$/.exec(expression) ?? [];
    const names = (table ?? expression)
      .replace(/'[^']*'|`[^`]*`|\?\?.*|\.(?:value|toFixed|join|map|trim|length|name)\b/gs, '')
      .match(/[a-z]\w*/gi);
    const list = /\.join\(', '\)|listWords\(/.test(expression);
    const last = names?.findLast((name) => /^[a-z]+[a-zA-Z]*$/.test(name)) ?? 'value';
    const name = list ? `list${last[0]!.toUpperCase()}${last.slice(1)}` : last;
    const times = (used.get(name) ?? 0) + 1;
    used.set(name, times);
    return `{${times === 1 ? name : name + times}}`;
  });
}
