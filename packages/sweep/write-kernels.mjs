// The program of tow fit as a plain module beside the others, made when the package is built.
import { writeFileSync } from 'node:fs';
import { packedKernel } from './dist/kernels.js';

const at = (name) => new URL(`./dist/${name}`, import.meta.url);
const text = JSON.stringify(JSON.stringify(packedKernel()));
writeFileSync(at('tow-fit.js'), `export default JSON.parse(${text});\n`);
writeFileSync(
  at('tow-fit.d.ts'),
  `import type { Packed } from './kernels.js';\ndeclare const kernel: Packed;\nexport default kernel;\n`,
);
