import { fill } from './edit';
import { yamlEntries } from './front-yaml';
import { readCaseFrom } from './read';
import type { CaseDocument } from './shapes';

/** Rewrites what is expected of the given names; for a person who has looked at the difference. */
export function acceptFound(doc: CaseDocument, found: Readonly<Record<string, string>>): string {
  let text = doc.text;
  if (!doc.topic) return text;
  const { id } = doc.topic;
  const shelf = { ids: [id], topics: { [id]: doc.topic }, yaml: yamlEntries };
  for (const [name, value] of Object.entries(found)) {
    const now = readCaseFrom(shelf, text);
    const row = now.expectations.find((each) => each.name === name);
    if (!row) continue;
    text = fill(now, row.valueSpan, value);
  }
  return text;
}
