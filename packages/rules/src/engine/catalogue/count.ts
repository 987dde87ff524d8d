/**
 * How many ways a set of yes/no variables can be set so that every clause holds: exactly, by
 * splitting clauses that share no variable and by remembering what has been counted.
 *
 *     clauses ─► unit clauses settled ─► components ─► product of their counts × 2^free
 *                                          │ branch on the variable met most often
 *
 * A literal is the variable's number, from 1, negative where it must be no.
 */
export type Clause = readonly number[];

/** The clauses once a literal holds; undefined when one of them can no longer hold. */
function assigned(clauses: readonly Clause[], literal: number): readonly Clause[] | undefined {
  const left: Clause[] = [];
  for (const clause of clauses) {
    if (clause.includes(literal)) continue;
    const rest = clause.includes(-literal) ? clause.filter((each) => each !== -literal) : clause;
    if (rest.length === 0) return undefined;
    left.push(rest);
  }
  return left;
}

const variablesIn = (clauses: readonly Clause[]): ReadonlySet<number> =>
  new Set(clauses.flatMap((clause) => clause.map(Math.abs)));

/** Clauses in groups that share no variable with one another. */
export function components(clauses: readonly Clause[]): readonly (readonly Clause[])[] {
  const found: { readonly variables: Set<number>; readonly clauses: Clause[] }[] = [];
  for (const clause of clauses) {
    const made = { variables: new Set(clause.map(Math.abs)), clauses: [clause] };
    for (let i = found.length - 1; i >= 0; i -= 1) {
      const other = found[i];
      if (!other || ![...made.variables].some((each) => other.variables.has(each))) continue;
      for (const each of other.variables) made.variables.add(each);
      made.clauses.push(...other.clauses);
      found.splice(i, 1);
    }
    found.push(made);
  }
  return found.map((each) => each.clauses);
}

function metMost(clauses: readonly Clause[]): number {
  const met = new Map<number, number>();
  for (const literal of clauses.flat()) {
    const variable = Math.abs(literal);
    met.set(variable, (met.get(variable) ?? 0) + 1);
  }
  return [...met].reduce((best, each) => (each[1] > best[1] ? each : best), [0, 0])[0];
}

const keyOf = (clauses: readonly Clause[]): string =>
  clauses
    .map((clause) => clause.toSorted((a, b) => a - b).join(','))
    .toSorted()
    .join(';');

/** @param variables how many there are; those in no clause are free to be either */
export function countWays(variables: number, clauses: readonly Clause[]): bigint {
  const counted = new Map<string, bigint>();

  const over = (free: number, given: readonly Clause[]): bigint => {
    let left = given;
    let open = free;
    for (;;) {
      const unit = left.find((clause) => clause.length === 1)?.[0];
      if (unit === undefined) break;
      const next = assigned(left, unit);
      if (!next) return 0n;
      left = next;
      open -= 1;
    }
    const parts = components(left);
    const used = parts.reduce((total, part) => total + variablesIn(part).size, 0);
    return parts.reduce((product, part) => product * component(part), 2n ** BigInt(open - used));
  };

  const component = (clauses: readonly Clause[]): bigint => {
    const key = keyOf(clauses);
    const before = counted.get(key);
    if (before !== undefined) return before;
    const variable = metMost(clauses);
    const rest = variablesIn(clauses).size - 1;
    const ways = [variable, -variable].reduce((total, literal) => {
      const left = assigned(clauses, literal);
      return left ? total + over(rest, left) : total;
    }, 0n);
    counted.set(key, ways);
    return ways;
  };

  if (clauses.some((clause) => clause.length === 0)) return 0n;
  return over(variables, clauses);
}

/**
 * Settings that hold with no more yes than the clauses ask for: every one from which no yes can be
 * taken is among them, and none that holds another.
 */
export function leastWays(clauses: readonly Clause[]): readonly ReadonlySet<number>[] {
  const found = new Map<string, ReadonlySet<number>>();
  const seen = new Set<string>();
  const walk = (chosen: ReadonlySet<number>): void => {
    const key = [...chosen].toSorted((a, b) => a - b).join(',');
    if (seen.has(key)) return;
    seen.add(key);
    const broken = clauses.find((clause) =>
      clause.every((literal) => chosen.has(Math.abs(literal)) !== literal > 0),
    );
    if (!broken) {
      found.set(key, chosen);
      return;
    }
    for (const literal of broken) if (literal > 0) walk(new Set([...chosen, literal]));
  };
  walk(new Set());
  const all = [...found.values()];
  return all.filter(
    (each) => !all.some((other) => other.size < each.size && [...other].every((v) => each.has(v))),
  );
}
