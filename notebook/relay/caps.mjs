// What the relay takes at most: whoever sends more is cut off, and nobody else notices.

/** Characters without those that are mistaken for one another when they are read out. */
const symbols = '23456789ABCDEFGHJKMNPQRSTUVWXYZ';
const codeLength = 6;

export const caps = {
  /** Bytes of one message; a guess with its reason has some 400. */
  message: 2048,
  /** Bytes of what the trainer's window says: the lesson with cases of its own among it. */
  lesson: 500_000,
  /** Learners' windows at once. */
  windows: 40,
  /** Messages of one window: so many at once, then one a second. */
  burst: 8,
  /** Wrong join codes of all windows together, in a minute. */
  wrongCodes: 20,
  /** Milliseconds to tell the join code in. */
  toJoin: 60_000,
  /** Learners of a class. */
  names: 500,
  /** Characters of a reason. */
  why: 300,
};

/** @param {(most: number) => number} draw a whole number below `most` */
export const joinCode = (draw) =>
  Array.from({ length: codeLength }, () => symbols[draw(symbols.length)]).join('');

/** So many at once, and one more for each `every` milliseconds that pass. */
export function allowance(most, every, now = Date.now) {
  let left = most;
  let last = now();
  return () => {
    const time = now();
    left = Math.min(most, left + (time - last) / every);
    last = time;
    if (left < 1) return false;
    left -= 1;
    return true;
  };
}

/** A guess as a learner's window sends it, or undefined: nothing else is taken. */
export function guessIn(data) {
  if (typeof data !== 'object' || data === null) return undefined;
  const { guess, why = '', again } = data;
  if (typeof guess !== 'string' || !/^[A-Z0-9]{4,40}$/.test(guess)) return undefined;
  if (typeof why !== 'string' || why.length > caps.why) return undefined;
  return { guess, why, ...(again === true && { again }) };
}

/** Which learner a window says it is, from 0, or null: none any more. Undefined for what is no such message. */
export function nameIn(data) {
  if (typeof data !== 'object' || data === null || !('me' in data)) return undefined;
  const { me } = data;
  return me === null || (Number.isInteger(me) && me >= 0 && me < caps.names) ? me : undefined;
}
