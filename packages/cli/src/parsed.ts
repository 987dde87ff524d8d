import { parseArgs } from 'node:util';
import { BadInput } from './files';

type Flags = Readonly<Record<string, unknown>>;

/** The words and flags of a command; anything else is told with the usage. */
export function parsed(
  args: readonly string[],
  flags: readonly string[],
  valued: readonly string[] = [],
  repeated: readonly string[] = [],
): { words: string[]; given: Flags } {
  const options = Object.fromEntries([
    ...flags.map((flag) => [flag, { type: 'boolean' as const }] as const),
    ...valued.map((flag) => [flag, { type: 'string' as const }] as const),
    ...repeated.map((flag) => [flag, { type: 'string' as const, multiple: true }] as const),
  ]);
  try {
    const { values, positionals, tokens } = parseArgs({
      ...{ args: [...args], options, allowPositionals: true, tokens: true },
    });
    const named = tokens.flatMap((token) => (token.kind === 'option' ? [token.name] : []));
    const twice = named.find((name, at) => valued.includes(name) && named.indexOf(name) !== at);
    if (twice !== undefined) {
      throw new BadInput(`--${twice} is given more than once; give it once.`);
    }
    return { words: positionals, given: values };
  } catch (problem) {
    if (problem instanceof BadInput) throw problem;
    const reason = problem instanceof Error ? (problem.message.split(/\. |\.?\n/)[0] ?? '') : '';
    throw new BadInput(`${reason}. Run \`tarebook --help\` for what there is.`);
  }
}
