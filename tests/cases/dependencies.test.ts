import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

const root = new URL('../../', import.meta.url);
const read = (path: string): string => readFileSync(new URL(path, root), 'utf8');
const [, told = ''] = read('DEVELOPERS.md').split('## What each package stands on');

/** The rows of the table by package; an empty cell is the package above. */
function reasons(): ReadonlyMap<string, ReadonlySet<string>> {
  const found = new Map<string, Set<string>>();
  let of = '';
  for (const [, name = '', needs = ''] of told.matchAll(/^\| (.*?) ?\| (.*?) \| .+ \|$/gm)) {
    of = name.match(/`(.+)`/)?.[1] ?? of;
    const all = found.get(of) ?? new Set();
    for (const [, one = ''] of needs.matchAll(/`(.+?)`(?! \(inside\))/g)) all.add(one);
    found.set(of, all);
  }
  return found;
}

test('every dependency of a package has its reason in DEVELOPERS.md, and nothing else has', () => {
  const known = reasons();
  for (const folder of readdirSync(new URL('packages/', root))) {
    const {
      name,
      dependencies = {},
      optionalDependencies = {},
    } = JSON.parse(read(`packages/${folder}/package.json`));
    const foreign = Object.keys({ ...dependencies, ...optionalDependencies }).filter(
      (each) => !/^@?tarebook/.test(each),
    );
    expect([...(known.get(name) ?? [])].sort(), name).toEqual(foreign.sort());
  }
});
