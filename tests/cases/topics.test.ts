import { type CaseDocument, judgeCaseNow } from '@tarebook/casebook';
import { topics } from '@tarebook/rules';
import {
  type Answer,
  answerNow,
  checkTopic,
  defineTopic,
  sayProblem,
  type Topic,
} from '@tarebook/rules/engine';
import { describe, expect, test } from 'vitest';
import { readFiled } from './filed';
import { casesFolder, markdownBelow, refusedFolder } from './files';

const worked = markdownBelow(casesFolder, refusedFolder).map(({ name, text }) => ({
  name,
  doc: readFiled(text),
}));

/** Every state that a limit or finding of a topic can reach, as an Expect table writes it. */
function reachable(topic: Topic): readonly string[] {
  const limits = Object.entries(topic.limits).flatMap(([id, { margin }]) => [
    `limit.${id} stop`,
    ...(margin ? [`limit.${id} care`] : []),
  ]);
  const findings = Object.entries(topic.findings).flatMap(([id, { stop, care }]) => [
    ...(stop ? [`finding.${id} stop`] : []),
    ...(care ? [`finding.${id} care`] : []),
  ]);
  const decisions = Object.entries(topic.decisions ?? {}).flatMap(([name, { results }]) =>
    Object.keys(results).map((word) => `${name} ${word}`),
  );
  return [...limits, ...findings, ...decisions];
}

/** What the cases of a topic come to, whether or not their authors wrote it down. */
function reached(answers: readonly Answer[]): ReadonlySet<string> {
  return new Set(
    answers.flatMap((answer) => [
      ...answer.limits.map(({ id, state }) => `limit.${id} ${state}`),
      ...answer.findings.map(({ id, level }) => `finding.${id} ${level}`),
      ...Object.entries(answer.choices).flatMap(([name, { among }]) =>
        among.length === 1 ? [`${name} ${among[0]}`] : [],
      ),
    ]),
  );
}

describe.each(Object.values(topics))('$id', (topic) => {
  const own = worked.filter(({ doc }) => doc.front.topic === topic.id);
  const docs: readonly CaseDocument[] = own.map(({ doc }) => doc);
  const answers = docs
    .filter(({ troubles }) => troubles.length === 0)
    .map((doc) => judgeCaseNow(doc));

  test('has nothing told against it', () => {
    expect(checkTopic(topic).map(sayProblem)).toEqual([]);
  });

  test('stands in the folder of its name', () => {
    for (const { name } of own) expect(name).toMatch(new RegExp(`(^|/)${topic.id}/`));
  });

  test('says the same after a round trip through JSON', () => {
    const copy: Topic = defineTopic<Topic>(JSON.parse(JSON.stringify(topic)));
    for (const { facts, front } of docs) {
      const asked = { facts, ...(front.asOf && { asOf: front.asOf }) };
      expect(answerNow(copy, asked)).toEqual(answerNow(topic, asked));
    }
  });

  test('is taught by five cases or more, of every level', () => {
    expect(docs.length).toBeGreaterThanOrEqual(5);
    const levels = new Set(docs.map(({ front }) => front.level));
    expect([...levels].toSorted()).toEqual(['hard', 'starter', 'working']);
  });

  test('where a finding leads to another topic, there is one', () => {
    const leads = Object.values<{ readonly see?: { readonly topic: string } }>(topic.findings);
    for (const { see } of leads) if (see) expect(Object.keys(topics)).toContain(see.topic);
  });

  test('every rule is exercised by some case', () => {
    const found = reached(answers);
    expect(reachable(topic).filter((state) => !found.has(state))).toEqual([]);
  });

  test('every verdict is the end of some case, cannot say among them', () => {
    const outcomes = new Set(answers.map(({ outcome }) => outcome));
    const findings = Object.values(topic.findings);
    const hasProvisos = findings.some((each) => each.if || each.stopOpen === 'if');
    const all = Object.entries(topic.outcomes).flatMap(([level, { id }]) =>
      level === 'if' && !hasProvisos ? [] : [id],
    );
    expect(all.filter((id) => !outcomes.has(id))).toEqual([]);
  });

  test('every answer carries the cautions, each with its source', () => {
    expect(topic.cautions.length).toBeGreaterThan(0);
    for (const answer of answers) expect(answer.cautions).toHaveLength(topic.cautions.length);
  });

  test('asked nothing at all, it never says that all is well', () => {
    const { outcome } = answerNow(topic, { facts: {} });
    expect([topic.outcomes.ok.id, topic.outcomes.care.id]).not.toContain(outcome);
  });
});
