import type { Topic } from '@tarebook/rules/engine';
import type { Said } from './choices';

const figure = (name: string): string => `(?<${name}>\\d{1,2},\\d{3}|\\d{3,5})(?![\\d,.]*\\d)`;
const pounds = '(?: ?(?:lbs?|pounds?|#))?';
/** “560 of 6150”, “tongue is 560 lb on a loaded trailer of 6,150” */
const share = new RegExp(
  `(?<![\\p{L}\\d.,$/])${figure('tongue')}${pounds} (?:out )?of (?:a |the |my |our |total |loaded |about )*${figure('trailer')}${pounds}(?! ?(?:miles?|mi|watts?|w|btu|feet|ft|psi)(?!\\p{L}))`,
  'giu',
);
const ofTongue = /(?<!\p{L})(?:tongue|tounge|tw|ball|hitch|sways?|swaying)(?!\p{L})/iu;
const ofPapers =
  /(?<!\p{L})(?:dry|brochure|spec sheet|unloaded|empty|rated|rating|limit)(?!\p{L})/iu;
/** What rests on a ball is neither less nor more of a trailer than this. */
const least = 0.02;
const most = 0.3;

/** What the tongue weighs of a whole trailer, where both are told in one breath; two such are none. */
export function tongueSharesIn(topic: Topic, text: string): readonly Said[] {
  if (!Object.hasOwn(topic.facts, 'trailer.measuredTongueWeight')) return [];
  if (!ofTongue.test(text) || ofPapers.test(text)) return [];
  const [found, another] = text.matchAll(share);
  if (!found || another) return [];
  const figureOf = (name: string): number => Number(found.groups?.[name]?.replace(',', ''));
  const [tongue, trailer] = [figureOf('tongue'), figureOf('trailer')];
  if (tongue < trailer * least || tongue > trailer * most) return [];
  const place = { from: found.index, to: found.index + found[0].length };
  return [{ fact: 'trailer.measuredTongueWeight', value: `${tongue} lb`, ...place }];
}
