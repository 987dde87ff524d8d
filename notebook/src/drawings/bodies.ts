import type { TrailerBody, VehicleBody } from './figure';

/** What people call a vehicle, and which outline stands for it. */
const vehicleWords: readonly (readonly [RegExp, VehicleBody])[] = [
  [/\b(pickup|truck|half-ton|crew cab|in the bed)\b/i, 'pickup'],
  [/\b(minivan|van)\b/i, 'van'],
  [/\b(crossover|suv)\b/i, 'crossover'],
  [/\b(sedan|hatchback|saloon|wagon)\b/i, 'sedan'],
];

const trailerWords: readonly (readonly [RegExp, TrailerBody])[] = [
  [/\bfifth[- ]wheel\b/i, 'fifth-wheel'],
  [/\bteardrop\b/i, 'teardrop'],
];

const long = 130;

/** An outline only: no rule looks at it. The title counts before the text. */
export function vehicleBody(title: string, text: string, wheelbase?: number): VehicleBody {
  for (const words of [title, text]) {
    const found = vehicleWords.find(([pattern]) => pattern.test(words));
    if (found) return found[1];
  }
  return wheelbase !== undefined && wheelbase > long ? 'pickup' : 'crossover';
}

export function trailerBody(title: string, text: string, coupling: string): TrailerBody {
  if (coupling === 'fifth-wheel') return 'fifth-wheel';
  const found = [title, text]
    .map((words) => trailerWords.find(([pattern]) => pattern.test(words))?.[1])
    .find((body) => body !== undefined);
  return found === 'teardrop' ? 'teardrop' : 'box';
}
