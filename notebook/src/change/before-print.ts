import { askedOf, type CaseDocument } from '@tarebook/casebook';
import type { UnitSystem } from '@tarebook/rules/quantity';
import { housesNow } from '../state/house';
import { isSeeking, seekChanges } from './asked';
import { foundFor, hearFound, tellFound } from './found';

/** So long changes are looked for, in milliseconds; then the case is printed without them. */
const most = 4_000;

/** Somebody looks for them already: one search at a time. */
function heardOf(text: string, system: UnitSystem, until: AbortSignal): Promise<void> {
  return new Promise((done) => {
    const leave = hearFound(() => {
      if (!foundFor(text, system)) return;
      leave();
      done();
    });
    until.addEventListener('abort', leave, { once: true });
  });
}

async function sought(doc: CaseDocument, system: UnitSystem, until: AbortSignal): Promise<void> {
  if (!doc.topic) return;
  const asked = { ...askedOf(doc).asked, units: system };
  const houses = housesNow();
  const found = await seekChanges({ topic: doc.topic.id, asked, houses }, until);
  tellFound({ text: doc.text, system, houses, found });
}

/** Looks for what would change a case, so that its sheet can say it; what takes long is not waited for. */
export async function changesFound(doc: CaseDocument, system: UnitSystem): Promise<void> {
  if (foundFor(doc.text, system) || doc.troubles.length > 0) return;
  const until = new AbortController();
  const late = new Promise<void>((done) => {
    setTimeout(() => {
      until.abort();
      done();
    }, most);
  });
  const search = isSeeking()
    ? heardOf(doc.text, system, until.signal)
    : sought(doc, system, until.signal);
  await Promise.race([search.catch(() => undefined), late]);
}
