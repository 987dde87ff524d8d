// A dealer tool that already runs json-rules-engine takes our conditions as they are published.
import { readFileSync } from 'node:fs';
import { namedValues, towFit } from '@tarebook/rules';
import { Engine } from 'json-rules-engine';

const file = new URL(import.meta.resolve('@tarebook/rules/tow-fit.json'));
const { conditions, missing, limits } = JSON.parse(readFileSync(file, 'utf8'));
const engine = new Engine([...conditions, ...missing]);
const firm = new Set(conditions.map(({ name }) => name).filter((name) => name.endsWith('.firm')));

/** How each limit that is asked stands. */
async function limitsOf(facts) {
  const given = namedValues(towFit, { facts, asOf: '2026-11-01' });
  const { events } = await engine.run(given.facts);
  const found = new Set(events.map(({ type, params }) => `${params.of}.${type}`));
  const standing = (of) => {
    const has = (type) => found.has(`${of}.${type}`);
    if (has('missing')) return 'missing';
    if (has('stop')) return firm.has(`${of}.firm`) && !has('firm') ? 'unknown' : 'stop';
    return ['unknown', 'if', 'care'].find(has) ?? 'ok';
  };
  return Object.keys(limits)
    .filter((id) => !given.notAsked.includes(`limit.${id}`))
    .map((id) => `${id}: ${standing(`limit.${id}`)}`);
}

const overloaded = {
  'vehicle.maxTrailerWeight': '5,000 lb',
  'trailer.dryWeight': '7,900 lb',
  'trailer.gvwr': '9,000 lb',
  'trailer.brakes': 'electric',
};
console.log('A hopeless overload');
console.log((await limitsOf(overloaded)).join('\n'));
console.log('Nobody knows what it may pull');
console.log((await limitsOf({ ...overloaded, 'vehicle.maxTrailerWeight': 'unknown' })).join('\n'));
