/**
 * The catalogue of options-fit, made out of seeds/*.csv whenever something is built or tested:
 *
 *     trailers.csv, floor-plans.csv, options.csv, offers.csv, option-rules.csv ─► virtual:yard
 */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { parse } from 'csv-parse/sync';

const seeds = new URL('../../seeds/', import.meta.url);

/** The rows of a seed file; its comment line is left out. */
export function seedRows(name) {
  const text = readFileSync(new URL(`${name}.csv`, seeds), 'utf8');
  return parse(text, { columns: true, comment: '#', skip_empty_lines: true });
}

/** The model year whose figures trailers.csv has. */
const listed = '2026';
const years = ['2023', '2024', '2025', '2026', '2027'];
const places = ['nose', 'front', 'axle', 'rear', 'tail'];

const camel = (id) => id.replace(/-([a-z0-9])/g, (_, letter) => letter.toUpperCase());
const byId = (rows, make) => Object.fromEntries(rows.map((row) => [row.id, make(row)]));
const words = (cell) => cell.split(' ').filter(Boolean);

function offersByLine(rows) {
  const lines = {};
  for (const { line, option, as, from, to } of rows) {
    lines[line] = [...(lines[line] ?? []), { option, as, from, ...(to && { to }) }];
  }
  return lines;
}

const standardIn = (offers, year) =>
  offers.filter(({ as, from, to }) => as === 'standard' && from <= year && (!to || year <= to));

/** What is standard is in the dry weight and on the dry tongue of that year. */
function modelOf(plan, trailer, offers, weights, placeOf) {
  const at = Object.fromEntries(places.map((place) => [place, Number(plan[place])]));
  const length = Number(trailer.ballToAxle);
  const standard = (year) => {
    const options = standardIn(offers, year).map(({ option }) => option);
    const weight = options.reduce((total, option) => total + weights[option], 0);
    const moment = options.reduce((total, o) => total + weights[o] * at[placeOf[o]], 0);
    return { weight, tongue: moment / length };
  };
  const now = standard(listed);
  const inYear = {};
  for (const year of years.filter((each) => each >= plan.first && each <= plan.last)) {
    const then = standard(year);
    if (then.weight === now.weight && then.tongue === now.tongue) continue;
    inYear[year] = {
      dryWeight: Math.round(Number(trailer.dryWeight) + then.weight - now.weight),
      dryTongueWeight: Math.round(Number(trailer.dryTongueWeight) + then.tongue - now.tongue),
    };
  }
  return {
    label: plan.name,
    sold: [plan.first, plan.last],
    offers: plan.line,
    figures: {
      dryWeight: Number(trailer.dryWeight),
      dryTongueWeight: Number(trailer.dryTongueWeight),
      gvwr: Number(trailer.gvwr),
      ballToAxle: length,
      propane: Number(trailer.propane),
      fifthWheel: trailer.coupling === 'fifth-wheel' ? 1 : 0,
    },
    ...(Object.keys(inYear).length > 0 && { inYear }),
    places: at,
  };
}

function yardFromSeeds() {
  const options = seedRows('options');
  const trailers = seedRows('trailers');
  const offers = offersByLine(seedRows('offers'));
  const weights = byId(options, ({ weight }) => Number(weight));
  const placeOf = byId(options, ({ place }) => place);
  const trailerOf = (name) => {
    const found = trailers.find((each) => each.name === name);
    if (!found) throw new Error(`trailers.csv has no “${name}”.`);
    return found;
  };
  return {
    label: 'the invented catalogue of Sallowbridge Trailers',
    source: {
      class: 'invented',
      cite: 'The catalogue of Sallowbridge Trailers, Marrow Vale',
      note: 'Made up for demonstration: no such trailer and no such option exists.',
    },
    model: 'plan.name',
    year: 'plan.year',
    wishes: byId(options, ({ id }) => `wish.${camel(id)}`),
    years,
    figures: {
      weight: 'lb',
      dryWeight: 'lb',
      dryTongueWeight: 'lb',
      gvwr: 'lb',
      ballToAxle: 'ft',
      propane: 'lb',
      fifthWheel: '',
    },
    placeUnit: 'ft',
    models: byId(seedRows('floor-plans'), (plan) =>
      modelOf(plan, trailerOf(plan.name), offers[plan.line] ?? [], weights, placeOf),
    ),
    options: byId(options, ({ name, weight, place }) => ({
      label: name,
      figures: { weight: Number(weight) },
      place,
    })),
    offers,
    rules: seedRows('option-rules').map(({ kind, option, others }) =>
      kind === 'one-of' ? { kind, others: words(others) } : { kind, option, others: words(others) },
    ),
    rows: { list: 'trailer.options', figures: { weight: 'weight' }, place: 'ahead' },
    tells,
  };
}

/** Titles and reasons of the lists that an answer has from the catalogue. */
const tells = {
  build: {
    title: 'Options of the build',
    amount: 'weight',
    wanted: 'wanted',
    needed: 'needed by what is wanted',
    oneOf: 'one of its kind must be chosen',
  },
  models: {
    title: 'Floor plans that can be ordered so',
    because: 'all that is wanted, together',
  },
  years: {
    title: 'Model years in which this floor plan can be ordered so',
    because: 'builds: {ways}',
  },
  against: {
    title: 'What stands against it',
    notOffered: 'wanted, and not offered on this floor plan in this model year',
    wanted: 'wanted',
    unwanted: 'wanted left out',
    rule: 'the order sheet',
  },
  standard: {
    title: 'Became standard on this floor plan, up to the model year',
    amount: 'weight',
    because: 'in the dry weight since',
  },
  choices: { title: 'Floor plans by how many options each leaves open' },
};

const from = ['trailers', 'floor-plans', 'options', 'offers', 'option-rules'];
const id = 'virtual:yard';

const yardModule = () => `export const yard = ${JSON.stringify(yardFromSeeds())};\n`;

/** Gives `virtual:yard` to Vite, and to what stands on it. */
export function yardForVite() {
  return {
    name: 'yard',
    resolveId: (source) => (source === id ? `\0${id}` : undefined),
    load(module) {
      if (module !== `\0${id}`) return undefined;
      for (const name of from) this.addWatchFile(fileURLToPath(new URL(`${name}.csv`, seeds)));
      return yardModule();
    },
  };
}

/** Gives `virtual:yard` to esbuild, and to what stands on it. */
export const yardForEsbuild = {
  name: 'yard',
  setup(build) {
    build.onResolve({ filter: /^virtual:yard$/ }, () => ({ path: id, namespace: 'yard' }));
    build.onLoad({ filter: /^/, namespace: 'yard' }, () => ({ contents: yardModule() }));
  },
};
