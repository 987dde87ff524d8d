// Small changes of one place of the source, each of which should be noticed by some test.
import ts from 'typescript';

const swaps = new Map([
  [ts.SyntaxKind.LessThanToken, '<='],
  [ts.SyntaxKind.LessThanEqualsToken, '<'],
  [ts.SyntaxKind.GreaterThanToken, '>='],
  [ts.SyntaxKind.GreaterThanEqualsToken, '>'],
  [ts.SyntaxKind.EqualsEqualsEqualsToken, '!=='],
  [ts.SyntaxKind.ExclamationEqualsEqualsToken, '==='],
  [ts.SyntaxKind.AmpersandAmpersandToken, '||'],
  [ts.SyntaxKind.BarBarToken, '&&'],
  [ts.SyntaxKind.QuestionQuestionToken, '&&'],
  [ts.SyntaxKind.PlusToken, '-'],
  [ts.SyntaxKind.MinusToken, '+'],
  [ts.SyntaxKind.AsteriskToken, '/'],
  [ts.SyntaxKind.SlashToken, '*'],
]);

const calls = new Map([
  ['some', 'every'],
  ['every', 'some'],
  ['min', 'max'],
  ['max', 'min'],
]);

/** In what a topic writes as text: an arithmetic, a condition. */
const inText = [
  [/ < /, ' >= '],
  [/ <= /, ' > '],
  [/ > /, ' <= '],
  [/ >= /, ' < '],
  [/ == /, ' != '],
  [/ && /, ' || '],
  [/ \|\| /, ' && '],
  [/ \+ /, ' - '],
  [/ - /, ' + '],
  [/ \* /, ' / '],
  [/ \/ /, ' * '],
  [/\bmin\(/, 'max('],
  [/\bmax\(/, 'min('],
];

/** A property whose text is read as a formula or as a condition; other texts are words. */
const isRead = (node) =>
  ts.isPropertyAssignment(node.parent) &&
  ['is', 'when', 'used', 'limit', 'margin'].includes(node.parent.name.getText());

function* changesOf(node) {
  const whole = (to) => ({ from: node.getStart(), until: node.getEnd(), to });
  if (ts.isBinaryExpression(node) && swaps.has(node.operatorToken.kind)) {
    const { operatorToken } = node;
    yield {
      from: operatorToken.getStart(),
      until: operatorToken.getEnd(),
      to: swaps.get(operatorToken.kind),
    };
  }
  if (ts.isPrefixUnaryExpression(node) && node.operator === ts.SyntaxKind.ExclamationToken) {
    yield whole(`(${node.operand.getText()})`);
  }
  if (node.kind === ts.SyntaxKind.TrueKeyword && !ts.isLiteralTypeNode(node.parent))
    yield whole('false');
  if (node.kind === ts.SyntaxKind.FalseKeyword && !ts.isLiteralTypeNode(node.parent))
    yield whole('true');
  if (ts.isNumericLiteral(node) && !ts.isLiteralTypeNode(node.parent)) {
    const value = Number(node.text);
    yield whole(value === 0 ? '1' : String(value * 1.1));
  }
  if (ts.isConditionalExpression(node)) {
    const { condition } = node;
    yield { from: condition.getStart(), until: condition.getEnd(), to: 'true' };
    yield { from: condition.getStart(), until: condition.getEnd(), to: 'false' };
  }
  if (ts.isIfStatement(node)) {
    const { expression } = node;
    yield { from: expression.getStart(), until: expression.getEnd(), to: 'false' };
  }
  if (
    ts.isPropertyAccessExpression(node) &&
    calls.has(node.name.text) &&
    ts.isCallExpression(node.parent)
  ) {
    yield { from: node.name.getStart(), until: node.name.getEnd(), to: calls.get(node.name.text) };
  }
  if (ts.isStringLiteral(node) && isRead(node)) {
    for (const [is, to] of inText) {
      if (is.test(node.text)) yield whole(`'${node.text.replace(is, to).replaceAll("'", "\\'")}'`);
    }
  }
}

/** Every small change of a source, in order of place. */
export function mutants(text) {
  const source = ts.createSourceFile('source.ts', text, ts.ScriptTarget.Latest, true);
  const found = [];
  const visit = (node) => {
    if (ts.isTypeNode(node) || ts.isImportDeclaration(node)) return;
    for (const change of changesOf(node)) {
      const { line } = source.getLineAndCharacterOfPosition(change.from);
      found.push({ ...change, line: line + 1, was: text.slice(change.from, change.until) });
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

export const changed = (text, { from, until, to }) => text.slice(0, from) + to + text.slice(until);
