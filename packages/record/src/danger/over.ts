/** Somebody is in it, goes on with it, or asks whether they may: then nothing is over. */
const now =
  /(?<!\p{L})(?:right now|rn|now(?! and)|tonight|tonite|today|tomorrow|at the moment|this (?:minute|second|instant)|as (?:i|we) (?:type|write|speak)|(?:minutes?|hours?|hrs?) ago|since (?:this morning|breakfast|last night|yesterday|noon|supper)|still|again(?! last)|keeps?|(?:i|we|you|u)(?: can)? (?:smell|feel|hear|see)|(?:we|i)(?: ?[’']?re|[’']?m| are| am| r) (?:at|on|in|here|pulled|parked|stuck|stopped|driving|sitting|sleeping)|on the (?:shoulder|road|highway|interstate)|pulled over|rest (?:area|stop)|asleep|safe|worr\p{L}+|dangerous|help|leaving|heading|can (?:i|we)|should (?:i|we)|ok to|okay to|is it ok|fine to|wait|drive|driving)(?!\p{L})/iu;
const longAgo =
  /(?<!\p{L})(?:last (?:year|season|summer|fall|spring|winter|month|week|night|nite)|(?:two|three|four|five|six|ten|few|couple|some|many|\d+)(?: of)? (?:years|summers|winters|seasons|months) (?:ago|back)|years ago|back in (?:19|20)\d\d)(?!\p{L})/iu;
const mended =
  /(?<!\p{L})(?:all (?:good|done|fixed|well)|made good|(?:was|were|got|been|is|all) (?:fixed|repaired|replaced|sorted|mended|done)|(?:has|have|had|did)(?:n[’']?t| not) come back|never came back|nothing has happened since|(?:i|we|he|she|they|dealer|shop) (?:have |had )?(?:since )?(?:replaced|fixed|repaired|mended) (?:it|them|that|both|the \p{L}+)|no harm|everyone (?:is )?(?:well|fine)|kids cheered)(?!\p{L})/iu;
const supposed =
  /(?<!\p{L})(?:theory question|theoretical\p{L}*|hypothetical\p{L}*|asking in general)(?!\p{L})/iu;
/** An alarm at its end, where nobody is; it sounds for nothing else. */
const chirps = /chirp/iu;
const stored =
  /nobody (?:sleeps|lives|is) in (?:it|there)(?!\p{L})|in storage(?!\p{L}).{0,160}nobody(?!\p{L})/isu;
/** A smell of water, where whoever writes has looked for gas. */
const ofWater = /(?<!\p{L})(?:tap|taps|faucet|faucets|drain|drains|toilet|hot water)(?!\p{L})/iu;
const ruledOut =
  /(?<!\p{L})(?:bottles|cylinders|tanks|propane) (?:have been|has been|are|is|were|was) (?:off the trailer|disconnected since|removed)(?!\p{L})/iu;
const graver =
  /smok(?!er)|(?<!\p{L})fires?(?!\p{L})|flam|spark|(?<!\p{L})hot (?:plug|hub|wheel)|scream|shriek|going off|goes off|four beeps|4 beeps|hiss|headache|dizz|(?<!\p{L})sick|smells? (?:of |like )?(?:gas|propane|burn)/iu;

/**
 * Whether a danger is told as what is over and mended, only supposed, ruled out, or where nobody is. In
 * doubt it is none of these.
 */
export function isOver(text: string): boolean {
  const isGrave = graver.test(text);
  if (!isGrave && stored.test(text) && chirps.test(text)) return true;
  if (!isGrave && ruledOut.test(text) && ofWater.test(text)) return true;
  const isNow = now.test(text);
  if (supposed.test(text) && !isNow) return true;
  return longAgo.test(text) && mended.test(text) && !isNow;
}
