import { isClosed } from '../../quantity';
import { movedBy, type Value } from '../value/values';
import type { KindName, NodeOf } from './grammar/nodes';
import type { Scope } from './grammar/scope';
import { kinds } from './kinds';

/** The value of a formula in a scope: every result its inputs allow lies within it. */
export const reckon = <K extends KindName>(node: NodeOf<K>, scope: Scope): Value =>
  kinds[node.kind].reckon(node, scope, reckon);

/** Closed at both ends and moved by nothing that is unknown. */
export function restsOnKnown(value: Value, isOpen: (key: string) => boolean): boolean {
  if (value.kind === 'number' && !isClosed(value)) return false;
  return !movedBy(value).some(isOpen);
}

/** One number or range that rests on nothing unknown, one word, a yes or a no. */
export function isSettled(value: Value, isOpen: (key: string) => boolean): boolean {
  if (value.kind === 'number') return restsOnKnown(value, isOpen);
  return value.kind === 'among' ? value.options.length === 1 : value.yes !== value.no;
}
