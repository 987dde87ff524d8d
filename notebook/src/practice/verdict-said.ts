/** What says that it will do, or with a negation that it will not. */
const will =
  /\b(?:will|would|should|does|do|ought to|going to) (?:(?:not|never|just|still|very|quite|surely) )*do\b|n[’']t do\b|\b(?:fits?|fine|ok|okay|works?|nicely|good to go|go ahead)\b|\b(?:is|are|be|looks?) (?:(?:not|still|quite|very|all) )*(?:good|safe|enough|strong|right)\b|\b(?:can|may) (?:tow|go|take|pull)\b/gi;
const negation = /\b(?:not|no|never|cannot|neither|nor|hardly|nothing)\b|n[’']t\b/i;
/** A negation of what would speak against it, and so a yes: “not bad”, “no problem”. */
const denied =
  /(?:\b(?:not|never|hardly)|n[’']t)(?: (?:at all|really|so|that|yet|even))?(?: too)? (?:bad|old|over|past|beyond|heavy|much|many|little|long|worn|wrong|worry|exceed|a problem)\b|\bnot to worry\b|\bno (?:problem|worry|worries|trouble|doubt|danger)\b|\bnothing (?:wrong|against)\b/gi;
const refusing =
  /\b(?:exceeds?|unsafe|too (?:old|heavy|much|many|little|long|small|big|large|short|weak))\b/i;
const against = /\b(?:over|replace|done|past)\b/i;
const agreeing = /\b(?:yes|can|may|good|goes|enough|within|left|holds?)\b/i;
const towing = /\b(?:tow|go|take|pull)\b/i;
/** What makes a yes or a no hang on something else. */
const hedge =
  /\b(?:if|unless|until|once|when|whether|before|first|depends|unknown|ask|sure|another|others?|which|(?:one|something|a \w+) that)\b|cannot (?:say|tell)|n[’']t (?:know|say|tell)/i;

/** Commas and joining words part what is said; what is dictated may have neither. */
const partsOf = (sentence: string): readonly string[] =>
  sentence.split(/[,;:!?—–]|\.(?!\d)|\b(?:and|but|so|because)\b/i);

/** How many words a negation reaches on. */
const reach = 5;

function isAffirmed(part: string): boolean {
  return [...part.matchAll(will)].some(({ index, 0: word }) => {
    const before = part.slice(0, index).trim().split(/\s+/).slice(-reach).join(' ');
    return !negation.test(`${before} ${word}`) && !hedge.test(part.slice(0, index));
  });
}

/** How a sentence stands to whether it will do. */
export type Stance = {
  /** It says outright that it will do. */
  readonly affirms: boolean;
  /** It says outright that it will not do. */
  readonly refuses: boolean;
  /** It says one of them, and hangs it on nothing. */
  readonly settles: boolean;
  /** It has at least a word of a yes. */
  readonly agrees: boolean;
  /** It has at least a word of a no. */
  readonly objects: boolean;
};

/**
 * Whether a sentence says yes, no or both, whichever way round a negation stands: “not bad, they will do”
 * is a yes, “they will not do nicely” and “I do not think that they will do” are none.
 */
export function stanceOf(sentence: string): Stance {
  const parts = partsOf(sentence).map((part) => {
    // What is denied there speaks for it, and no more against it.
    const rest = part.replaceAll(denied, ' ');
    const isDenied = rest !== part;
    const isNegated = negation.test(rest);
    const isRefused =
      refusing.test(rest) || (isNegated && (rest.search(will) >= 0 || towing.test(rest)));
    const affirms = isDenied || isAffirmed(rest);
    const isHedged = hedge.test(rest);
    return {
      affirms,
      refuses: isRefused && !isHedged,
      settles: (affirms || isRefused) && !isHedged,
      agrees: affirms || (!isNegated && agreeing.test(rest)),
      objects: isNegated || isRefused || against.test(rest),
    };
  });
  return {
    affirms: parts.some(({ affirms }) => affirms),
    refuses: parts.some(({ refuses }) => refuses),
    settles: parts.some(({ settles }) => settles),
    agrees: parts.some(({ agrees }) => agrees),
    objects: parts.some(({ objects }) => objects),
  };
}
