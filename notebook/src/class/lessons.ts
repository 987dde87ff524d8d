import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { freeName } from '../state/everything';
import { allKept, keep } from '../state/kept';
import {
  allLessons,
  dropLesson,
  keepLesson,
  type Lesson,
  newLesson,
  readLessonFile,
} from '../state/lesson';
import { whyNotKept } from '../state/shelf';
import type { LessonAct } from './lesson-list';

const keyOf = ({ topic, name }: { readonly topic: string; readonly name: string }): string =>
  `${topic}/${name}`;

/** The lessons of this device and the one that is open, kept as they are typed. */
export class Lessons implements ReactiveController {
  /** The last changed first. */
  all: readonly Lesson[] = [];
  open: Lesson = newLesson(Date.now());
  told = '';
  /** What was deleted last, to be put back. */
  gone: Lesson | undefined;

  constructor(
    private readonly host: ReactiveControllerHost,
    private readonly notKept: (why: string) => void,
  ) {
    host.addController(this);
  }

  hostConnected(): void {}

  async look(): Promise<void> {
    try {
      this.all = [...(await allLessons())].sort((a, b) => b.changed - a.changed);
      const [last] = this.all;
      if (last && this.open.items.length === 0) this.open = last;
    } catch (problem) {
      this.notKept(whyNotKept(problem));
    }
    this.host.requestUpdate();
  }

  /** Keeps the open lesson as it is now; one in which nothing was typed is not kept. */
  change(lesson: Lesson): void {
    this.open = lesson;
    this.all = [lesson, ...this.all.filter(({ id }) => id !== lesson.id)];
    this.host.requestUpdate();
    keepLesson(lesson).catch((problem: unknown) => this.notKept(whyNotKept(problem)));
  }

  act(act: LessonAct, lesson: Lesson | undefined): void {
    this.told = '';
    if (act === 'new') this.open = newLesson(Date.now());
    else if (lesson && act === 'open') this.open = lesson;
    else if (lesson && act === 'copy') {
      const { id, changed } = newLesson(Date.now());
      this.change({ ...lesson, id, changed, name: `${lesson.name || 'Lesson'}, copy` });
    } else if (lesson) this.drop(lesson);
    this.host.requestUpdate();
  }

  private drop(lesson: Lesson): void {
    this.all = this.all.filter(({ id }) => id !== lesson.id);
    if (this.open.id === lesson.id) this.open = this.all[0] ?? newLesson(Date.now());
    this.gone = lesson;
    this.told = `“${lesson.name || 'The lesson'}” is deleted.`;
    dropLesson(lesson.id).catch((problem: unknown) => this.notKept(whyNotKept(problem)));
  }

  undo(): void {
    const { gone } = this;
    if (!gone) return;
    this.gone = undefined;
    this.told = 'It is back.';
    this.change(gone);
  }

  /** Takes in a lesson with the cases of its author's own; nothing here is written over. */
  async takeIn(file: File): Promise<void> {
    const read =
      file.size > 20_000_000
        ? `${file.name} is larger than 20 MB, which no lesson is.`
        : readLessonFile(file.name, await file.text());
    this.gone = undefined;
    if (typeof read === 'string') this.told = read;
    else {
      try {
        const here = await allKept();
        const names = new Map<string, string>();
        for (const each of read.cases) {
          const same = here.filter(({ topic }) => topic === each.topic);
          const twin = same.find(({ text }) => text === each.text);
          const name = twin?.name ?? freeName(each.name, new Set(same.map((one) => one.name)));
          names.set(keyOf(each), name);
          if (!twin) await keep({ ...each, name, untried: true });
        }
        const items = read.lesson.items.map((item) => {
          return { ...item, name: names.get(keyOf(item)) ?? item.name };
        });
        const { id, changed } = newLesson(Date.now());
        this.change({ ...read.lesson, id, changed, items });
        this.told = `“${read.lesson.name || file.name}” was taken in, beside what was here.`;
      } catch (problem) {
        this.notKept(whyNotKept(problem));
      }
    }
    this.host.requestUpdate();
  }
}
