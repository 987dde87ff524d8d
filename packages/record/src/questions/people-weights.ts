/** Who rides along, as a text says it. */
export type Riders = {
  readonly who: 'adult' | 'child' | 'dog';
  readonly count: number;
  readonly from: number;
  readonly to: number;
};

/** What somebody who rides along weighs, with the words that tell it. */
type Weight = { readonly weight: string; readonly words: string };

const unit = '(?: ?(?<unit>lbs?|pounds?|#|kgs?|kilos?))?';
const notOther =
  '(?![\\p{L}\\d.,]*\\d)(?! ?(?:years?|yrs?|months?|weeks?|days?|nights?|old|miles?|mi|mph|ft|feet|in\\b|psi|amps?|gal|gallons?|%|over|under|short|left)(?!\\p{L}))(?! ?%)';
/** “Me and the wife are 390 together”, “the two of us weigh 390 lb combined” */
const together = new RegExp(
  `(?<![\\p{L}\\d.,$])(?<sum>\\d{2,4})${unit},? (?:all )?(?:together|combined|between us|in total|in all)(?!\\p{L})`,
  'iu',
);
const dogs = '(?:dog|pup|lab|retriever|mutt|beagle|shepherd|terrier|poodle|hound|collie|spaniel)';
/** “Dog 60”, “the dog is 60 lb”, “a 60 lb dog”, “60-pound lab” */
const ofDog = [
  new RegExp(
    `(?<!\\p{L})${dogs},? (?:is |weighs |at |about |around )*(?<sum>\\d{1,3})${unit}${notOther}(?!\\p{L})`,
    'iu',
  ),
  new RegExp(
    `(?<![\\p{L}\\d.,$])(?<sum>\\d{1,3})[ -]?(?<unit>lbs?|pounds?|kgs?|kilos?)[ -]${dogs}(?!\\p{L})`,
    'iu',
  ),
];

/** What one weighs, in pounds, that nobody is lighter or heavier than. */
const sizes: Readonly<Record<Riders['who'], { readonly least: number; readonly most: number }>> = {
  adult: { least: 80, most: 400 },
  child: { least: 15, most: 200 },
  dog: { least: 3, most: 250 },
};
const poundsOfKilogram = 2.2046;

function weightFrom(found: RegExpExecArray | null, { who, count }: Riders): Weight | undefined {
  const { sum = '', unit: said = 'lb', each: apiece, more = '' } = found?.groups ?? {};
  if (!found || sum === '') return undefined;
  const isKilograms = /^k/i.test(said);
  // “Two adults 180 & 150”: one for each of them, or it is of somebody else, too.
  const listed = [sum, ...(more.match(/\d+/g) ?? [])].map(Number);
  if (listed.length > 1 && (listed.length !== count || apiece !== undefined)) return undefined;
  const whole = listed.reduce((all, one) => all + one, 0);
  const each = apiece === undefined ? whole / count : whole;
  const pounds = isKilograms ? each * poundsOfKilogram : each;
  if (pounds < sizes[who].least || pounds > sizes[who].most) return undefined;
  return { weight: `${Math.round(each * 10) / 10} ${isKilograms ? 'kg' : 'lb'}`, words: found[0] };
}

const isOrAbout =
  ',?(?: (?:is|are|weighs?|weigh|weighing|comes? to|totals?|adds? up to|together|combined|at|about|around|roughly|maybe|some))*[ :=]{1,2}';
/** “Wife and I 390”, “two kids at 60 lb each”: right behind those it is of. */
const rightBehind = new RegExp(
  `^${isOrAbout}(?<sum>\\d{2,4})${unit}(?<more>(?: ?(?:&|\\+|/|and) ?\\d{2,3}(?: ?(?:lbs?|pounds?))?)+(?= ?(?:[.,;!?)]|$|and |plus |with )))?(?<each>,? (?:each|apiece|per person))?${notOther}(?!\\p{L})`,
  'iu',
);
/** “Two kids and wife and I 610”: others are in it. */
const othersAhead = new RegExp(
  `(?<!\\p{L})(?:kids?|child|children|boys?|girls?|teens?|toddlers?|${dogs}s?),?(?: (?:and|n|plus|with))?[ ,&+/]*$`,
  'iu',
);

/** What stands right behind some who ride along, and is of nobody else. */
function behindThem(riders: Riders, text: string): Weight | undefined {
  if (othersAhead.test(text.slice(0, riders.from))) return undefined;
  const told = weightFrom(rightBehind.exec(text.slice(riders.to)), riders);
  return told && { ...told, words: text.slice(riders.from, riders.to) + told.words };
}

/**
 * What each of some who ride along weighs, where a text tells it of all of them: what stands right behind
 * them, or a sum, which is of the adults alone where nobody else rides. Its equal part is what each weighs.
 */
export function weightOf(riders: Riders, all: readonly Riders[], text: string): Weight | undefined {
  if (riders.who === 'dog' && riders.count === 1) {
    return ofDog.map((form) => weightFrom(form.exec(text), riders)).find((each) => each);
  }
  const behind = behindThem(riders, text);
  if (behind) return behind;
  const others = all.filter(({ who }) => who !== riders.who && who !== 'dog');
  if (riders.who !== 'adult' || others.length > 0) return undefined;
  return weightFrom(together.exec(text), riders);
}

const collective =
  '(?:people|ppl|passengers|occupants|everybody|everyone|all of us|the family|our family|family)';
const weighs =
  ',?(?: (?:is|are|weighs?|weighing|comes? to|totals?|adds? up to|together|combined|at|about|around|roughly|maybe|some|all|in all|a total of))*[ :=]{1,2}';
/** “People 610”, “everybody together is 610 lb” */
const byCollective = new RegExp(
  `(?<!\\p{L}|\\d )${collective}${weighs}(?<sum>\\d{3,4})${unit}${notOther}(?!\\p{L})`,
  'iu',
);
/** “Us two + 2 kids + dog is about 610”: whoever writes is among them, and the last one closes the list. */
const byList = new RegExp(
  `(?<!\\p{L})(?:us|we|me|i|myself)(?!\\p{L})(?:(?!\\d{2})[^.?!;\\n]){0,60}(?:(?<!\\p{L})(?:and|n|plus|with|w/)|[&+])(?: (?:the|our|my|a|an|\\d|two|three|four))* ?(?:kids?|child|children|boys?|girls?|${dogs}s?)(?: (?:is|are|weighs?|comes? to|totals?|adds? up to|together|combined|about|around|roughly|all|=))* (?<sum>\\d{3,4})${unit}${notOther}(?!\\p{L})`,
  'iu',
);
const mostTogether = 2_500;

/** What all who ride along weigh together, where a text tells it of all of them and of nobody by himself. */
export function togetherIn(text: string): Weight | undefined {
  const found = byCollective.exec(text) ?? byList.exec(text);
  const { sum = '', unit: said = 'lb' } = found?.groups ?? {};
  if (!found || Number(sum) < 100 || Number(sum) > mostTogether) return undefined;
  return { weight: `${Number(sum)} ${/^k/i.test(said) ? 'kg' : 'lb'}`, words: found[0] };
}
