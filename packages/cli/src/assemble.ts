import type { Assemble } from '@tarebook/sweep/many';

/**
 * What makes WebAssembly out of the text of a program; undefined where the package for it is not
 * installed, and a sweep goes by plain loops.
 */
export async function assembler(): Promise<Assemble | undefined> {
  const loaded = await import('wabt').catch(() => undefined);
  if (!loaded) return undefined;
  const { parseWat } = await loaded.default();
  return (text) => {
    const module = parseWat('pairs.wat', text, { simd: true });
    try {
      return module.toBinary({}).buffer;
    } finally {
      module.destroy();
    }
  };
}
