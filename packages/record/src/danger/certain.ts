import { calmOf } from './calm';

const gas = '(?:gas|propane|propain|lp|rotten eggs?)';
/** What is told in these words is danger, whatever else a text says. */
const certain: readonly RegExp[] = [
  // A smell of gas, in either order.
  new RegExp(
    `(?<!\\p{L})(?<!(?:no|not|never|without|cannot|can[’']?t|don[’']?t|didn[’']?t)(?: \\p{L}+)? )(?:smell(?:s|ed|ing)?|smelt|stinks?|reeks?|whiff|odou?r)(?: \\p{L}+){0,3} ${gas}(?!\\p{L})|(?<!\\p{L})(?<!(?:no|not|without) )${gas} (?:smell|odou?r|stink)(?!\\p{L})`,
    'iu',
  ),
  // Whoever is eager is on fire, too.
  /(?<!\p{L})(?:(?<!(?:(?:we|you|y[’']?all)(?: are|[’']?re)|i[’']?m|i am|world) )on fire|caught fire|in flames|flames (?:coming|shooting|out|up))(?!\p{L})/iu,
  /(?<!\p{L})smoke (?:is |was )?(?:coming|pouring|rolling|rising) (?:out|from|up|off)(?!\p{L})|(?<!\p{L})(?:starts|started|is|are|was) smoking(?! hot)(?!\p{L})/iu,
  /(?<!\p{L})(?:carbon monoxide|co|smoke|gas|propane|lp)(?: gas)? (?:alarm|detector)(?: \p{L}+){0,2} (?:going off|goes off|went off|sounding|screaming|screams|blaring|wont stop|won[’']t stop|keeps going)(?!\p{L})/iu,
  /(?<!\p{L})(?:no|lost (?:the|my|our|all) ) ?brakes (?:at all|on the (?:trailer|truck|hill|grade|pass)|coming down|going down)(?!\p{L})|(?<!\p{L})brakes? (?:failed|gave out|went out|quit|are gone|don[’']?t work|do not work|don[’']?t hold|do not hold)(?!\p{L})/iu,
  /(?<!\p{L})(?:i|we|he|she|they|wife|husband|son|daughter|kid|dog|who|it) (?:just )?(?:got|gets|get) (?:shocked|zapped|electrocuted)(?!\p{L})/iu,
  /(?<!\p{L})(?:sway(?:s|ing)|fishtail(?:s|ing)?|whipping)(?: \p{L}+){0,3} (?:right now|all over)(?!\p{L})/iu,
  /(?<!\p{L})(?:wheel|tire) (?:came off|fell off|flew off|is (?:off|coming off)|blew out|just blew)(?!\p{L})/iu,
];

/** Whether a text tells outright of a danger, in a sentence that does not ask a price, in general, or of the past. */
export const isCertain = (text: string): boolean =>
  certain.some((sign) => sign.test(text)) &&
  text
    .split(/(?<=[.?!])\s|\n+/)
    .some(
      (sentence) => calmOf(sentence) === undefined && certain.some((sign) => sign.test(sentence)),
    );
