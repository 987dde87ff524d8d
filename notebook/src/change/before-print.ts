import { askedOf, type CaseDocument } from '@tarebook/casebook';
import type { UnitSystem } from '@tarebook/rules/quantity';
import { housesNow } from '../state/house';
import { seekChanges, stopSeeking } from './asked';
import { foundFor, hearFound, tellFound } from './found';

/** So long changes are looked for, in milliseconds; then the case is printed without them. */
const most = 4_000;

const lateBy = (time: number): Promise<undefined> =>
  new Promise((done) => setTimeout(done, time, undefined));

/** Somebody looks for them already: one search at a time. */
async function heardOf(text: string, system: UnitSystem): Promise<void> {
  await new Promise<void>((done) => {
    const leave = hearFound(() => {
      if (!foundFor(text, system)) return;
      leave();
      done();
    });
  });
}

async function sought(doc: CaseDocument, system: UnitSystem): Promise<void> {
  if (!doc.topic) return;
  const asked = { ...askedOf(doc).asked, units: system };
  const found = await seekChanges({ topic: doc.topic.id, asked, houses: housesNow() });
  tellFound({ text: doc.text, system, found });
}

/** Looks for what would change a case, so that its sheet can say it; what takes long is not waited for. */
export async function changesFound(doc: CaseDocument, system: UnitSystem): Promise<void> {
  if (foundFor(doc.text, system) || doc.troubles.length > 0) return;
  const isSought = document.querySelector('change-list') !== null;
  const search = isSought ? heardOf(doc.text, system) : sought(doc, system);
  await Promise.race([search.catch(() => undefined), lateBy(most)]);
  if (!isSought && !foundFor(doc.text, system)) stopSeeking();
}
