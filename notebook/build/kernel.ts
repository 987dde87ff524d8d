import type { Plugin } from 'vite';
import { shippedFor } from './shipped-for.ts';

/**
 * The program by which all pairs are judged, made when the page is built, as `virtual:kernel`: plain
 * data, so that nothing is compiled in the page and no policy of its has to allow it.
 *
 * @param root the page's own folder
 */
export function kernel(root: string): Plugin {
  const name = 'virtual:kernel';
  return {
    name: 'kernel',
    resolveId: (source) => (source === name ? `\0${name}` : undefined),
    async load(module) {
      if (module !== `\0${name}`) return undefined;
      const { packedKernel } = await shippedFor(root);
      const text = JSON.stringify(JSON.stringify(packedKernel()));
      return `export default JSON.parse(${text});`;
    },
  };
}
