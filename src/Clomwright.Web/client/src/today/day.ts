import { render } from 'lit';
import { newId } from '../record-scene';
import { say } from '../words';
import { asText, fromText, Keeper, together } from './kept';
import { page, type Look, type Papers } from './page';
import { give, oneFile } from './saved';
import type { Entry, Given, TodayScene, Waiting } from './scene';

const lookAgain = 60_000;
const sendAgain = 15_000;

/** One day at one house: what is shown, what is typed, and what waits to be sent. */
export class Day {
  readonly keeper: Keeper;
  readonly saved: boolean;
  /** Which lift is looked at; null for the one that cob goes on. */
  lift: number | null = null;
  look: Look = 'auto';
  lost = false;
  shutOut = false;
  told = '';
  papers: Papers = null;
  copied: string | null = null;
  pasteWrong = false;
  /** What the machine said of what stands in the blanks, and of which of them. */
  wrong: { sentence: string; blank: string | null } | null = null;
  /** The blanks are open although the day is written. */
  correcting = false;
  private sending = false;
  /** The entry that is sent as it is written: refused, it goes back into its blanks. */
  private fresh = '';
  private looking = false;

  constructor(
    readonly given: Given,
    private readonly root: HTMLElement,
  ) {
    this.saved = given.scene !== null;
    this.keeper = new Keeper(`clom-today/${given.key}${this.saved ? `/${given.scene!.today}` : ''}`, given.kept);
    this.look = (this.remembered() as Look | null) ?? 'auto';
  }

  get scene(): TodayScene | null {
    return this.given.scene ?? this.keeper.now.scene;
  }

  get writes(): boolean {
    return this.given.role !== 'reader';
  }

  get draft(): Entry {
    return this.keeper.now.draft ?? { id: '', corrects: null, date: here(), raised: '', people: '', batches: '', notes: '' };
  }

  start(): void {
    this.dress();
    this.show();
    addEventListener('storage', () => {
      this.keeper.look();
      this.show();
    });
    if (this.saved) return;
    addEventListener('online', () => void this.again());
    document.addEventListener('visibilitychange', () => document.visibilityState === 'visible' && void this.again());
    setInterval(() => void this.again(), lookAgain);
    setInterval(() => this.keeper.now.waiting.length > 0 && void this.send(), sendAgain);
    void this.again();
  }

  show = (): void => {
    document.title = say('web.today.title', { name: this.given.name });
    render(page(this), this.root);
    document.body.toggleAttribute('data-ready', this.scene !== null);
  };

  /** Sends what waits, then looks at the day anew. */
  again = async (): Promise<void> => {
    await this.send();
    if (this.looking || this.shutOut) return;
    this.looking = true;
    try {
      const answer = await fetch(`/api/houses/${encodeURIComponent(this.given.key)}/today`, { cache: 'no-store' });
      this.lost = false;
      if (answer.ok) {
        const scene = (await answer.json()) as TodayScene;
        this.keeper.change({ scene });
      } else this.refusedBy(answer.status);
    } catch {
      this.lost = true;
    } finally {
      this.looking = false;
      this.show();
    }
  };

  take(name: keyof Entry, value: string): void {
    this.keeper.change({ draft: { ...this.draft, [name]: value } });
  }

  write = (event: Event): void => {
    event.preventDefault();
    const entry: Entry = { ...this.draft, id: newId(), corrects: this.correcting ? (this.scene?.written?.id ?? null) : null };
    this.keeper.change((kept) => ({ draft: null, waiting: [...kept.waiting, { entry }] }));
    this.told = '';
    this.wrong = null;
    this.correcting = false;
    this.show();
    if (this.saved) return;
    this.fresh = entry.id;
    void this.again().finally(() => (this.fresh = ''));
  };

  correct = (from?: Waiting): void => {
    const { written, today } = this.scene!;
    // What was written of another day corrects nothing of this one.
    this.correcting = from === undefined ? written !== null : from.entry.corrects !== null || (written !== null && from.entry.date === today);
    this.wrong = from?.why === undefined ? null : { sentence: from.why, blank: from.blank ?? null };
    const { raised, people, batches, notes } = from?.entry ?? written!;
    this.keeper.change((kept) => ({
      draft: { id: '', corrects: null, date: from?.entry.date ?? today, raised, people, batches, notes },
      waiting: kept.waiting.filter((one) => one.entry.id !== from?.entry.id),
    }));
    this.show();
    this.root.querySelector<HTMLInputElement>(`#write [name=${this.wrong?.blank ?? 'raised'}]`)?.focus();
  };

