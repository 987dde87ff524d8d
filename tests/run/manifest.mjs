// Run by npm around packing, in the folder of a package: what is published of its manifest has no
// condition, script or tool that only stands in this repository. The manifest is put back afterwards.
import { copyFileSync, existsSync, readFileSync, renameSync, writeFileSync } from 'node:fs';

const manifest = 'package.json';
const kept = '.package.json.kept';

const withoutSource = (entry) =>
  typeof entry !== 'object' || entry === null
    ? entry
    : Object.fromEntries(
        Object.entries(entry)
          .filter(([condition]) => condition !== 'source')
          .map(([condition, inner]) => [condition, withoutSource(inner)]),
      );

if (process.argv[2] === 'restore') {
  if (existsSync(kept)) renameSync(kept, manifest);
} else {
  const {
    scripts: _,
    devDependencies: __,
    exports,
    ...rest
  } = JSON.parse(readFileSync(manifest, 'utf8'));
  if (!existsSync(kept)) copyFileSync(manifest, kept);
  writeFileSync(
    manifest,
    `${JSON.stringify({ ...rest, exports: withoutSource(exports) }, null, 2)}\n`,
  );
}
