import { spelledRight } from '../words/misspelled';
import type { Amount } from './amounts';
import { isAskedAbout } from './asked-about';

/** Where a number and its word stand in a text. */
type Span = { readonly from: number; readonly to: number };

/** A fact, what stands around its number where it is not meant, and on which side. */
type Guard = {
  readonly fact: RegExp;
  readonly ahead?: RegExp;
  readonly after?: RegExp;
  readonly anywhere?: RegExp;
  /** All ahead of the number, its word too. */
  readonly upTo?: RegExp;
};

/** What weighs, holds or pulls something of its own: its figure is neither the vehicle’s nor the trailer’s. */
const things =
  '(?:dolly|dollies|straps?|rope|winch|jacks?|generators?|genny|gennies|coolers?|cart|carts|crates?|ladders?|racks?|rails?|kayaks?|kayak trailer|canoes?|bikes?|e-bikes?|bicycles?|motorcycles?|dirt bikes?|atvs?|quads?|mowers?|tool ?box|toolbox|tools|firewood|stands?|ramps?|chains?|shackles?|hooks?|scooters?|wheelchair|canopy|topper|grill|smoker|boat|boat trailer|utility trailer|safe|tent|boxe?s?|bins?|bags?|table|couch|bunks?|beds?|shelf|shelves|cabinet|tow bar|tow bars|tow strap|tow rope|awning|air conditioner|fridge|refrigerator|washer|piano|tractor|hay|gravel)';
const ofRig =
  /^(?:vehicle\.(?:max|gvwr|gcwr|gawr|placard|curb|weighed|cargo)|trailer\.(?:dry|gvwr|gawr|measured|cargoCapacity|weighed)|motorhome\.|camper\.weight)/;

