/** Where the page is, from the part of the address that never reaches a server. */
export type Address =
  | { readonly page: 'today' | 'cases' | 'class' | 'questions' | 'yard' | 'rules' }
  | {
      readonly page: 'case';
      readonly topic: string;
      readonly name: string;
      /** A whole case, packed into the address by whoever shared it. */
      readonly packed?: string;
    }
  | {
      readonly page: 'beside';
      readonly topic: string;
      readonly name: string;
      /** The rigs that stand beside each other. */
      readonly packed: string;
    }
  | { readonly page: 'note'; readonly name: string }
  | { readonly page: 'rig'; readonly name: string; readonly packed?: string }
  | { readonly page: 'topic'; readonly topic: string };

const pages = ['today', 'cases', 'class', 'questions', 'yard', 'rules'] as const;

function decoded(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}

/**
 * An address that is not one of ours leads to the first page.
 *
 *     #/today   #/cases   #/case/<topic>/<name>   #/case/<topic>/<name>/<packed case>   #/rules/<topic>   #/beside/<topic>/<name>/<packed rigs>   #/case/note/<name>   #/case/rig/<name>
 */
export function readAddress(hash: string): Address {
  const [, page = '', first = '', second = '', third = ''] = hash.split('/').map(decoded);
  if (page === 'case' && first === 'note' && second !== '') return { page: 'note', name: second };
  if (page === 'case' && first === 'rig' && second !== '') {
    return { page: 'rig', name: second, ...(third !== '' && { packed: third }) };
  }
  if (page === 'beside' && third !== '') {
    return { page, topic: first, name: second, packed: third };
  }
  if (page === 'case' && first !== '' && second !== '') {
    return { page: 'case', topic: first, name: second, ...(third !== '' && { packed: third }) };
  }
  if (page === 'rules' && first !== '') return { page: 'topic', topic: first };
  return { page: pages.find((each) => each === page) ?? 'today' };
}

export const besideAddress = (topic: string, name: string, packed: string): string =>
  `#/beside/${encodeURIComponent(topic)}/${encodeURIComponent(name)}/${packed}`;

export const caseAddress = (topic: string, name: string): string =>
  `#/case/${encodeURIComponent(topic)}/${encodeURIComponent(name)}`;

/** The part of a topic that an address ends in, such as a formula. */
export function partOf(hash: string): string {
  try {
    return decodeURIComponent(hash.split('/')[3] ?? '');
  } catch {
    return '';
  }
}
