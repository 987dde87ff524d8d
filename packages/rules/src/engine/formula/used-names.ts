import { below, type Node } from './nodes';
import { reckon, type Scope } from './reckon';
import { asTruth } from './truth';

/** Everything that a value was really reckoned from: names in the branches taken. */
export function usedNames(node: Node, scope: Scope): readonly string[] {
  const found = new Set<string>();
  const walk = (each: Node): void => {
    switch (each.kind) {
      case 'name':
        found.add(each.id);
        return;
      case 'sum':
        found.add(each.list);
        walkSum(each.of, each.list);
        return;
      case 'count':
        found.add(each.list);
        return;
      case 'choose': {
        const when = asTruth(reckon(each.when, scope));
        if (when.yes) walk(each.chosen);
        if (when.no) walk(each.otherwise);
        if (when.yes && when.no) walk(each.when);
        return;
      }
      case 'largestKnown':
        for (const part of each.of) if (scope.partKnown(part, reckon(part, scope))) walk(part);
        return;
      case 'needs':
        if (each.names.every((name) => scope.known(name))) walk(each.of);
        else for (const name of each.names) if (!scope.known(name)) found.add(name);
        return;
      case 'negative':
      case 'not':
        walk(each.of);
        return;
      case 'arithmetic':
      case 'compare':
      case 'both':
      case 'either':
        walk(each.a);
        walk(each.b);
        return;
      case 'min':
      case 'max':
        for (const part of each.of) walk(part);
        return;
      case 'lookup':
      case 'pick':
        walk(each.at);
        return;
      case 'whole':
        walk(each.of);
        return;
      case 'power':
      case 'between':
      case 'sunHeight':
        for (const part of below(each)) walk(part);
        return;
      case 'over':
        found.add(each.simulation);
        return;
      case 'catalogued':
        found.add(each.catalogue);
        return;
      case 'given':
      case 'known':
        for (const name of each.names) found.add(name);
        return;
      default:
        return;
    }
  };
  const walkSum = (of: Node, list: string): void => {
    if (of.kind === 'name' && !of.id.startsWith(`${list}.`)) found.add(of.id);
    if (of.kind === 'arithmetic') {
      walkSum(of.a, list);
      walkSum(of.b, list);
    }
  };
  walk(node);
  return [...found];
}
