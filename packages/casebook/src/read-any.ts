import { topics } from '@tarebook/rules';
import { yamlEntries } from './front-yaml';
import { readCaseFrom } from './read';
import type { CaseDocument } from './shapes';

/** Reads a worked case of any topic; see `readCaseFrom`. */
export const readCase = (text: string, asOf?: string): CaseDocument =>
  readCaseFrom({ ids: Object.keys(topics), topics, yaml: yamlEntries }, text, asOf);
