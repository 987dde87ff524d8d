/** What comes out for pairs, side by side. */
export type Found = {
  readonly levels: Uint8Array;
  /** The place of the binding limit among the topic's, or -1. */
  readonly bindings: Int8Array;
  readonly leftLo: Float64Array;
  readonly leftHi: Float64Array;
};

export const roomFor = (pairs: number): Found => ({
  levels: new Uint8Array(pairs),
  bindings: new Int8Array(pairs),
  leftLo: new Float64Array(pairs),
  leftHi: new Float64Array(pairs),
});

/** Written where a kernel cannot tell, and the engine itself must be asked. */
export const askEngine = 255;

/** What comes out, place by place: the least and the greatest level, and what else is wanted. */
type Ends = readonly (Float64Array | Uint8Array)[];

/** What binds, both ends of what is left of it, and whether the engine must be asked, where that is wanted. */
export function putRoom(into: Found, start: number, members: Int32Array, ends: Ends): void {
  const [binding, lo, hi, unsure] = ends;
  if (!binding || !lo || !hi || !unsure) return;
  for (let i = 0; i < members.length; i += 1) {
    const to = start + (members[i] ?? 0);
    if (unsure[i] !== 0) into.levels[to] = askEngine;
    into.bindings[to] = binding[i] ?? -1;
    into.leftLo[to] = lo[i] ?? 0;
    into.leftHi[to] = hi[i] ?? 0;
  }
}
