import { type Again, again, LedgerError, readLedger } from '@tarebook/record';
import { topics } from '@tarebook/rules';
import type { HouseLayer } from '@tarebook/rules/engine';
import { columns } from './columns';
import { BadInput, named, readText } from './files';

/** What would be said today of every answer in a ledger. */
export async function againOf(
  file: string,
  day: string,
  house: readonly HouseLayer[] | undefined,
): Promise<readonly Again[]> {
  const text = await readText(file);
  let value: unknown;
  try {
    value = JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch {
    throw new BadInput(
      `${named(file)}: this is no JSON; give a ledger, version 1 with its entries.`,
    );
  }
  try {
    return again(readLedger(value), { topics, day, house });
  } catch (problem) {
    if (!(problem instanceof LedgerError)) throw problem;
    throw new BadInput(`${named(file)}: ${problem.message}`);
  }
}

export const isSame = ({ state }: Again): boolean => state === 'same';

/** As other programs read it: what was said, and what would be said now. */
export const againAsJson = (found: readonly Again[]): object =>
  found.map(({ id, was, now, state, correction }) =>
    Object.fromEntries([
      ['id', id],
      ['then', was],
      ['now', now],
      ['state', state],
      ['correction', correction],
    ]),
  );

export function againAsText(found: readonly Again[]): string {
  const turned = found.filter((each) => !isSame(each));
  const unread = found.filter(({ state }) => state === 'not-judged').length;
  const beside = unread === 0 ? '' : `, and ${unread} cannot be judged again`;
  const head =
    turned.length === 0
      ? `All ${found.length} answers hold as they were given.`
      : `Of ${found.length} answers, ${turned.length - unread} would be given differently today${beside}.`;
  const lines = turned.flatMap(({ id, state, was, now, correction }) => [
    [id, state],
    ['', `then: ${was}`],
    ['', `now:  ${now}`],
    ...(correction === null ? [] : [['', `send: ${correction}`]]),
  ]);
  return turned.length === 0 ? head : `${head}\n\n${columns(lines)}`;
}
