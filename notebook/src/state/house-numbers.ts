import { InputError, type Topic, withHouse } from '@tarebook/rules/engine';
import {
  convert,
  readQuantity,
  sameDimension,
  show,
  showNumber,
  unitOf,
  wasMisread,
} from '@tarebook/rules/quantity';

/** One number a dealer has chosen, in the unit of the parameter, and why. */
export type HouseNumber = {
  readonly value: number;
  readonly unit: string;
  readonly reason: string;
};

/** A dealer's own numbers for one topic. */
export type House = {
  readonly topic: string;
  readonly name: string;
  readonly parameters: Readonly<Record<string, HouseNumber>>;
};

const numberShown = (value: number, unit: string): string =>
  unit === '' || unit === '1' ? showNumber(value, 4) : `${showNumber(value, 4)} ${unit}`;

/** The range a dealer may move a number in, as shown; undefined for one that is not a house choice. */
export function rangeShown(topic: Topic, id: string): string | undefined {
  const parameter = topic.parameters[id];
  if (!parameter?.range) return undefined;
  const [least, most] = parameter.range;
  const { unit } = parameter;
  return unit === '' || unit === '1'
    ? `${numberShown(least, unit)} to ${numberShown(most, unit)}`
    : show({ lo: least, hi: most }, unit);
}

/** A number as a dealer wrote it, in the parameter's unit, or what is wrong with it. */
export function readHouseNumber(topic: Topic, id: string, text: string): number | string {
  const parameter = topic.parameters[id];
  const range = rangeShown(topic, id);
  if (!parameter?.range || range === undefined) {
    return `“${id}” is no house choice of ${topic.title}; it stays as it is.`;
  }
  const read = readQuantity(text);
  const [least, most] = parameter.range;
  const wanted = `write one number from ${range}`;
  const found = text.trim().slice(0, 40);
  if (found === '') return `Nothing is written here; ${wanted}.`;
  if (wasMisread(read) || read.from !== read.to || read.within !== undefined) {
    return `“${found}” is no single number; ${wanted}.`;
  }
  const unit = unitOf(parameter.unit || '1');
  const written = read.unit ?? unit;
  if (!sameDimension(written.dimension, unit.dimension)) {
    return `“${found}” is in ${written.symbol}; ${wanted}.`;
  }
  const value = convert(read.from, written, unit);
  if (value < least - 1e-9 || value > most + 1e-9) {
    return `“${found}” is outside what a dealer may choose; ${wanted}.`;
  }
  return value;
}

/** A house with one number changed; undefined takes the house's own number away again. */
export function withNumber(house: House, id: string, number: HouseNumber | undefined): House {
  const { [id]: _, ...others } = house.parameters;
  return { ...house, parameters: number ? { ...others, [id]: number } : others };
}

/** Why a topic refuses a number of a house that is within its range; undefined: it takes it. */
export function whyRefused(topic: Topic, house: House, id: string): string | undefined {
  const { [id]: number } = house.parameters;
  if (!number) return undefined;
  try {
    withHouse(topic, { ...house, parameters: { [id]: number } });
    return undefined;
  } catch (problem) {
    if (problem instanceof InputError) return problem.message;
    throw problem;
  }
}

/** What of a stored house a topic still allows; the rest is named, so that it can be told. */
export function allowedHouse(topic: Topic, house: House): { house: House; refused: string[] } {
  const refused: string[] = [];
  const kept = Object.entries(house.parameters).filter(([id]) => {
    const fits = whyRefused(topic, house, id) === undefined;
    if (!fits) refused.push(topic.parameters[id]?.label ?? id);
    return fits;
  });
  return { house: { ...house, parameters: Object.fromEntries(kept) }, refused };
}

/** A topic with what it allows of a house. */
export function underHouse(topic: Topic, house: House): Topic {
  const { house: allowed } = allowedHouse(topic, house);
  return Object.keys(allowed.parameters).length === 0 ? topic : withHouse(topic, allowed);
}
