import type { Entry, Kept, Waiting } from './scene';

const empty: Kept = { scene: null, ticks: {}, waiting: [], draft: null };

/** What this browser keeps of a house, as far as it keeps anything: read anew before each change, since another tab may have changed it. */
export class Keeper {
  private memory: Kept;

  constructor(
    private readonly key: string,
    given: Kept | undefined,
  ) {
    this.memory = given ?? empty;
    const there = this.stored();
    if (there !== null) this.memory = { ...there, waiting: together(there.waiting, given?.waiting ?? []), ticks: { ...given?.ticks, ...there.ticks } };
  }

  get now(): Kept {
    return this.memory;
  }

  /** Takes what another tab wrote. */
  look(): void {
    this.memory = this.stored() ?? this.memory;
  }

  change(changed: Partial<Kept> | ((kept: Kept) => Partial<Kept>)): void {
    this.look();
    this.memory = { ...this.memory, ...(typeof changed === 'function' ? changed(this.memory) : changed) };
    try {
      localStorage.setItem(this.key, JSON.stringify(this.memory));
    } catch {
      // A browser that keeps nothing: it stays in memory, and the page says what that means.
    }
  }

  private stored(): Kept | null {
    try {
      const text = localStorage.getItem(this.key);
      return text === null ? null : { ...empty, ...(JSON.parse(text) as Kept) };
    } catch {
      return null;
    }
  }
}

/** Both, each entry once. */
export function together(some: readonly Waiting[], others: readonly Waiting[]): Waiting[] {
  return [...some, ...others.filter((other) => !some.some((one) => one.entry.id === other.entry.id))];
}

/** What is copied out of one page and pasted into another: a line for each entry. */
export function asText(waiting: readonly Waiting[]): string {
  return waiting.map(({ entry }) => JSON.stringify({ clomwright: 'day', ...entry })).join('\n');
}

/** The entries in such a text; nothing where one line is none. */
export function fromText(text: string): Waiting[] | null {
  const found: Waiting[] = [];
  for (const line of text.split('\n').filter((line) => line.trim() !== '')) {
    try {
      const read = JSON.parse(line) as Record<string, unknown>;
      const word = (name: string): string => (typeof read[name] === 'string' ? read[name] : '');
      if (read.clomwright !== 'day' || word('id') === '' || word('date') === '') return null;
      const entry: Entry = { id: word('id'), corrects: word('corrects') || null, date: word('date'), raised: word('raised'), people: word('people'), batches: word('batches'), notes: word('notes') };
      found.push({ entry });
    } catch {
      return null;
    }
  }
  return found.length === 0 ? null : found;
}
