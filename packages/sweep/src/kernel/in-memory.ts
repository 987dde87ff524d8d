import type { Ref } from './graph';
import type { Vector } from './lanes';
import type { PairSteps } from './pair-loop';
import type { Special } from './specialize';
import type { Kept } from './staged';
import { watOf } from './wat';

/** Makes the bytes of a WebAssembly module out of its text. */
export type Assemble = (text: string) => Uint8Array;

/** Modules that are kept; programs of two kins are often the same. */
const mostModules = 512;
const page = 1 << 16;

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
  return {
    memory,
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

/** Places of a vector put into the memory as a module reads them. */
function put(
  { buffer }: WebAssembly.Memory,
  at: number,
  { sort, of }: Vector,
  from: number,
  n: number,
): void {
  if (sort === 'number') {
    new Float64Array(buffer, at, n).set(of.subarray(from, from + n));
    return;
  }
  const halves = new Int32Array(buffer, at, n * 2);
  for (let i = 0; i < n; i += 1) {
    const value = of[from + i] ?? 0;
    halves[i * 2] = sort === 'truth' ? -value : value;
    halves[i * 2 + 1] = sort === 'truth' ? -value : 0;
  }
}

/** The steps of a pair in WebAssembly, over `n` columns for one row after another. */
export function inMemory(
  special: Special,
  kept: Kept,
  n: number,
  { memory, instance }: Machine,
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
  return {
    refresh: () => {
      ofCase.forEach((each, i) => {
        put(memory, i * place, each, 0, 1);
      });
      columns.forEach((each, i) => {
        put(memory, layout.at.columns + i * n * place, each, 0, n);
      });
    },
    run: (row) => {
      rows.forEach((each, i) => {
        put(memory, layout.at.rows + i * place, each, row, 1);
      });
      run();
    },
    found: () =>
      special.outputs.map(
        (_, i) => new Float64Array(memory.buffer, layout.at.outputs + i * n * place, n),
      ),
  };
}
