import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { judged } from '@tarebook/casebook';
import { answerTraced, publish } from '@tarebook/rules';
import {
  defineTopic,
  type FactsGiven,
  type Topic,
  topicFromPublished,
} from '@tarebook/rules/engine';
import { towFit } from '@tarebook/rules/tow-fit';

/** What `tarebook judge --json` writes of these facts under a rule set, as of 1 November 2026. */
export function saved(topic: Topic, facts: FactsGiven): string {
  const readFrom = { 'vehicle.placardPayload': 'label in the driver’s door' };
  const asked = { facts, readFrom };
  return JSON.stringify(judged(answerTraced(topic, { ...asked, asOf: '2026-11-01' }), asked));
}

/** An older version of tow fit that never was: 25 % on the dry tongue instead of a tenth. */
export function madeUp(version: string): Topic {
  const topic = topicFromPublished(JSON.parse(JSON.stringify(publish(towFit))));
  const addOn = topic.parameters['tongue.addOn'];
  if (!addOn) throw new Error('Tow fit has no tongue.addOn any more.');
  const older = { ...addOn, values: [{ from: '2019-01-01', value: 25 }] };
  const parameters = { ...topic.parameters, 'tongue.addOn': older };
  return defineTopic<Topic>({ ...topic, version, parameters });
}

/** Keeps a version in a folder, as a release would. */
export function keep(topic: Topic, folder: string): void {
  mkdirSync(join(folder, topic.id), { recursive: true });
  writeFileSync(join(folder, topic.id, `${topic.version}.json`), JSON.stringify(publish(topic)));
}
