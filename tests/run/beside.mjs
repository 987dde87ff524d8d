// What every package carries beside its code: the license, the changelog, and the license texts of
// what is shipped inside it. Made by the build from what stands at the top, so that it stands once;
// of the changelog each has its own part.
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

/** Each rule set with the version that its own data have. */
function versionsIn(root) {
  const topics = join(root, 'packages', 'rules', 'src', 'topics');
  const rows = readdirSync(topics, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => {
      const text = readFileSync(join(topics, name, 'index.ts'), 'utf8');
      const [, version] = /^ {2}version: '(\d+\.\d+\.\d+)',$/m.exec(text) ?? [];
      if (!version) throw new Error(`The rule set ${name} tells no version.`);
      return `- ${name} ${version}`;
    });
  return `The rule sets in it, each with a version of its own:\n\n${rows.join('\n')}\n`;
}

/** Of the changelog what is of one package: under each version the part below its name. */
export function changesOf(root, folder) {
  const { name, version } = JSON.parse(readFileSync(join(root, folder, 'package.json'), 'utf8'));
  const whole = readFileSync(join(root, 'CHANGELOG.md'), 'utf8');
  const parts = whole
    .split(/^## /m)
    .slice(1)
    .flatMap((released) => {
      const [heading = '', ...others] = released.split(/^### /m);
      const own = others.find((part) => part.startsWith(`${name}\n`));
      return own ? [`## ${heading.trim()}\n${own.slice(name.length + 1).trimEnd()}\n`] : [];
    });
  if (!parts[0]?.startsWith(`## ${version} (`)) {
    throw new Error(`CHANGELOG.md does not begin with ${version} of ${name} and its day.`);
  }
  if (folder === 'packages/rules') parts[0] += `\n${versionsIn(root)}`;
  return `# Changelog of ${name}\n\n${parts.join('\n')}`;
}

/** Puts them into the folders of the packages. */
export function layBeside(root, packages) {
  for (const folder of packages) {
    if (!existsSync(join(root, folder))) continue;
    copyFileSync(join(root, 'LICENSE'), join(root, folder, 'LICENSE'));
    writeFileSync(join(root, folder, 'CHANGELOG.md'), changesOf(root, folder));
    const others = inside[folder];
    if (!others) continue;
    const texts = others.map((name) => licenseOf(root, name));
    writeFileSync(join(root, folder, 'LICENSES-INSIDE.txt'), texts.join(`\n${'-'.repeat(72)}\n\n`));
  }
}
