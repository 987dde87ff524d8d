import { readdirSync, readFileSync } from 'node:fs';
import { isNote, readCase, readNote } from '@tarebook/casebook';
import { type Findable, searchOver } from '@tarebook/record';
import { topics } from '@tarebook/rules';
import { expect, test } from 'vitest';

const root = new URL('../../cases/', import.meta.url);

const filed: readonly Findable[] = readdirSync(root, { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.md') && !name.startsWith('refused/'))
  .map((path) => {
    const text = readFileSync(new URL(path, root), 'utf8');
    if (isNote(text)) return { path, topic: 'note', title: readNote(text).front.title, text };
    const { front, facts } = readCase(text);
    return { path, topic: front.topic, title: front.title, text, facts: Object.keys(facts) };
  });

/** Questions as people type them, and where an answer of ours stands: a topic, or a very document. */
const typed: readonly (readonly [question: string, ...where: string[]])[] = [
  ['can my half ton pull a 7,000 lb trailer or am I dreaming', 'tow-fit'],
  ['my truck says it can tow 7200 what size trailer do i look at??', 'tow-fit'],
  ['whats my payload if theres five of us and a dog', 'tow-fit'],
  ['how much tongue weight is too much on a crossover', 'tow-fit'],
  ['what drop do i need on my hitch so it rides level', 'hitch-setup'],
  [
    'back of the truck sags when i hook up, do i need a weight distribution hitch',
    'hitch-setup',
    'tow-fit',
  ],
  ['how high is the ball supposed to be', 'hitch-setup'],
  ['nose sticks up', 'hitch-setup'],
  ['nose sticks up after i hooked it, bad?', 'hitch-setup'],
  ['front of the trailer sticks up', 'hitch-setup'],
  ['stopped at a truck stop scale, now what do these three tickets tell me', 'weigh-in'],
  ['how do I weigh the trailer at a scale', 'weigh-in'],
  ['panel only shows 4 dots for the battery, how full is it really', 'house-battery'],
  ['how long will one lithium run the fan and the lights', 'house-battery', 'off-grid-stay'],
  ['can I just swap my lead acid for lithium', 'retrofit', 'house-battery'],
  ['propane fire table - the hose doesnt fit the plug by the hitch', 'gas-supply'],
  ['how long does a 20 pound tank last with the furnace going', 'gas-supply', 'cold-weather'],
  ['do I need a regulator for my griddle on the quick connect', 'gas-supply', 'retrofit'],
  ['what spares should i carry for a single axle', 'spares-kit'],
  ['will a bottle jack lift my trailer to change a wheel', 'spares-kit'],
  ['tires are 6 years old but look brand new, keep em?', 'tires'],
  ['what does load range E mean and what psi', 'tires'],
  ['can i plug a 30 amp trailer into my dryer outlet', 'shore-power'],
  ['breaker trips every time ac and microwave run', 'shore-power'],
  ['is it ok to use an extension cord at home', 'shore-power'],
  ['how far will an electric truck get me towing before I have to charge', 'electric-tow-range'],
  ['mpg towing over the mountains', 'electric-tow-range'],
  ['will a slide in camper fit my short bed', 'truck-camper'],
  ['can I put a second AC on the roof', 'retrofit', 'options-fit'],
  ['want a bike rack on the back bumper', 'retrofit', 'note'],
  ['can i order the bunkhouse with the outside kitchen', 'options-fit'],
  ['hail dented the whole roof is it totaled', 'body-repair'],
  ['scraped a post, do I go thru insurance or pay the deductible', 'body-repair'],
  ['how do I keep somebody from stealing it out of my driveway', 'theft-deterrence'],
  ['I get a little shock when I touch the door handle', 'service-triage', 'shore-power'],
  ['co alarm keeps chirping', 'service-triage'],
  ['one hub is way hotter than the others', 'service-triage'],
  ['what do I do if the trailer starts to fishtail', 'sway'],
  ['do i need a sway bar for a 24 footer', 'sway'],
  ['can i flat tow my car behind the motorhome', 'towed-car'],
  ['looking at a used camper saturday what should I check', 'used-trailer'],
  ['how many days can we camp without hookups', 'off-grid-stay'],
  ['gray tank is full after two days what now', 'off-grid-stay'],
  ['when do i have to winterize', 'cold-weather', 'note'],
  ['will the pipes freeze at 20 degrees overnight', 'cold-weather'],
  ['when is the rally', 'note/the-fall-weekend-at-the-lake.md'],
  ['are you guys open on sunday', 'note/when-we-are-open.md'],
  ['how long if I order one now', 'note/how-long-a-build-takes.md'],
  ['how soon can service look at my furnace', 'note/when-service-has-time.md'],
  ['does the range get cut in half when i tow', 'electric-tow-range'],
  ['want to mount a tv, who does that', 'retrofit'],
  ['where to hide a tracker tag', 'theft-deterrence'],
  ['wags when semis pass me', 'sway', 'service-triage'],
  ['left wheels weigh more than the right ones', 'weigh-in'],
  ['surge protector shows open ground', 'shore-power'],
  ['seller has no title just a bill of sale', 'used-trailer'],
  ['furnace eats a bottle every two nights, normal?', 'gas-supply', 'off-grid-stay'],
  ['do I get my deposit back', 'note/how-a-deposit-works.md'],
  ['where can we stay the first night after pickup', 'note/sites-along-the-marrow.md'],
];

const search = searchOver(filed, topics);
const found = typed.map(([question, ...where]) => {
  const paths = search(question).map(({ path }) => path);
  const isRight = (path: string | undefined) => where.some((each) => path?.startsWith(each));
  const first = paths.findIndex(isRight);
  return { question, where, paths: paths.slice(0, 3), first };
});

test('there are at least thirty questions, and each topic is asked of', () => {
  expect(typed.length).toBeGreaterThanOrEqual(30);
  const asked = new Set(typed.flatMap(([, ...where]) => where.map((each) => each.split('/')[0])));
  expect([...asked].toSorted()).toEqual([...Object.keys(topics), 'note'].toSorted());
});

test('what answers a question stands among the first three, and mostly first', () => {
  const missed = found.filter(({ first }) => first < 0 || first > 2);
  expect(missed).toEqual([]);
  const firsts = found.filter(({ first }) => first === 0).length;
  expect(firsts / found.length).toBeGreaterThanOrEqual(0.8);
});

test('a word of no trade finds nothing, and a rally is no engine', () => {
  expect(search('zxqv')).toEqual([]);
  expect(search('')).toEqual([]);
  expect(search('the of and')).toEqual([]);
  expect(search('rally')[0]?.path).toBe('note/the-fall-weekend-at-the-lake.md');
});

test('what is mistyped is found, and why it was found is told', () => {
  const [first] = search('winterzing');
  expect(first?.topic).toMatch(/^(cold-weather|note)$/);
  expect(first?.because.length).toBeGreaterThan(0);
});
