import { described, isPlain } from './given';
import { sayArgument, sayGiven } from './messages-given';
import { nearest } from './near';
import { InputError, type Problem } from './problem';

const kinds = {
  text: [(given: unknown) => typeof given === 'string', 'a text'],
  list: [(given: unknown) => Array.isArray(given), 'a list'],
  parts: [(given: unknown) => isPlain(given), 'its parts by name'],
} as const;
type Kind = keyof typeof kinds;

const quoted = (given: unknown): string =>
  typeof given === 'string' ? `“${described(given)}”` : described(given);

const wrong = (fact: string, given: unknown, wanted: string): Problem => ({
  code: 'wrong-argument',
  fact,
  found: quoted(given),
  wanted,
});

/** As messages.ts says it, of which a page that is called rightly then carries nothing. */
const say = (problem: Problem): string =>
  problem.code === 'wrong-argument' ? sayArgument(problem) : sayGiven(problem);

/**
 * Looks at what an entry of a package is called with before anything reaches into it.
 *
 * @throws InputError where it is not what is wanted
 */
export function refuseUnless(holds: boolean, place: string, given: unknown, wanted: string): void {
  if (!holds) throw new InputError([wrong(place, given, wanted)], say);
}

/**
 * The same for what has parts by name.
 *
 * @param parts what must be there, and of which kind it is
 * @param wanted what belongs there as a whole
 * @param others what may be there beside; absent: anything
 */
export function refuseUnlessParts(
  place: string,
  given: unknown,
  parts: Readonly<Record<string, Kind>>,
  wanted: string,
  others?: readonly string[],
): void {
  if (typeof given !== 'object' || given === null || Array.isArray(given)) {
    throw new InputError([wrong(place, given, wanted)], say);
  }
  const has = new Map<string, unknown>(Object.entries(given));
  const problems: Problem[] = Object.entries(parts).flatMap(([name, kind]) => {
    const [isSo, said] = kinds[kind];
    const value = has.get(name);
    return isSo(value) ? [] : [wrong(`${place}.${name}`, value, `${said}, as ${wanted} has it`)];
  });
  const known = [...Object.keys(parts), ...(others ?? [])];
  const strange = others ? [...has.keys()].filter((name) => !known.includes(name)) : [];
  for (const name of strange) {
    const near = nearest(name, known);
    const options = { options: known, ...(near && { near }) };
    const said = known.join(', ');
    problems.push({ code: 'no-such-option', fact: place, found: name, wanted: said, ...options });
  }
  if (problems.length > 0) throw new InputError(problems, say);
}
