/** “Which?”, “which one fits”, “which trailers can I pull”, “which of yours”; never “which tire” or “which side”. */
const which =
  /\bwhich(?: ones?| of (?:yours|these|those|them|your (?:trailers|campers|lot))| (?:travel )?(?:trailers?|campers?))?(?=[^\p{L}]*$|\s*[:,;.?!]| (?:can|could|may|would|should|will|do|does|fits?|works?|are|is|go|goes)\b)/iu;

/** What is asked of other things than how heavy a trailer may be. */
const ofOther =
  /\b(?:motor ?homes?|dolly|charg(?:e|es|ed|ing)|range|batter(?:y|ies)|truck campers?)\b/iu;

/**
 * Whether somebody asks which of a yard’s trailers go with what they drive. It is asked in a few words,
 * of which none is of a topic; beside a tow rating nothing else can be meant.
 */
export const isWhichAsked = (text: string): boolean => which.test(text) && !ofOther.test(text);
