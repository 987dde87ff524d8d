// What `npm install` asks of a registry, answered out of what is installed here: the packs of this
// repository beside the very packages that `npm ci` brought, so that nothing is asked of the network.
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import { dirname, join } from 'node:path';
import { run } from '../run/shared.mjs';

/** Every installed package: name → version → its folder. */
function installed(root) {
  const { packages } = JSON.parse(readFileSync(join(root, 'node_modules/.package-lock.json')));
  const found = new Map();
  for (const [place, { link }] of Object.entries(packages)) {
    if (link || !place.includes('node_modules/')) continue;
    const folder = join(root, place);
    try {
      const { name, version } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
      found.set(name, (found.get(name) ?? new Map()).set(version, folder));
    } catch {
      // Meant for another system, and not here.
    }
  }
  return found;
}

/** A folder as npm packs one, all below `package/`. */
async function tarball(folder, scratch) {
  const file = join(scratch, `${createHash('sha256').update(folder).digest('hex')}.tgz`);
  const name = folder.slice(dirname(folder).length + 1);
  const args = ['--exclude', `${name}/node_modules`, '-czf', file, '-C', dirname(folder), name];
  const { code, err } = await run('tar', args);
  if (code !== 0) throw new Error(err);
  return readFileSync(file);
}

/** Resolves with the address of a registry of all that, and how it is closed. */
export async function registryOf(root, scratch) {
  const shelf = installed(root);
  const answer = async ({ url = '/', headers }, response) => {
    const [, name = '', version] =
      /^\/((?:@[^/]+\/)?[^/]+)(?:\/-\/(.+)\.tgz)?$/.exec(decodeURIComponent(url)) ?? [];
    const versions = shelf.get(name);
    if (!versions) return response.writeHead(404).end('{}');
    if (version !== undefined) {
      const folder = versions.get(version);
      return folder ? response.end(await tarball(folder, scratch)) : response.writeHead(404).end();
    }
    const manifests = [...versions].map(([each, folder]) => {
      const { scripts: _, ...manifest } = JSON.parse(
        readFileSync(join(folder, 'package.json'), 'utf8'),
      );
      const dist = { tarball: `http://${headers.host}/${name}/-/${each}.tgz` };
      return [each, { ...manifest, dist }];
    });
    const [latest = ''] = [...versions.keys()].toReversed();
    response.setHeader('content-type', 'application/json');
    response.end(
      JSON.stringify({ name, 'dist-tags': { latest }, versions: Object.fromEntries(manifests) }),
    );
  };
  const server = createServer((request, response) => {
    answer(request, response).catch(({ message }) => response.writeHead(500).end(message));
  });
  await new Promise((resolve) => server.listen(0, 'localhost', resolve));
  return {
    address: `http://localhost:${server.address().port}/`,
    close: () => server.close(),
  };
}
