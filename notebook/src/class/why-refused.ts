import type { CaseDocument } from '@tarebook/casebook';
import { refusedIn } from '../state/refused';

/** Why a case with something moved cannot be judged: an entry by its label, else the document's first trouble. */
export function whyRefused(doc: CaseDocument): string | undefined {
  const [refused] = refusedIn(doc);
  return refused ? `${refused.label}: ${refused.says}` : doc.troubles[0]?.says;
}
