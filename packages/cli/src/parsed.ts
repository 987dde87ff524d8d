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
    const { values, positionals } = parseArgs({ args: [...args], options, allowPositionals: true });
    return { words: positionals, given: values };
  } catch (problem) {
    const reason = problem instanceof Error ? (problem.message.split(/\. |\.?\n/)[0] ?? '') : '';
    throw new BadInput(`${reason}. Run \`tarebook --help\` for what there is.`);
  }
}
