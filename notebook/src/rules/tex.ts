import type { Node } from '@tarebook/rules/engine';

/**
 * A formula as TeX. Names stand as their first word with the rest below it, so that `payload.used`
 * reads as payload, used:
 *
 *     payload.used              payload_used
 *     sum(load.cargo.weight)    Σ over load cargo, of weight
 *     choose(a, b, c)           a brace: b if a; c otherwise
 */
type Piece = { readonly tex: string; readonly bond: 1 | 2 | 3 };
const loose = (tex: string): Piece => ({ tex, bond: 1 });
const tight = (tex: string): Piece => ({ tex, bond: 2 });
const firm = (tex: string): Piece => ({ tex, bond: 3 });
const within = ({ tex, bond }: Piece, wanted: number): string =>
  bond >= wanted ? tex : `\\left(${tex}\\right)`;

/** Letters that TeX would take for its own are left out; names and options have none. */
const plain = (text: string): string => text.replace(/[\\{}$&#^_%~]/g, ' ');
const text = (words: string): string => `\\text{${plain(words)}}`;

/** `maxTrailerWeight` as words. */
export const spaced = (word: string): string =>
  word
    .replace(/([a-z0-9])([A-Z])/g, (_, a: string, b: string) => `${a} ${b.toLowerCase()}`)
    .replaceAll('-', ' ');

function symbol(id: string): string {
  const [first = '', ...rest] = id.split('.').map(spaced);
  return rest.length === 0 ? text(first) : `${text(first)}_{${text(rest.join(' '))}}`;
}

/** Inside a sum over a list, its columns need not repeat the list. */
function named(id: string, list: string | undefined): string {
  const own = list !== undefined && id.startsWith(`${list}.`);
  return own && list !== undefined ? text(spaced(id.slice(list.length + 1))) : symbol(id);
}

const listWords = (list: string): string => text(list.split('.').map(spaced).join(' '));

/** `a, b and c` of symbols, under one another when they are long. */
function series(parts: readonly string[]): string {
  const last = parts.at(-1) ?? '';
  if (parts.length < 2) return last;
  const line = `${parts.slice(0, -1).join(',\\ ')}\\text{ and }${last}`;
  if (widthOf(line) <= longLine) return line;
  const rows = [...parts.slice(0, -1).map((part) => `&${part},`), `&\\text{and }${last}`];
  return `\\begin{aligned}${rows.join('\\\\')}\\end{aligned}`;
}

const signs = { '<': '<', '<=': '\\le', '>': '>', '>=': '\\ge', '==': '=', '!=': '\\ne' } as const;

/** From how many letters on a formula is broken over lines. */
const longLine = 34;

/** Roughly how wide a piece is: its letters, without the commands. */
const widthOf = (tex: string): number => tex.replace(/\\[a-z]+|[{}_]/gi, '').length;

/** Terms of a sum, or of a chain of conditions, under one another when they are long. */
function chain(parts: readonly { readonly sign: string; readonly tex: string }[]): string {
  const line = parts.map(({ sign, tex }) => `${sign}${tex}`).join(' ');
  if (parts.length < 2 || widthOf(line) <= longLine) return line;
  const rows = parts.map(({ sign, tex }) => `&${sign}${tex}`).join('\\\\');
  return `\\begin{aligned}${rows}\\end{aligned}`;
}

function terms(node: Node, list: string | undefined): { sign: string; tex: string }[] {
  if (node.kind !== 'arithmetic' || (node.op !== '+' && node.op !== '-')) {
    return [{ sign: '', tex: within(write(node, list), 2) }];
  }
  const right = within(write(node.b, list), 2);
  return [...terms(node.a, list), { sign: node.op === '+' ? '+\\,' : '-\\,', tex: right }];
}

function conditions(
  node: Node,
  kind: 'both' | 'either',
  list: string | undefined,
): { sign: string; tex: string }[] {
  if (node.kind !== kind) return [{ sign: '', tex: within(write(node, list), 2) }];
  const [first, ...rest] = conditions(node.b, kind, list);
  const sign = kind === 'both' ? '\\text{and }' : '\\text{or }';
  const then = first ? [{ sign, tex: first.tex }, ...rest] : rest;
  return [...conditions(node.a, kind, list), ...then];
}

type Branch = { readonly value: string; readonly when: string };

/** The branches of a choice, an “otherwise” that is again a choice among them. */
function branches(node: Node, list: string | undefined): Branch[] {
  if (node.kind !== 'choose') return [{ value: write(node, list).tex, when: '\\text{otherwise}' }];
  const when = `\\text{if }${write(node.when, list).tex}`;
  return [{ value: write(node.chosen, list).tex, when }, ...branches(node.otherwise, list)];
}

/** A brace; where a value and its condition are too wide together, the condition stands below. */
function cases(rows: readonly Branch[]): Piece {
  const wide = rows.some(({ value, when }) => widthOf(value) + widthOf(when) > longLine);
  const lines = rows.map(({ value, when }) =>
    wide ? `${value}\\\\ \\quad ${when}` : `${value} & ${when}`,
  );
  return firm(`\\begin{cases}${lines.join('\\\\')}\\end{cases}`);
}

const overWords = { least: '\\min', most: '\\max', total: '\\sum', last: '\\text{last}' } as const;

const call = (name: string, of: readonly string[]): Piece =>
  firm(`${name}\\left(${of.join(',\\ ')}\\right)`);

function write(node: Node, list: string | undefined): Piece {
  const inner = (each: Node): Piece => write(each, list);
  const names = (of: readonly string[]): string => series(of.map((id) => named(id, list)));
  switch (node.kind) {
    case 'number':
      return firm(String(node.value));
    case 'word':
      return firm(text(`“${node.text}”`));
    case 'unlimited':
      return firm('\\infty');
    case 'name':
      return firm(named(node.id, list));
    case 'negative':
      return loose(`-${within(inner(node.of), 2)}`);
    case 'arithmetic':
      if (node.op === '/') return tight(`\\dfrac{${inner(node.a).tex}}{${inner(node.b).tex}}`);
      if (node.op === '*') {
        return tight(`${within(inner(node.a), 2)} \\times ${within(inner(node.b), 2)}`);
      }
      return loose(chain(terms(node, list)));
    case 'compare':
      return tight(`${inner(node.a).tex} ${signs[node.op]} ${inner(node.b).tex}`);
    case 'both':
    case 'either':
      return loose(chain(conditions(node, node.kind, list)));
    case 'not':
      return node.of.kind === 'known'
        ? tight(`${names(node.of.names)}\\text{ not known}`)
        : tight(`\\text{not }${within(inner(node.of), 3)}`);
    case 'may':
      return tight(`${within(inner(node.of), 3)}\\text{ may be}`);
    case 'choose':
      return cases(branches(node, list));
    case 'min':
    case 'max':
      return call(
        `\\${node.kind}`,
        node.of.map((each) => inner(each).tex),
      );
    case 'largestKnown':
      return call(
        '\\max_{\\text{known}}',
        node.of.map((each) => inner(each).tex),
      );
    case 'sum': {
      const of = write(node.of, node.list);
      return tight(`\\sum_{${listWords(node.list)}} ${within(of, 2)}`);
    }
    case 'count':
      return firm(`\\text{rows}_{${listWords(node.list)}}`);
    case 'given':
      return tight(`${names(node.names)}\\text{ given}`);
    case 'known':
      return tight(`${names(node.names)}\\text{ known}`);
    case 'needs':
      return cases([
        { value: inner(node.of).tex, when: `\\text{if }${names(node.names)}\\text{ known}` },
        { value: '\\text{anything from }0', when: '\\text{otherwise}' },
      ]);
    case 'lookup':
    case 'pick':
      return call(symbol(node.table), [inner(node.at).tex]);
    case 'power':
      return tight(`{${within(inner(node.base), 3)}}^{${inner(node.exponent).tex}}`);
    case 'between':
      return firm(`\\left[${inner(node.a).tex},\\ ${inner(node.b).tex}\\right]`);
    case 'whole':
      return firm(`\\left\\lfloor ${inner(node.of).tex}\\right\\rfloor`);
    case 'sunHeight':
      return call(
        '\\text{height of the sun}',
        [node.latitude, node.day, node.hour].map((each) => inner(each).tex),
      );
    case 'over':
      return tight(
        `${overWords[node.how]}_{${listWords(node.simulation)}} ${within(inner(node.of), 2)}`,
      );
    case 'catalogued':
      return call(`\\text{${node.ask}}`, [node.catalogue, ...node.args].map(text));
  }
}

/** `name = formula`, or for one that is true or false `name ⇔ formula`. */
export function formulaTex(name: string, node: Node, unit: string): string {
  const { tex } = write(node, undefined);
  const sign = unit === 'yes-no' ? '\\iff' : '=';
  const line = `${symbol(name)} ${sign} ${tex}`;
  if (widthOf(line) <= longLine) return line;
  return `\\begin{aligned}&${symbol(name)}\\\\ &\\quad ${sign} ${tex}\\end{aligned}`;
}
