import { hasFields } from '../state/shelf';
import type { Said } from './said-here';

type Kept = {
  /** Of the class. */
  readonly id: string;
  /** Which learner, from 0. */
  readonly me?: number;
  readonly at: number;
  readonly isOver: boolean;
  /** By learner and case, such as “0 2”. */
  readonly said: Readonly<Record<string, Said>>;
};

/** One class at a time: the next one takes its place. */
const place = 'tarebook.class-here';

const isSaid = (value: unknown): value is Said => {
  if (!hasFields(value, { handed: 'object', typed: 'object', plain: 'string' })) return false;
  const held = (key: string): unknown => Object.getOwnPropertyDescriptor(value, key)?.value;
  const typed = held('typed');
  if (!hasFields(typed, { guess: 'object', sure: 'string', why: 'string' })) return false;
  const guess: unknown = Object.getOwnPropertyDescriptor(typed, 'guess')?.value;
  if (!hasFields(guess, { typed: 'string', asked: 'object' })) return false;
  return (
    hasFields(held('handed'), { code: 'string', said: 'string', why: 'string' }) &&
    Array.isArray(Object.getOwnPropertyDescriptor(guess, 'asked')?.value)
  );
};

function isKept(value: unknown): value is Kept {
  if (!hasFields(value, { id: 'string', at: 'number', said: 'object' })) return false;
  const held = (key: string): unknown => Object.getOwnPropertyDescriptor(value, key)?.value;
  return (
    (held('me') === undefined || typeof held('me') === 'number') &&
    typeof held('isOver') === 'boolean' &&
    Object.values(Object(held('said'))).every(isSaid)
  );
}

function recalled(id: string): Kept {
  const nothing = { id, at: 0, isOver: false, said: {} };
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(place) ?? 'null');
    return isKept(kept) && kept.id === id ? kept : nothing;
  } catch {
    return nothing;
  }
}

/**
 * What a learner's phone knows of a class by itself: who has it in hand, which case they are at and
 * what they said. It is there again after the phone has slept and read the page anew.
 */
export class OwnPhone {
  private now: Kept = { id: '', at: 0, isOver: false, said: {} };

  /** Takes up what is known of this class; true where it was another one until now. */
  open(id: string): boolean {
    if (this.now.id === id) return false;
    this.now = recalled(id);
    return true;
  }

  get me(): number | undefined {
    return this.now.me;
  }

  get at(): number {
    return this.now.at;
  }

  get isOver(): boolean {
    return this.now.isOver;
  }

  private change(to: Partial<Kept>): void {
    this.now = { ...this.now, ...to };
    if (this.now.id === '') return;
    try {
      localStorage.setItem(place, JSON.stringify(this.now));
    } catch {
      // Where the device keeps nothing, it is known until the page is closed.
    }
  }

  isNow(me: number | undefined): void {
    const { me: _, ...rest } = this.now;
    this.now = rest;
    this.change(me === undefined ? {} : { me });
  }

  go(at: number): void {
    this.change({ at });
  }

  end(): void {
    this.change({ isOver: true });
  }

  /** What the learner who has it said of a case. */
  said(at: number): Said | undefined {
    return this.now.said[`${this.me} ${at}`];
  }

  say(at: number, said: Said): void {
    this.change({ said: { ...this.now.said, [`${this.me} ${at}`]: said } });
  }

  takeBack(at: number): void {
    const { [`${this.me} ${at}`]: _, ...rest } = this.now.said;
    this.change({ said: rest });
  }

  /** The cases, of so many, of which nothing was said yet. */
  left(cases: number): readonly number[] {
    return Array.from({ length: cases }, (_, at) => at).filter((at) => !this.said(at));
  }
}

/** The join code with which this tab was let in, so that a page read anew need not ask for it. */
export const codeHere = {
  known(): string {
    try {
      return sessionStorage.getItem('tarebook.join-code') ?? '';
    } catch {
      return '';
    }
  },
  know(code: string): void {
    try {
      sessionStorage.setItem('tarebook.join-code', code);
    } catch {
      // Where the device keeps nothing, it is typed once more.
    }
  },
};
