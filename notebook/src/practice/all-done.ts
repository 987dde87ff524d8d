import { walker } from '../class/walk-aside';
import { allGroups } from '../state/everything';
import { allAttempts } from '../state/practice';
import { type Done, doneAlone, doneInClass } from './weeks';

const pause = (): Promise<void> => new Promise((done) => setTimeout(done));

/** All that anybody did here in a class or alone; the page is left free between two classes. */
export async function allDone(): Promise<readonly Done[]> {
  const aside = walker();
  try {
    const alone = (await allAttempts()).map(doneAlone);
    const inClass: Done[] = [];
    for (const group of await allGroups()) {
      await pause();
      await Promise.all(group.opened.flatMap((at) => group.cases[at] ?? []).map(aside.walk));
      inClass.push(...doneInClass(group));
    }
    return [...inClass, ...alone];
  } finally {
    aside.end();
  }
}
