// What every package carries beside its code: the license, the changelog, and the license texts of
// what is shipped inside it. Made by the build from what stands at the top, so that it stands once.
import { copyFileSync, existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/** What the build of a package takes into its own files; see its tsup.config.ts. */
const inside = {
  'packages/rules': ['json-rules-engine', 'clone', 'eventemitter2', 'hash-it'],
};

function licenseOf(root, name) {
  const folder = join(root, 'node_modules', name);
  const file = readdirSync(folder).find((each) => /^licen[cs]e/i.test(each));
  if (!file) throw new Error(`${name} is shipped inside a package and has no license text.`);
  const { version } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  return `${name} ${version}\n\n${readFileSync(join(folder, file), 'utf8').trim()}\n`;
}

/** Puts them into the folders of the packages. */
export function layBeside(root, packages) {
  for (const folder of packages) {
    if (!existsSync(join(root, folder))) continue;
    for (const file of ['LICENSE', 'CHANGELOG.md']) {
      copyFileSync(join(root, file), join(root, folder, file));
    }
    const others = inside[folder];
    if (!others) continue;
    const texts = others.map((name) => licenseOf(root, name));
    writeFileSync(join(root, folder, 'LICENSES-INSIDE.txt'), texts.join(`\n${'-'.repeat(72)}\n\n`));
  }
}
