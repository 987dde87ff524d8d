import { type Topic, topics } from '@tarebook/rules';
import { yamlEntries } from './front-yaml';
import { readCaseFrom } from './read';
import type { CaseDocument } from './shapes';

/**
 * Reads a worked case of any topic; see `readCaseFrom`.
 *
 * @param among the rule sets a case may be of; absent: those of `@tarebook/rules`
 */
export const readCase = (
  text: string,
  asOf?: string,
  among: Readonly<Record<string, Topic>> = topics,
): CaseDocument =>
  readCaseFrom({ ids: Object.keys(among), topics: among, yaml: yamlEntries }, text, asOf);
