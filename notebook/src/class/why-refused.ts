import type { CaseDocument } from '@tarebook/casebook';
import { refusedIn } from '../state/refused';

/** Why a case with something moved cannot be judged, each fact called as a person calls it. */
export function whyRefused(doc: CaseDocument): string | undefined {
  const [refused] = refusedIn(doc);
  if (refused) return `${refused.label}: ${refused.says}`;
  const facts = doc.topic?.facts ?? {};
  return doc.troubles[0]?.says.replaceAll(
    /`([^`]+)`/g,
    (whole, id: string) => facts[id]?.label ?? whole,
  );
}
