import { isMisspelled, spelledForm } from '../words/misspelled';

/** What may stand between a word and its number without saying anything else. */
const fillers =
  "is|was|are|were|at|about|around|roughly|approx|approximately|maybe|prob|probably|like|some|says|said|say|reads|read|shows|showed|showing|states|stated|of|to|for|up|only|just|even|a|an|the|it|its|it['’]s|that|that['’]?s|comes|came|come|out|in|weighs|weighed|weigh|weighing|measures|measured|marked|stamped|rated|labell?ed|set|given|gives|calls|good|now|me|be|being|as|has|have|got|on";
const number = '#\\u0002*';
const beforeNumber = `[\\s,:=~(–—-]*(?:(?:${fillers})(?![a-z'’])[\\s,:=~(-]*){0,4}`;
const behindNumber =
  '[\\s)/–-]*(?:(?:of|on|in|at|for|is|as|by|the|a|my|our|your|ur|to|kind|that)(?![a-z])[\\s,]*){0,3}';
const betweenWords = '[\\s’,:(-]{1,2}';
/** So many words of any kind; no number and no other sentence stands among them. */
const gaps: Readonly<Record<string, string>> = {
  '..': '[\\s,/+&-]+(?:[^\\s,.;:?!()#+&]+[\\s,/+&-]+){0,3}?',
  '...': '[\\s,/+&-]+(?:[^\\s,.;:?!()#+&]+[\\s,/+&-]+){0,6}?',
};

/** The parts of a saying between its spaces; what stands in brackets is one. */
function itemsOf(saying: string): readonly string[] {
  const items: string[] = [];
  let depth = 0;
  let item = '';
  for (const letter of saying) {
    if (letter === ' ' && depth === 0) {
      items.push(item);
      item = '';
      continue;
    }
    if (letter === '(' || letter === '[') depth += 1;
    if (letter === ')' || letter === ']') depth -= 1;
    item += letter;
  }
  return [...items, item];
}

function wordForm(word: string): string {
  const own = word
    .replace(/[.*+?^${}|\\]/g, '\\$&')
    .replaceAll("'", "['’]?")
    .replaceAll('-', '[ -]?')
    .replace(/[@#]/g, (mark) => (mark === '@' ? number : `(?<n>${number})`));
  const plain = isMisspelled(word) ? spelledForm(word) : own;
  return /[a-z]{3}$/.test(word) ? `${plain}(?:['’]?s)?` : plain;
}

const itemForm = (item: string): string =>
  item.startsWith('(') && item.endsWith(')')
    ? `(?:${item.slice(1, -1).split('|').map(sequence).join('|')})`
    : wordForm(item);

function joint(last: string, next: string): string {
  if (next === '#' || next === '@') return beforeNumber;
  if (last === '@') return `[,;]?${behindNumber}`;
  return last === '#' ? behindNumber : betweenWords;
}

function sequence(saying: string): string {
  let form = '';
  let last = '';
  let waits = '';
  let gap = '';
  for (const item of itemsOf(saying)) {
    if (Object.hasOwn(gaps, item)) {
      gap = gaps[item] ?? '';
      continue;
    }
    if (item.startsWith('[')) {
      const inner = itemForm(`(${item.slice(1, -1)})`);
      // What may be missing brings what parts it from its neighbor along.
      if (last === '') waits = `(?:${inner}${betweenWords})?`;
      else form += `(?:${joint(last, '')}${inner})?`;
      continue;
    }
    form += waits + (last === '' ? '' : gap || joint(last, item)) + itemForm(item);
    waits = '';
    gap = '';
    last = item;
  }
  return form;
}

const forms = new Map<string, RegExp>();

/** A saying as it is looked for in a text whose numbers are marks. */
export function formOf(saying: string): RegExp {
  const before = forms.get(saying);
  if (before) return before;
  const form = new RegExp(
    `(?<![\\w#\\u0002'’])(?:${sequence(saying)})(?![a-z\\u0002])`,
    // Where there is another number beside its own, it matters which is which.
    saying.includes('@') ? 'dg' : 'g',
  );
  forms.set(saying, form);
  return form;
}

/**
 * The words of a saying of which a text must have one each, by how they begin: a text without one of them
 * does not hold it. What may be missing is none of them.
 */
export function neededIn(saying: string): readonly (readonly string[])[] {
  return itemsOf(saying).flatMap((item): readonly (readonly string[])[] => {
    if (/^[#@[.]/.test(item)) return [];
    const options = item.startsWith('(') ? item.slice(1, -1).split('|') : [item];
    const begins = options.map((option) => /^[^\s'#@[\]-]*/.exec(option)?.[0] ?? '');
    return begins.includes('') || begins.some(isMisspelled) ? [] : [begins];
  });
}
