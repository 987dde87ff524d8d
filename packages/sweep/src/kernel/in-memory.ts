import { putRoom } from './found';
import type { Ref } from './graph';
import { type Vector, vector } from './lanes';
import type { PairSteps } from './pair-steps';
import type { Special } from './specialize';
import type { Kept } from './staged';
import { levelEnds, watOf } from './wat';

/** Makes the bytes of a WebAssembly module out of its text. */
export type Assemble = (text: string) => Uint8Array;

/** Modules that are kept; programs of two kins are often the same. */
const mostModules = 512;
const page = 1 << 16;

const viewsOf = ({ buffer }: WebAssembly.Memory) => ({
  numbers: new Float64Array(buffer),
  halves: new Int32Array(buffer),
  bytes: new Uint8Array(buffer),
});

/** One memory for all programs, since only one is gone through at a time. */
export function machine(assemble: Assemble) {
  const memory = new WebAssembly.Memory({ initial: 4 });
  const modules = new Map<string, WebAssembly.Module>();
  const moduleOf = (text: string): WebAssembly.Module => {
    const before = modules.get(text);
    if (before) return before;
    if (modules.size >= mostModules) modules.clear();
    const made = new WebAssembly.Module(new Uint8Array(assemble(text)));
    modules.set(text, made);
    return made;
  };
  let seen = viewsOf(memory);
  return {
    memory,
    /** A memory that has grown is another. */
    views: () => {
      if (seen.numbers.buffer !== memory.buffer) seen = viewsOf(memory);
      return seen;
    },
    instance: (text: string, bytes: number): (() => void) => {
      const lack = bytes - memory.buffer.byteLength;
      if (lack > 0) memory.grow(Math.ceil(lack / page));
      const { run } = new WebAssembly.Instance(moduleOf(text), { in: { memory } }).exports;
      if (typeof run !== 'function') throw new Error('A module has no “run”.');
      return () => run(0);
    },
  };
}

export type Machine = ReturnType<typeof machine>;

/** Bytes of a place. */
const place = 8;

const none = vector('number', 0);

/** Places of a vector put into the memory as a module reads them. */
function put(buffer: ArrayBuffer, at: number, { sort, of }: Vector, n: number): void {
  if (sort === 'number') {
    new Float64Array(buffer, at, n).set(of.subarray(0, n));
    return;
  }
  const halves = new Int32Array(buffer, at, n * 2);
  for (let i = 0; i < n; i += 1) {
    const value = of[i] ?? 0;
    halves[i * 2] = sort === 'truth' ? -value : value;
    halves[i * 2 + 1] = sort === 'truth' ? -value : 0;
  }
}

/** The steps of a pair in WebAssembly, over `n` columns for one row after another. */
export function inMemory(
  special: Special,
  kept: Kept,
  n: number,
  { memory, views, instance }: Machine,
): PairSteps {
  const layout = watOf(special, n);
  const run = instance(layout.text, layout.bytes);
  const all = (refs: readonly Ref[], from: Kept[keyof Kept]): readonly Vector[] =>
    refs.map((ref) => {
      const found = from.get(ref);
      if (!found) throw new Error(`There is nothing for step ${ref}.`);
      return found;
    });
  const ofCase = all(layout.case, kept.case);
  const rows = all(layout.rows, kept.rows);
  const columns = all(layout.columns, kept.columns);
  const endsOf = () =>
    special.outputs
      .slice(levelEnds)
      .map((_, i) => new Float64Array(memory.buffer, layout.at.outputs + i * n * place, n));
  let ends = endsOf();
  return {
    refresh: () => {
      const { buffer } = memory;
      ofCase.forEach((each, i) => {
        put(buffer, i * place, each, 1);
      });
      columns.forEach((each, i) => {
        put(buffer, layout.at.columns + i * n * place, each, n);
      });
    },
    run: (row) => {
      const { numbers, halves } = views();
      for (let i = 0; i < rows.length; i += 1) {
        const { sort, of } = rows[i] ?? none;
        const at = layout.at.rows / place + i;
        const value = of[row] ?? 0;
        if (sort === 'number') numbers[at] = value;
        else {
          halves[at * 2] = sort === 'truth' ? -value : value;
          halves[at * 2 + 1] = sort === 'truth' ? -value : 0;
        }
      }
      run();
    },
    put: (into, start, members) => {
      const { bytes } = views();
      putBytes(into.levels, start, members, bytes, layout.at.levels);
      if (ends.length === 0) return;
      if (ends[0]?.buffer !== memory.buffer) ends = endsOf();
      putRoom(into, start, members, ends);
    },
  };
}

/** Levels as they stand in the memory: side by side where their places are. */
function putBytes(
  into: Uint8Array,
  start: number,
  members: Int32Array,
  bytes: Uint8Array,
  from: number,
): void {
  const [first = 0, last = 0] = [members[0], members[members.length - 1]];
  if (last - first === members.length - 1) {
    into.set(bytes.subarray(from, from + members.length), start + first);
    return;
  }
  for (let i = 0; i < members.length; i += 1) {
    into[start + (members[i] ?? 0)] = bytes[from + i] ?? 0;
  }
}
