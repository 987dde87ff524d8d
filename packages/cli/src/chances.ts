import type { Answer, Chance, Drawn, Spread, Topic } from '@tarebook/rules/engine';
import { show, showNumber } from '@tarebook/rules/quantity';
import { columns, wrapped } from './columns';

/** Decimals by which a share and its standard error are told: as many as the error is worth. */
function inPercent({ chance, error }: Chance): string {
  const places = error < 0.0005 ? 2 : 1;
  return `${showNumber(chance * 100, places)} % ± ${showNumber(error * 100, 2)} %`;
}

function inWords(chance: Chance | null): string {
  if (chance === null) return 'cannot say: it rests on something unknown';
  if (chance.chance === 0) return 'over in none of the draws';
  if (chance.chance === 1) return 'over in every draw';
  return `over in ${inPercent(chance)} of the draws`;
}

function drawnInWords(topic: Topic, { fact, row, column, shape, lo, hi, unit }: Drawn): string {
  const declared = topic.facts[fact];
  const label = declared?.label ?? fact;
  const columnLabel =
    declared?.kind === 'rows' && column !== undefined ? declared.columns[column]?.label : undefined;
  const place = row === undefined ? label : `${label}, row ${row}, ${columnLabel ?? column}`;
  const how = shape === 'even' ? 'evenly' : 'mostly near the middle';
  return `${place}: ${show({ lo, hi }, unit)}, ${how}`;
}

/** Of each choice that the draws do not agree on: which option how often. */
function choiceLines(topic: Topic, spread: Spread): readonly string[] {
  return Object.entries(spread.choices).flatMap(([name, chances]) => {
    if (Object.keys(chances).length < 2) return [];
    const decision = topic.decisions?.[name];
    const label = decision?.label ?? topic.formulas[name]?.label ?? name;
    const told = Object.entries(chances).map(
      ([word, chance]) => `${decision?.results[word]?.label ?? word} ${inPercent(chance)}`,
    );
    return [`  ${wrapped(`${label}: ${told.join(', ')}.`, '    ')}`];
  });
}

/** How sure the answer is, as a section of the sheet: its title and its body. */
export function chancesSection(
  topic: Topic,
  answer: Answer,
  spread: Spread,
): readonly [title: string, body: string] {
  const title = `Chances, from ${spread.draws.toLocaleString('en-US')} draws, seed ${spread.seed}`;
  if (spread.drawn.length === 0) {
    return [title, '  No fact of this case is a range, so that every draw is the same.'];
  }
  const limits = answer.limits
    .filter(({ state }) => state !== 'not-asked')
    .toSorted((a, b) => b.roomUsed.hi - a.roomUsed.hi)
    .map(({ id, label }) => [label, inWords(spread.limits[id] ?? null)]);
  const outcomes = Object.values(topic.outcomes).flatMap(({ id, words }) => {
    const chance = spread.outcomes[id];
    return chance && chance.chance > 0 ? [[`${words}:`, inPercent(chance)]] : [];
  });
  const drawn = spread.drawn.map((each) => drawnInWords(topic, each)).join('; ');
  return [
    title,
    [
      columns(limits),
      '',
      columns(outcomes),
      ...choiceLines(topic, spread),
      `  ${wrapped('What stands after ± is one standard error. A chance is no permission: only what is within its rating for certain fits.', '  ')}`,
      `  ${wrapped(`Drawn: ${drawn}.`, '    ')}`,
    ].join('\n'),
  ];
}
