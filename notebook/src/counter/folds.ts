import { html, nothing } from 'lit';
import type { RemedyTried } from '../elements/change-list';
import '../elements/limit-rows';
import type { WeightMoved } from '../heaviest/heaviest-slider';
import type { AnsweredView, CaseView, Section } from '../sections/case-view';
import { limitRowsOf } from '../sections/limits';
import { onceAsked } from '../sections/once-shown';
import { partsOf } from '../sections/parts';
import { written } from '../sections/written';
import { levelOf } from '../state/level';
import { poundsWayOf } from '../state/pounds';
import { decidedIn } from '../state/told-beyond';
import { fold } from './case-fold';

const rest = onceAsked(() => import('./fold-bodies'));
const slider = onceAsked(() => import('../heaviest/heaviest-slider'));
const changes = onceAsked(() => import('./change-bodies'));

/** So many things, one or more. */
const counted = (n: number, one: string, many: string): string | undefined =>
  n === 0 ? undefined : `${n} ${n === 1 ? one : many}`;

const isWide = (): boolean => matchMedia('(min-width: 60rem)').matches;

const limits: Section<AnsweredView> = (view) => {
  const asked = view.answer.limits.filter(({ state }) => state !== 'not-asked');
  if (asked.length === 0) return nothing;
  const note = `${asked.length} of ${view.answer.limits.length} asked`;
  return fold(
    { name: 'limits', heading: 'How close to each limit', note, begins: isWide() },
    () => {
      return html`<limit-rows .rows=${limitRowsOf(view)} .system=${view.system}></limit-rows>`;
    },
  );
};

const found: Section<AnsweredView> = (view) => {
  const told = view.answer.findings.filter(({ level }) => level !== 'ok' && level !== 'not-asked');
  if (told.length === 0) return nothing;
  return fold(
    { name: 'found', heading: 'Also', note: counted(told.length, 'thing', 'things') },
    () => {
      rest();
      return html`<finding-list .answer=${view.answer} .system=${view.system}></finding-list>`;
    },
  );
};

/** What decisions, lists and orders come to: where a topic has them, they are what was asked. */
const comesTo: Section<AnsweredView> = (view) => {
  const { answer, topic } = view;
  const chosen = answer.selections.some(({ items }) => items.some(({ chosen: is }) => is !== 'no'));
  const ranked = answer.rankings.some(({ entries }) => entries.some(({ out }) => !out));
  if (decidedIn(answer, topic).length === 0 && !chosen && !ranked) return nothing;
  return fold({ name: 'comes-to', heading: 'What it comes to', begins: true }, () => {
    rest();
    return html`<comes-to .answer=${answer} .topic=${topic} .system=${view.system}></comes-to>`;
  });
};

/** The reason from the working; in its place what the author wrote, as long as it holds. */
const reason: Section<AnsweredView> = (view) => {
  const { asFiled, doc, topic, answer } = view;
  const author = partsOf(doc.blocks).reason;
  const said = asFiled && author.length > 0;
  return fold(
    { name: 'why', heading: 'Why', note: said ? 'in the author’s words' : 'from the working' },
    () => {
      if (said) return written(view, author);
      rest();
      return html`<why-told .topic=${topic} .answer=${answer}></why-told>`;
    },
  );
};

/** What the author wrote of other facts than these. */
const asWritten: Section<AnsweredView> = (view) => {
  const { doc, filed, asFiled } = view;
  const { known, reason: after } = partsOf(doc.blocks);
  const between = known.filter(({ kind }) => kind === 'prose' || kind === 'predict');
  const blocks = asFiled ? between : [...between, ...after];
  if (blocks.length === 0) return nothing;
  const heading = asFiled
    ? 'Said between the facts'
    : filed
      ? 'What was said of the case as filed'
      : 'What is written in the case';
  return fold({ name: 'as-filed', heading }, () => written(view, blocks));
};

