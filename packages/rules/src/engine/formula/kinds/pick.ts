import { hull, point, unitOf } from '../../../quantity';
import { drawByDraw } from '../../value/lanes';
import { made } from '../../value/numbers';
import { jumpSlopes, noSlopes, nothing } from '../../value/values';
import { type Draw, type Kind, none, type SortOf } from '../grammar/kind';
import { alike, clash, number, word } from '../grammar/sorts';

/** pick(table, choice): the number that a table of words gives for an option. */
export const pick: Kind<'pick'> = {
  form: {
    by: 'call',
    names: ['pick'],
    read: (call) => {
      call.wants(call.count === 2, 'pick(table, choice)');
      return { kind: 'pick', table: call.nameAt(0), at: call.node(1) };
    },
  },
  // Any of the options may be meant: the number lies between the least and the most of theirs.
  reckon: (node, scope, reckon) => {
    const at = reckon(node.at, scope);
    if (at.kind !== 'among') throw new Error('A word was wanted here.');
    const range = at.options.map((each) => point(scope.wordValue(node.table, each))).reduce(hull);
    return made(range, jumpSlopes(noSlopes, at.options.length > 1 ? at.on : nothing));
  },
  parts: ({ at }) => [at],
  mentions: none,
  asks: ({ table }) => [table],
  uses: (node, at) => {
    at.from(node.table);
    at.part(node.at);
  },
};

/** The rule of its units. */
export const sortPick: SortOf<'pick'> = (node, { topic, of }) => {
  const table =
    topic.wordTables?.[node.table] ??
    clash(`there is no table of words “${node.table}”`, 'not-a-table', {
      ...{ found: node.table, options: Object.keys(topic.wordTables ?? {}) },
    });
  alike(of(node.at), word, 'pick');
  return number(unitOf(table.valueUnit || '1').dimension);
};

export const drawPick: Draw<'pick'> = drawByDraw;
