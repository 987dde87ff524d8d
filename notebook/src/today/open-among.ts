import type { Row } from '../cases/rows';
import type { Verdict } from '../cases/verdict';

/** So many of the latest cases are looked through for what is open; the others stand on Cases. */
const latest = 20;

type Tell = (topic: string, text: string) => Promise<Verdict>;

/** A call is open while its case cannot be said; what stays is in the order it came. */
export async function openAmong(
  rows: readonly Row[],
  tell: Tell,
  goesOn: () => boolean = () => true,
): Promise<readonly Row[]> {
  const open: Row[] = [];
  for (const row of rows.filter(({ own }) => own === 'mine').slice(0, latest)) {
    if (!goesOn()) break;
    const { stands } = row.text === undefined ? { stands: 'ok' } : await tell(row.topic, row.text);
    if (stands === 'unknown') open.push(row);
  }
  return open;
}
