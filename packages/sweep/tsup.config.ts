import { cpSync, mkdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'tsup';

const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

/** What of the invented catalogue is shipped. */
const shipped = [
  'vehicles.csv',
  'trailers.csv',
  'loads.csv',
  'offers.csv',
  'options.csv',
  'floor-plans.csv',
  'accessories.csv',
  'accessory-fits.csv',
  'rates.csv',
  'README.md',
];

export default defineConfig({
  entry: { index: 'src/index.ts', many: 'src/many.ts', kernels: 'src/kernels.ts' },
  format: ['esm'],
  platform: 'node',
  dts: { compilerOptions: { ignoreDeprecations: '6.0', customConditions: [] } },
  target: 'es2022',
  clean: true,
  async onSuccess() {
    mkdirSync(here('./dist/invented'), { recursive: true });
    for (const file of shipped) {
      cpSync(here(`../../seeds/${file}`), here(`./dist/invented/${file}`));
    }
  },
});
