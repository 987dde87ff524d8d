import { askedOf, isNote, isRig, judgeCase, judged, readCase } from '@tarebook/casebook';
import { matters, remedies, spread, whys } from '@tarebook/rules';
import { BadInput, named, readText, renamedLines, troubleLines } from './files';
import { asBadInput, spreadFrom, underFrom } from './house';
import { leavingAsText, leavingOf, wantedFrom } from './leaving';
import { noteAsJson, noteAsText, noteOf, savedNote } from './note';
import { topicsFrom } from './own-topics';
import { parsed } from './parsed';
import { looksSaved, replayAsJson, replayAsText, replaySaved } from './replay';
import { rigAsJson, rigAsText, rigOf } from './rig';
import { replayedRigAsJson, replayedRigAsText, replayRig, savedRig } from './rig-saved';
import { sayBeside, sayJson, sayText } from './said';
import { sheet } from './sheet';

export async function judge(args: readonly string[]): Promise<number> {
  const { words, given } = parsed(
    args,
    ['json', 'everybody', 'forms'],
    ['spread', 'seed', 'house', 'as-of', 'asking', 'topics', 'topic'],
  );
  const among = await topicsFrom(given);
  const wanted = wantedFrom(given);
  const [file, more] = words;
  if (file === undefined || more !== undefined) {
    throw new BadInput('`tarebook judge` takes one file, or - for standard input.');
  }
  const [under, draws] = [await underFrom(given, among), spreadFrom(given)];
  const text = await readText(file);
  const name = named(file);
  const saved = looksSaved(text) ? savedNote(text) : undefined;
  if (saved !== undefined || isNote(text)) {
    if (draws) throw new BadInput(`${name}: a note has no ranges; leave out --spread.`);
    const told = await noteOf(file, saved ?? text, under);
    await (given.json ? sayJson(noteAsJson(told, wanted)) : sayText(noteAsText(told, wanted)));
    return 0;
  }
  if (looksSaved(text)) {
    if (draws || under.asOf !== undefined || under.house) {
      throw new BadInput(
        `${name}: a saved answer is run again as it was made; leave out --spread, --house and --as-of.`,
      );
    }
    const own = ['house', 'as-of', 'spread', 'seed'].find((flag) => given[flag] !== undefined);
    if (own) throw new BadInput(`\`--${own}\` is for a case; a saved answer has its own.`);
    const rig = savedRig(text);
    if (rig) {
      const again = await replayRig(name, rig, among);
      await (given.json ? sayJson(replayedRigAsJson(again)) : sayText(replayedRigAsText(again)));
      return again.every(({ same }) => same) ? 0 : 1;
    }
    const replayed = await replaySaved(name, text, { among });
    await (given.json ? sayJson(replayAsJson(replayed)) : sayText(replayAsText(replayed)));
    return replayed.same ? 0 : 1;
  }
  const only = typeof given.topic === 'string' ? given.topic : undefined;
  if (isRig(text)) {
    if (draws) throw new BadInput(`${name}: chances are drawn for one topic; leave out --spread.`);
    const told = rigOf(file, text, under, among, only);
    await (given.json
      ? sayJson(rigAsJson(told, wanted, among))
      : sayText(rigAsText(told, wanted, among)));
    return 0;
  }
  if (only !== undefined) {
    throw new BadInput(`${name}: \`--topic\` is for a whole rig; a case names its own.`);
  }
  const doc = readCase(text, under.asOf, among);
  if (doc.troubles.length > 0 || !doc.topic) {
    throw new BadInput(troubleLines(file, doc.troubles));
  }
  for (const says of renamedLines(file, doc.renamed)) await sayBeside(says);
  const answer = await judgeCase(doc, under).catch((problem) => {
    throw asBadInput(name, problem);
  });
  const { topic, asked } = askedOf(doc, under);
  const chances = draws && spread(topic, asked, draws);
  const found = remedies(topic, asked, Object.values(among));
  const matter = matters(topic, asked);
  const reasons = { matters: matter, why: whys(topic, answer) };
  const has = { title: doc.front.title, asking: doc.front.asking, changes: found };
  const leaving = leavingOf(topic, asked, wanted, has);
  if (given.json) await sayJson({ ...judged(answer, doc, chances, found, reasons), ...leaving });
  else if (wanted.everybody || wanted.forms) await sayText(leavingAsText(leaving));
  else await sayText(sheet(doc.front.title, topic, answer, found, matter, chances));
  return 0;
}
