import { unitOf } from '../../quantity';
import { compiledOf } from '../answer/answer';
import { inBase } from '../answer/parameters';
import type { Fact, Topic } from '../define/shapes';
import type { Compiled } from '../formula/compile';
import { namesIn } from '../formula/kinds';
import { run } from '../formula/run';
import type { Input, Inputs, NumberInput, Status } from '../value/values';

const statuses: readonly Status[] = ['known', 'unknown', 'silent'];

function anyNumber(
  { unit, least, most }: { unit: string; least: number; most: number },
  status: Status,
): NumberInput {
  const factor = unit === '' ? 1 : unitOf(unit).factor;
  return {
    kind: 'number',
    lo: least * factor,
    hi: most * factor,
    status,
    open: status !== 'known',
  };
}

/** Everything a fact may be, said in one of the three ways. */
function anything(fact: Fact, status: Status): Input {
  switch (fact.kind) {
    case 'quantity':
      return anyNumber(fact, status);
    case 'choice':
      return { kind: 'among', options: fact.options, status };
    case 'yes-no':
      return { kind: 'among', options: ['yes', 'no'], status };
    case 'rows': {
      const cells = Object.entries(fact.columns).map(([id, column]) => [
        id,
        anyNumber(column, status),
      ]);
      return { kind: 'rows', rows: status === 'silent' ? [] : [Object.fromEntries(cells)], status };
    }
  }
}

/** Whether a value rests on a parameter, through however many formulas. */
function restsOn(compiled: Compiled, name: string, parameter: string): boolean {
  if (name === parameter) return true;
  const formula = compiled.formulas.get(name);
  return (
    formula !== undefined && namesIn(formula.node).some((n) => restsOn(compiled, n, parameter))
  );
}

/** Each fact said in each way, the others all said in one: what is known changes which branch counts. */
function* waysOfSaying(topic: Topic): Generator<Inputs> {
  const facts = Object.entries(topic.facts);
  for (const most of statuses) {
    const base = new Map(facts.map(([id, fact]) => [id, anything(fact, most)]));
    yield base;
    for (const [id, fact] of facts) {
      for (const status of statuses) {
        if (status !== most) yield new Map(base).set(id, anything(fact, status));
      }
    }
  }
}

/**
 * The limit whose rating some case would have raised by moving a parameter from one value to
 * another, in its own unit; undefined where no rating can rise. By the sign of the slope over
 * everything the facts may be, so a rating that might rise counts as one that does.
 */
export function ratingRaised(
  topic: Topic,
  parameter: string,
  from: number,
  to: number,
): string | undefined {
  const compiled = compiledOf(topic);
  const resting = Object.entries(topic.limits).filter(([, { limit }]) =>
    restsOn(compiled, limit, parameter),
  );
  if (resting.length === 0 || from === to) return undefined;
  const others = Object.entries(topic.parameters)
    .filter(([id]) => id !== parameter)
    .flatMap(([id, { label, unit, values, source }]) => {
      const [first] = values;
      return first ? [{ id, label, unit, source, ...first }] : [];
    });
  const parameters = inBase(others, '2000-01-01');
  const unit = topic.parameters[parameter]?.unit ?? '';
  const [least, most] = [Math.min(from, to), Math.max(from, to)];
  const moved = anyNumber({ unit, least, most }, 'known');
  for (const inputs of waysOfSaying(topic)) {
    const reckoned = run(compiled, new Map(inputs).set(parameter, moved), parameters);
    for (const [id, { limit }] of resting) {
      const value = reckoned.value(limit);
      const slope = value.kind === 'number' ? value.slopes.get(parameter) : undefined;
      if (slope && (to > from ? slope.hi > 0 : slope.lo < 0)) return id;
    }
  }
  return undefined;
}