const change: Section<AnsweredView> = (view) => {
  const { doc, topic, answer, current, system } = view;
  const level = levelOf(topic.outcomes, answer.outcome);
  if (level === 'ok' || level === 'unknown') return nothing;
  return fold({ name: 'change', heading: 'What would change it' }, () => {
    changes();
    const tried = async ({ detail }: RemedyTried): Promise<void> => {
      const { withRemedy } = await import('../change/apply');
      view.edit((now) => withRemedy(now, detail.remedy), 'remedy');
    };
    return html`<change-list .doc=${current ? doc : undefined} .system=${system} @remedy-tried=${tried}></change-list>`;
  });
};

/** The weight that decides, moved by hand, where the topic lets the rig be scaled. */
const heaviest: Section<AnsweredView> = ({ doc, topic, answer, current, system, edit }) => {
  if (!topic.changes?.some(({ kind }) => kind === 'scale')) return nothing;
  return fold(
    { name: 'heaviest', heading: 'The heaviest that fits', note: 'moved by hand' },
    () => {
      slider();
      return html`<heaviest-slider .doc=${current ? doc : undefined} .answer=${answer} .system=${system}
      @weight-moved=${({ detail }: WeightMoved) => edit(detail.write, 'heaviest')}></heaviest-slider>`;
    },
  );
};

const picture: Section<AnsweredView> = ({ doc, answer, system }) =>
  fold({ name: 'picture', heading: 'The picture' }, () => {
    rest();
    return html`<case-figures .drawn=${{ doc, answer }} .system=${system}></case-figures>`;
  });

const pounds: Section<AnsweredView> = ({ answer, system }) => {
  const way = poundsWayOf(answer);
  if (!way) return nothing;
  return fold({ name: 'pounds', heading: 'Where each pound goes' }, () => {
    rest();
    return html`<pounds-way .way=${way} .system=${system}></pounds-way>`;
  });
};

const chances: Section<AnsweredView> = ({ doc, answer, current, system }) => {
  const asked = answer.limits.filter(({ state }) => state !== 'not-asked');
  const moves = asked.some(({ used, limit }) =>
    [used, limit].some(({ lo, hi }) => lo < hi && Number.isFinite(lo) && Number.isFinite(hi)),
  );
  if (!moves) return nothing;
  return fold({ name: 'chances', heading: 'How likely', note: 'drawn when asked' }, () => {
    changes();
    return html`<chance-list .doc=${current ? doc : undefined} .limits=${asked} .system=${system}></chance-list>`;
  });
};

const working: Section<AnsweredView> = ({ answer, topic, system }) =>
  fold({ name: 'working', heading: 'The working' }, () => {
    rest();
    return html`<working-steps .trace=${answer.trace} .topic=${topic} .system=${system}></working-steps>`;
  });

const care: Section<AnsweredView> = ({ answer }) =>
  fold(
    {
      name: 'care',
      heading: 'Take care',
      note: counted(answer.cautions.length, 'caution', 'cautions'),
    },
    () => html`<ul>${answer.cautions.map((each) => html`<li>${each}</li>`)}</ul>`,
  );

const taken: Section<AnsweredView> = ({ answer }) =>
  answer.assumed.length === 0
    ? nothing
    : fold(
        {
          name: 'taken',
          heading: 'Taken for granted',
          note: counted(answer.assumed.length, 'thing', 'things'),
        },
        () => html`<ul>${answer.assumed.map(({ says }) => html`<li>${says}</li>`)}</ul>`,
      );

const sources: Section<AnsweredView> = ({ answer }) =>
  fold({ name: 'sources', heading: 'Sources', note: `rules ${answer.rules}` }, () => {
    rest();
    return html`<source-list .answer=${answer}></source-list>`;
  });

const all = [
  comesTo,
  limits,
  reason,
  change,
  heaviest,
  found,
  picture,
  pounds,
  chances,
  working,
  taken,
  care,
  sources,
  asWritten,
];

/** All that stands behind the ticket, a line each. */
export const folds = (view: AnsweredView) => html`${all.map((section) => section(view))}`;

export const thisCase: Section = (view: CaseView) =>
  fold({ name: 'this-case', heading: 'This case', note: 'copy, print' }, () => {
    rest();
    return html`<case-acts .view=${view}></case-acts>`;
  });
