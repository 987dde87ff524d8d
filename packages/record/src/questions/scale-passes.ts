import type { Topic } from '@tarebook/rules/engine';
import type { Said } from './choices';

/** How people call the passes over a scale: with the bars tight, with them slack, and the vehicle alone. */
const passes: Readonly<Record<string, string>> = {
  tight:
    'tight|bars on|bars set|bars up|bars snug|with (?:the )?bars(?! (?:loose|off|slack))|bars tight|wd on|with wd|with weight distribution|hooked up,? bars tight',
  slack:
    'slack|bars off|bars down|bars loose|no bars|without (?:(?:using )?the )?bars|without using (?:the )?bars|no wd|without wd|unhooked bars|bars slack',
  alone:
    'alone|solo|unhitched|by itself|itself|truck only|trk only|tow vehicle only|vehicle only|dropped the trailer|without the trailer|no trailer|just the truck|unhooked(?! bars)|not hitched|truck by itself',
};
/** How they call what stands on each plate. */
const plates: Readonly<Record<string, string>> = {
  front: 'front(?: axle)?|steer(?:s|ers)?(?: axle)?|fr|f',
  rear: 'rear(?: axle)?|drives?(?: axle)?|back axle|r',
  trailer: 'trailer(?: axles?)?|trlr|trl|tt|trailer tandem|tandems',
};
const anyPlate = Object.values(plates).join('|');
const figure = '\\d{1,2},\\d{3}|\\d{3,5}';

type Place = { readonly from: number; readonly to: number };

/** Hitched, and nobody says how the bars are: they are as they are on the road. */
const hitched = 'hitched(?: up)?|hooked(?: up)?';
/** What is weighed is told and no pass is named before it. */
const unnamed = 'tight';

/** Where each pass is named, in order; a name directly behind its figures does not count. */
function passesIn(text: string): readonly (Place & { readonly pass: string })[] {
  const named = Object.entries(passes);
  const slack = new RegExp(`(?<![\\p{L}\\d])(?:${passes.slack})(?![\\p{L}\\d])`, 'iu');
  const all = slack.test(text) ? named : [...named, [unnamed, hitched] as const];
  return all
    .flatMap(([pass, words]) =>
      [...text.matchAll(new RegExp(`(?<![\\p{L}\\d])(?:${words})(?![\\p{L}\\d])`, 'giu'))].map(
        (found) => ({ pass, from: found.index, to: found.index + found[0].length }),
      ),
    )
    .toSorted((a, b) => a.from - b.from);
}

/** The figures of one pass: by the plate’s name, or two or three in a row. */
function figuresIn(text: string, { from, to }: Place, pass: string): readonly Said[] {
  const stretch = text.slice(from, to);
  const said = (plate: string, value: string, at: number, length: number): Said => ({
    ...{ fact: `${pass}.${plate}`, value: `${value.replaceAll(',', '')} lb` },
    ...{ from: from + at, to: from + at + length },
  });
  const named = Object.entries(plates).flatMap(([plate, words]) => {
    const form = new RegExp(
      `(?<![\\p{L}\\d])(?:${words})[ :=,]{1,3}(${figure})(?![\\d,.]*\\d)`,
      'iu',
    );
    const found = form.exec(stretch);
    return found ? [said(plate, found[1] ?? '', found.index, found[0].length)] : [];
  });
  const firstPlate = stretch.search(
    new RegExp(`(?<![\\p{L}\\d])(?:${anyPlate})(?![\\p{L}\\d])`, 'iu'),
  );
  const firstFigure = stretch.search(new RegExp(`(?<![\\d,.])(?:${figure})(?!\\d)`));
  // “3,260 steer 4,020 drive”: each figure belongs to the word behind it.
  const isFigureFirst = firstFigure >= 0 && firstFigure < firstPlate;
  if (named.length > 1 && !isFigureFirst) return named;
  const before = Object.entries(plates).flatMap(([plate, words]) => {
    const form = new RegExp(
      `(?<![\\d,.])(${figure})(?: ?lbs?)?(?: (?:on|for|at)(?: the)?)? (?:${words})(?![\\p{L}\\d])`,
      'iu',
    );
    const found = form.exec(stretch);
    return found ? [said(plate, found[1] ?? '', found.index, found[0].length)] : [];
  });
  if (before.length > 1) return before;
  const join = '(?: ?/ ?|, | and |, and | & )';
  const row = new RegExp(
    `(?<![\\d,.])(${figure})(?:${join})(${figure})(?:${join}(${figure}))?(?![\\d,.]*\\d| ?(?:ft|in|gal|mph|psi)\\b)`,
  ).exec(stretch);
  if (!row) return [];
  return ['front', 'rear', 'trailer'].flatMap((plate, i) => {
    const value = row[i + 1];
    return value === undefined ? [] : [said(plate, value, row.index, row[0].length)];
  });
}

/**
 * The passes over a scale that a text tells. A name stands before its figures, or behind the first of
 * them (“front 3180 rear 3410 hitched no wd. Truck only front …”); passes that overlap are none.
 */
export function passesOver(topic: Topic, text: string): readonly Said[] {
  if (!Object.hasOwn(topic.facts, 'tight.front')) return [];
  const names = passesIn(text);
  const ahead = names.flatMap(({ pass, to }, i) => {
    const next = names[i + 1]?.from ?? text.length;
    return figuresIn(text, { from: to, to: next }, pass);
  });
  const [first] = names;
  // “Steer 3420, drive 4180. Unhitched: …”: what stands in a sentence before is another pass.
  const isApart = first?.pass === 'alone' && /[.;\n]\D*$/.test(text.slice(0, first.from));
  const start = first?.from ?? text.length;
  const leading = figuresIn(text, { from: 0, to: start }, isApart || !first ? unnamed : first.pass);
  const all = [...leading, ...ahead];
  const facts = all.map(({ fact }) => fact);
  return new Set(facts).size === facts.length
    ? all.filter(({ fact }) => Object.hasOwn(topic.facts, fact))
    : [];
}
