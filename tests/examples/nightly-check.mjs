// Run at night: every trailer of an invented list against the vehicles that customers come with most.
import { answerNow, InputError, towFit } from '@tarebook/rules';

const vehicles = {
  crossover: { 'vehicle.maxTrailerWeight': '3,500 lb', 'vehicle.maxTongueCarried': '350 lb' },
  pickup: { 'vehicle.maxTrailerWeight': '9,000 lb', 'vehicle.maxTongueCarried': '900 lb' },
};
const trailers = [
  { name: 'Wren 15', dry: '2,300 lb', gvwr: '3,000 lb', tongue: '260 lb' },
  { name: 'Heron 24', dry: '5,600 lb', gvwr: '7,400 lb', tongue: '610 lb' },
  { name: 'Rook 19', dry: '3900', gvwr: '5,000 lb', tongue: '430 lb' },
];

for (const { name, dry, gvwr, tongue } of trailers) {
  for (const [vehicle, rated] of Object.entries(vehicles)) {
    const told = {
      'trailer.dryWeight': dry,
      'trailer.gvwr': gvwr,
      'trailer.dryTongueWeight': tongue,
    };
    try {
      const facts = { ...rated, ...told };
      const { limits } = answerNow(towFit, { facts, asOf: '2026-11-01' });
      const over = limits.filter(({ state }) => state === 'stop').map(({ id }) => id);
      console.log(`${name}, ${vehicle}: ${over.join(', ') || 'nothing is over for certain'}`);
    } catch (problem) {
      if (!(problem instanceof InputError)) throw problem;
      // A list with a slip in it is told by its data, and the night goes on.
      const [{ code, fact, found, unit }] = problem.problems;
      console.log(`${name}, ${vehicle}: ${code}, ${fact}, “${found}”, wanted in ${unit}`);
    }
  }
}
