import { type CaseDocument, readCase } from '@tarebook/casebook';

const read = new Map<string, CaseDocument>();

/**
 * A filed document as `readCase` reads it: once for all files of tests that share a process, as
 * there are some hundreds and about twenty files ask for all of them.
 */
export function readFiled(text: string): CaseDocument {
  const before = read.get(text);
  if (before) return before;
  const doc = readCase(text);
  read.set(text, doc);
  return doc;
}