  forget(waiting: Waiting): void {
    this.keeper.change((kept) => ({ waiting: kept.waiting.filter((one) => one.entry.id !== waiting.entry.id) }));
    this.show();
  }

  tick(lift: string, key: string, on: boolean): void {
    this.keeper.change((kept) => {
      const before = (kept.ticks[lift] ?? []).filter((one) => one !== key);
      return { ticks: { ...kept.ticks, [lift]: on ? [...before, key] : before } };
    });
    this.show();
  }

  go(lift: number | null): void {
    this.lift = lift;
    this.show();
  }

  wear(look: Look): void {
    this.look = look;
    try {
      localStorage.setItem('clom-today-look', look);
    } catch {
      // It is worn until the page is closed.
    }
    this.dress();
    this.show();
  }

  save = (): void => {
    const { scene } = this;
    if (scene === null) return;
    const { words, key, name, role } = this.given;
    const kept = { ...this.keeper.now, scene: null, draft: null };
    give(`today-${key}-${scene.today}.html`, oneFile({ mode: 'today', key, name, role, words, scene, kept }, say('web.today.title', { name })));
  };

  copy = async (): Promise<void> => {
    const text = asText(this.keeper.now.waiting);
    this.copied = text;
    try {
      // Only where the browser trusts the place; everywhere the text stands there to be marked.
      await navigator.clipboard.writeText(text);
      this.told = say('web.today.copied');
    } catch {
      this.told = '';
    }
    this.show();
  };

  paste = (event: Event): void => {
    event.preventDefault();
    const form = event.target as HTMLFormElement;
    const found = fromText(String(new FormData(form).get('copied') ?? ''));
    this.pasteWrong = found === null;
    if (found !== null) {
      this.keeper.change((kept) => ({ waiting: together(kept.waiting, found) }));
      form.reset();
    }
    this.show();
    if (found !== null) void this.again();
  };

  showPapers = async (): Promise<void> => {
    this.papers = 'wait';
    this.show();
    try {
      const answer = await fetch(`/api/houses/${encodeURIComponent(this.given.key)}/papers`);
      this.papers = answer.ok ? ((await answer.json()) as Papers) : null;
      if (!answer.ok) this.refusedBy(answer.status);
    } catch {
      this.papers = null;
      this.lost = true;
    }
    this.show();
  };

  /** Sends one entry after the other; the same sent again is the same, so that a lost answer writes nothing twice. */
  private async send(): Promise<void> {
    if (this.sending || this.saved || this.shutOut) return;
    this.sending = true;
    this.keeper.look();
    try {
      for (const one of this.keeper.now.waiting.filter((waiting) => waiting.why === undefined)) {
        const answer = await fetch(`/api/houses/${encodeURIComponent(this.given.key)}/today`, { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify(one.entry) });
        this.lost = false;
        if (answer.ok) {
          const { line } = (await answer.json()) as { line: string };
          this.keeper.change((kept) => ({ waiting: kept.waiting.filter((other) => other.entry.id !== one.entry.id) }));
          this.told = say('web.today.sent', { line });
        } else if (answer.status === 422) {
          const { trouble, blank } = (await answer.json()) as { trouble: string; blank: string | null };
          const refused = { ...one, why: trouble, blank };
          this.keeper.change((kept) => ({ waiting: kept.waiting.map((other) => (other.entry.id === one.entry.id ? refused : other)) }));
          // Who has begun another meanwhile finds it among what waits.
          if (one.entry.id === this.fresh && this.keeper.now.draft === null) this.correct(refused);
        } else {
          this.refusedBy(answer.status);
          break;
        }
      }
    } catch {
      this.lost = true;
    } finally {
      this.sending = false;
      this.show();
    }
  }

  private refusedBy(status: number): void {
    if (status === 401 || status === 403) this.shutOut = true;
    else this.lost = true;
  }

  private dress(): void {
    document.documentElement.dataset.look = this.look;
  }

  private remembered(): string | null {
    try {
      return localStorage.getItem('clom-today-look');
    } catch {
      return null;
    }
  }
}

/** The day by this phone's own clock. */
function here(): string {
  const now = new Date();
  return `${now.getFullYear()}-${String(now.getMonth() + 1).padStart(2, '0')}-${String(now.getDate()).padStart(2, '0')}`;
}