/** Words take a number for a fact that is of something else; a wrong weight is worse than none. */
const guards: readonly Guard[] = [
  // “A ball rated 6,000”
  {
    fact: /^vehicle\.maxTrailerWeight$/,
    ahead:
      /(?<!\p{L})(?:ball|hitch|receiver|bars?|dolly|mount|coupler|jack|chains?|axles?|tires?)(?: \w+){0,4} $/iu,
  },
  // “A 350 lb tow dolly”, “the winch pulls 9,500”
  {
    fact: ofRig,
    upTo: new RegExp(
      `(?<!\\p{L})${things}(?: (?:is|are|was|of|weighs?|weighing|rated|rating|good|for|at|max|pulls?|about|around|says|stamped|marked|up|to|that|which|it|has|holds?|takes?|lifts?|limit|alone|empty|only|label))* $`,
      'iu',
    ),
    after: new RegExp(
      `^ ?(?:lbs?|pounds?|#)? ?(?:(?!(?:dry|gross|empty|gvwr|max|loaded|and|with|plus|for|of|on|in|my|our|the|two|three)(?!\\p{L}))\\p{L}+ )?${things}(?! (?:with|for|of)(?!\\p{L}))(?!\\p{L})`,
      'iu',
    ),
  },
  // “Can it still tow 6,000?” asks for it.
  {
    fact: /^vehicle\.max(?:TrailerWeight|Unbraked|TrailerCarried)$/,
    upTo: /(?<!\p{L})(?:can|could|will|would|may|should|shall|does|do|did|is|are|able|ok|okay|safe|want|wants|going|plan|like|need|trying|allowed|enough) (?:it|i|we|you|u|he|she|they|my|our|the|this|that|an?|his|her|to|for)(?!\p{L})[^.?!,;\d]*(?<!\p{L})(?:tow|pull|haul|tug|drag|move)(?:ing)?(?: (?:an?|the|my|our|this|that|about|around|up|to|over|more|than|like|with|it|at|something|is|be))* ?$/iu,
  },
  // “270 miles of range”, “packed 3,000 miles ago”
  {
    fact: /^trip\.distance$/,
    ahead: /(?<!\p{L})(?:range|odometer|mileage|clock|every|last|rated|epa)(?: \p{L}+){0,3} $/iu,
    after:
      /^ ?(?:of |in )?(?:range|ranges|on (?:an?|one|it|them|the (?:clock|odometer|battery|dash))|per (?:charge|tank|day|gallon)|ago|old|since|a (?:year|week|month|day|charge|tank)|an hour|to (?:the gallon|empty)|rated|epa|when full|full|from (?:us|here|home|town|you))(?!\p{L})/iu,
  },
  // “The battery is down to 30 percent” is how full it is, and no depth that somebody keeps to.
  {
    fact: /^battery\.makersDepth$/,
    upTo: /(?<!\p{L})(?:is|are|was|were|it[’']?s|batter(?:y|ies)[’']?s|they[’']re|got|went|gone|now|already|shows?|reads?|(?:monitor|app|shunt) says|currently|sitting|sits)(?: (?:already|now|only|just|all|the|way))* (?:down )?(?:to|at) (?:about |around |like )?$/iu,
  },
  // “The truck weighs 5,900 with us in it” is not empty; one with a driver and a full tank is.
  {
    fact: /^vehicle\.curbWeight$/,
    after:
      /^ ?(?:lbs?|pounds?|#)?,? ?(?:loaded|packed|(?:with|w\/) (?:us|(?:the |all the |my |our |all of the )?(?:everybody|everyone|everything|family|gear|kids|people|crew|dogs?|wife|husband|stuff|trailer|camper|passengers|four|five|six)))(?!\p{L})/iu,
  },
  // “9.5 mpg towing” is not what it does alone.
  {
    fact: /^solo\.(?:fuelEconomy|consumption)$/,
    after:
      /^ ?(?:mpg|miles (?:to the|per) gallon|kwh(?: ?\/ ?| per | a )mi(?:le)?)?,? ?(?:(?:when|while|if|only|with me) )?(?:towing|pulling|hauling|loaded|hitched|hooked up|with (?:the|a|my|our) (?:trailer|camper|rig))(?!\p{L})/iu,
  },
  // “Payload left 900” is what remains of the label’s.
  {
    fact: /^vehicle\.placardPayload$/,
    upTo: /(?<!\p{L})(?:payload|pyld)(?: (?:i|we) (?:have|got))? (?:left|remaining|remains|to spare|spare)(?: (?:over|is|of|at|about|around))* ?$/iu,
  },
  // “4 inches behind the axle” is not behind the headboard.
  {
    fact: /^camper\.centerBehindBoard$/,
    after:
      /^ ?(?:in|inch|inches)? ?(?:behind|back|aft|ahead|forward|in front|fwd|from|of|past| )*(?:the |my |our |its )?(?:rear |back )?(?:axle|wheels?)(?!\p{L})/iu,
  },
  // “On page 214”
  {
    fact: /./,
    upTo: /(?<!\p{L})(?:pages?|pg|p\.|chapter|paragraph|aisle|route|highway|hwy|exit|mile marker) ?$/iu,
  },
  // “No more than nineteen hundred pounds of pin”, “max 500 on ball”
  {
    fact: /^vehicle\.max(?:TrailerWeight|Unbraked|TrailerCarried)$/,
    after:
      /^ ?(?:lbs?|pounds?|#)? ?(?:of|on|at|for)? ?(?:the |my |its )?(?:pin|ball|tongue|hitch|coupler)(?! hitch|\p{L})/iu,
  },
  // “Nights about 30” are that cold.
  {
    fact: /^(?:trip\.nights|stay\.days)$/,
    upTo: /(?<!\p{L})(?:nights?|nites?|days?)(?: (?:are|is|at|about|around|bout|in|the|down|to|get|going|near|low))+ $/iu,
  },
  // “Well below zero” is colder than that.
  {
    fact: /^outside\.temperature$/,
    upTo: /(?<!\p{L})(?:well|way|far|go|goes|going) (?:below|under) $/iu,
  },
  // A camper in the bed is no trailer.
  {
    fact: /^trailer\.(?:dry|gvwr|cargo)/,
    anywhere:
      /(?<!\p{L})(?:truck camper|slide[- ]in|in the bed of|bed camper|camper in the bed|center of gravity)(?!\p{L})/iu,
  },
  // “Hail left forty dents”
  {
    fact: /^(?:shop\.quote|price\.)/,
    after: /^ (?:dents?|miles|years|days|inch(?:es)?|spots?|holes?)(?!\p{L})/iu,
  },
  // “Fills in 2 days”
  { fact: /^stay\.days$/, ahead: /(?<!\p{L})(?:fills?|full|empty|gone|dead|dry) in $/iu },
  // “0.45 kWh per mile without a trailer”
  { fact: /^trial\./, after: /^ ?(?:\/ ?mi(?:le)?s? )?(?:without|solo|alone|unhitched|empty)/iu },
  // “The zone starts 31 in behind the headboard”
  { fact: /^vehicle\.headboardAhead$/, after: /^ ?(?:in|inches)? ?(?:behind|back from)/iu },
  // “A 1400 lb bar set”
  { fact: /ongue/, after: /^ ?(?:lbs?|pounds?|#)? ?(?:spring )?bars?(?!\p{L})/iu },
  // “Need psi 4 st tires”: for these tires.
  { fact: /^tire\.pressure$/, after: /^ (?:st|lt|trailer|my|our)(?!\p{L})/iu },
  // “Roughly 450 lb left after the tongue”
  {
    fact: /payload|max|gvwr|gcwr|weight/i,
    after: /^ ?(?:of \w+ )?(?:left|to spare|remaining|short|over budget)(?!\p{L})/iu,
  },
  // “The zone is 40 to 60 inches behind the headboard”
  { fact: /^camper\.centerBehindBoard$/, ahead: /(?<!\p{L})zone(?: \w+){0,3} $/iu },
  // “Thirteen feet behind the axle”
  {
    fact: /^trailer\.length$/,
    after: /^ (?:behind|ahead|back|from|off|of|to|away|high|wide|above|cord)(?!\p{L})/iu,
  },
  { fact: /^cord\.length$/, anywhere: /^(?!.*(?:cord|cable|extension|reel))/is },
  // “Ten gauge”
  { fact: /^(?!wire\.gauge|cord\.gauge)/, after: /^[ -]?(?:ga|gauge|awg)(?!\p{L})/iu },
  // “We have tonight eight guests”
  {
    fact: /^outside\.temperature$/,
    after:
      /^ (?!(?:a|all|and|at|below|but|by|celsius|deg|degrees?|dropping|early|every|f|for|forecast|here|i|if|in|is|it|its|last|late|my|n|night|now|on|or|our|out|outside|over|so|that|the|then|this|to|today|tonight|tonite|w|was|we|when|while|with|yesterday|above)(?!\p{L}))\p{L}/iu,
  },
];

/** How much a thing may be, in the unit that a bare number has: a ball’s size is not how high it stands. */
const sizes: readonly {
  readonly fact: RegExp;
  readonly unit: string;
  readonly least: number;
  readonly most: number;
  /** What a thing is called by, and not what it shows. */
  readonly never?: readonly number[];
}[] = [
  // From its platform to its crown; how high it stands above the ground is another height.
  { fact: /^hitch\.ballHeight$/, unit: 'in', least: 2.5, most: 8 },
  { fact: /^trailer\.couplerHeight$/, unit: 'in', least: 8, most: 60 },
  { fact: /^hitch\.receiverHeight/, unit: 'in', least: 8, most: 60 },
  { fact: /^(?:hitch\.ballSize|trailer\.couplerSize)$/, unit: 'in', least: 1.5, most: 3 },
  { fact: /^battery\.voltage$/, unit: 'V', least: 8, most: 60, never: [12, 24, 36, 48] },
  { fact: /^voltage\./, unit: 'V', least: 80, most: 280 },
  { fact: /^solar\.power$/, unit: 'W', least: 20, most: 4000 },
  { fact: /^generator\.power$/, unit: 'W', least: 400, most: 50_000 },
  // What a post, a cord or a breaker gives is no air conditioner’s.
  { fact: /^airConditioner\.current$/, unit: 'A', least: 3, most: 25 },
  // “4 aboard” are people.
  { fact: /^camper\.freshWater$/, unit: 'gal', least: 5, most: 200 },
  { fact: /^battery\.capacity$/, unit: 'Ah', least: 7, most: 1000 },
  { fact: /^battery\.temperature$/, unit: '°F', least: -40, most: 200 },
  { fact: /^cord\.length$/, unit: 'ft', least: 5, most: 300 },
  { fact: /^trailer\.length$/, unit: 'ft', least: 8, most: 50 },
  { fact: /^trip\.(?:speed|towSpeed)$/, unit: 'mph', least: 15, most: 100 },
  {
    fact: /^tire\.(?:pressure|maxPressure|labelPressure|mates|softest)$/,
    unit: 'psi',
    least: 12,
    most: 125,
  },
  { fact: /^hub\./, unit: '°F', least: 50, most: 700 },
  { fact: /^trailer\.(?:dryWeight|gvwr)$/, unit: 'lb', least: 650, most: 60_000 },
  { fact: /^vehicle\.placardPayload$/, unit: 'lb', least: 200, most: 12_000 },
  // The small ones that are thrown away are none.
  { fact: /^cylinder\.fill$/, unit: 'lb', least: 5, most: 420 },
  { fact: /^cylinder\.scaleWeight$/, unit: 'lb', least: 5, most: 700 },
  {
    fact: /tireCapacity$|^(?:spare|upgrade)\.capacity$|^wheel\.rating$/,
    unit: 'lb',
    least: 400,
    most: 9000,
  },
  { fact: /^water\.(?:fresh|gray|black)Tank$/, unit: 'gal', least: 4, most: 300 },
  { fact: /^trip\.gusts$/, unit: 'mph', least: 10, most: 150 },
  { fact: /^furnace\./, unit: 'Btu/h', least: 3000, most: 120_000 },
  { fact: /^solo\.consumption$/, unit: 'kWh/mi', least: 0.15, most: 1.2 },
  { fact: /^trial\.consumption$/, unit: 'kWh/mi', least: 0.3, most: 3 },
  {
    fact: /^(?:price\.|rig\.value|policy\.agreedValue|loan\.owed)/,
    unit: 'USD',
    least: 300,
    most: 500_000,
  },
  { fact: /^trip\.distance$/, unit: 'mi', least: 1, most: 5000 },
  { fact: /^generator\.altitude$/, unit: 'ft', least: 500, most: 15_000 },
];

/** Of these a number that is asked about, as “should I run 80 psi”, is none. */
const asked = /^(?:tire\.pressure|hitch\.bars|vehicle\.max)/;

/** Whether a number of a text may be that fact, by what stands around it. */
export function isMeant(fact: string, text: string, amount: Amount, word: Span): boolean {
  const { value } = amount;
  const isOff = sizes.some(
    ({ fact: of, unit, least, most, never = [] }) =>
      of.test(fact) &&
      (amount.unit ?? unit) === unit &&
      (value < least || value > most || never.includes(value)),
  );
  if (isOff || (asked.test(fact) && isAskedAbout(text, amount.from, amount.to))) return false;
  const ahead = spelledRight(text.slice(0, Math.min(amount.from, word.from)).slice(-40));
  const after = spelledRight(text.slice(amount.to, amount.to + 40));
  const upTo = spelledRight(text.slice(Math.max(0, amount.from - 70), amount.from));
  return !guards.some(
    (guard) =>
      guard.fact.test(fact) &&
      (guard.ahead?.test(ahead) === true ||
        guard.after?.test(after) === true ||
        guard.upTo?.test(upTo) === true ||
        guard.anywhere?.test(text) === true),
  );
}

export const isForEach = (text: string, { to }: Amount): boolean =>
  /^[ ,]*(?:each|apiece|per person|a head)\b/i.test(text.slice(to, to + 12));

/** “From 2011”, “a 2019 half-ton”, “2015 for 11 grand” */
export const isYear = (text: string, { from, to, unit }: Amount): boolean =>
  unit === undefined &&
  /^(?:19[89]|20[0-3])\d$/.test(text.slice(from, to)) &&
  /(?:^|[.!?\n] ?|\b(?:from|in|since|an?|the|my|our|year|is|old|late|early|model)\s)$/i.test(
    text.slice(Math.max(0, from - 8), from),
  );

/** “10 or 30 out” is neither. */
export const isEither = (text: string, { from, to }: Amount): boolean =>
  /\d (?:or|vs|versus) $/i.test(text.slice(Math.max(0, from - 12), from)) ||
  /^ (?:or|vs|versus) \d/i.test(text.slice(to, to + 10));
