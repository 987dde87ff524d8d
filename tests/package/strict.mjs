// Every program of every README as strict TypeScript, the types of the packages looked through with it.
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { bin, run } from '../run/shared.mjs';

/** By what a program finds the types: as bundlers do, and as Node does. */
const ways = {
  bundler: { module: 'esnext', moduleResolution: 'bundler' },
  node16: { module: 'node16', moduleResolution: 'node16' },
};

const strict = {
  ...{ strict: true, noUncheckedIndexedAccess: true, exactOptionalPropertyTypes: true },
  ...{ noEmit: true, skipLibCheck: false, target: 'es2022', lib: ['es2023'], types: ['node'] },
};

/** What would be let through if nothing were looked at: each line must be told as an error. */
const wrong = `import { answerNow, towFit } from '@tarebook/rules';
answerNow(towFit, { facts: { 'trailer.gvwt': '5,000 lb' } });
export const n: number = answerNow(towFit, { facts: {} }).outcome;
`;

const programsIn = (text) => [...text.matchAll(/```[jt]s\n([\s\S]*?)```/g)].map(([, code]) => code);

/** Passes and failures; the READMEs are those of the packages as installed in a folder, and the repository's. */
export async function strictTypes(root, away, names, note) {
  const readmes = [
    ...names.map((name) => [name, join(away, 'node_modules', name, 'README.md')]),
    ['the repository', join(root, 'README.md')],
  ];
  const files = readmes.flatMap(([name, readme]) =>
    programsIn(readFileSync(readme, 'utf8')).map((code, i) => {
      const file = `strict-${name.replace(/\W+/g, '-')}-${i}.mts`;
      writeFileSync(join(away, file), `${code}\nexport {};\n`);
      return file;
    }),
  );
  note(files.length > names.length, `only ${files.length} programs stand in the READMEs`);
  writeFileSync(join(away, 'strict-wrong.mts'), wrong);
  writeFileSync(
    join(away, 'strict-required.cts'),
    "import { answerNow, towFit } from '@tarebook/rules';\nimport quantity = require('@tarebook/rules/quantity');\nexport const found: string = answerNow(towFit, { facts: {} }).sentence;\nexport const read = quantity.readQuantity('5 ft');\n",
  );
  for (const [way, resolution] of Object.entries(ways)) {
    const check = async (what, these) => {
      const config = join(away, `tsconfig.${way}.${what}.json`);
      writeFileSync(
        config,
        JSON.stringify({ compilerOptions: { ...strict, ...resolution }, files: these }),
      );
      return run(bin('tsc'), ['-p', config], { cwd: away, seconds: 300 });
    };
    const right = way === 'node16' ? [...files, 'strict-required.cts'] : files;
    const { code, out } = await check('right', right);
    note(code === 0, `READMEs as strict TypeScript by ${way}:\n${out}`);
    const told = await check('wrong', ['strict-wrong.mts']);
    const lines = [...told.out.matchAll(/strict-wrong\.mts\((\d+),/g)].map(([, line]) => line);
    note(`${new Set(lines).size}` === '2', `mistakes are not told by ${way}:\n${told.out}`);
  }
}
