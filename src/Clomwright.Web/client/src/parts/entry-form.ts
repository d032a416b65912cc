import { LitElement, type PropertyValues } from 'lit';
import { sendEntry, type RecordScene, type TypedDay, type TypedOther } from '../record-scene';
import { say } from '../words';

/** A form that writes to the site record: what is typed, what came of it, what was refused and at which blank. */
export abstract class EntryForm<T extends TypedDay | TypedOther> extends LitElement {
  static override properties = { house: {}, scene: { attribute: false }, typed: { state: true }, told: { state: true }, wrong: { state: true }, sending: { state: true } };

  declare house: string;
  declare scene: RecordScene;
  declare typed: T;
  declare told: string;
  declare wrong: { sentence: string; blank: string | null } | null;
  declare sending: boolean;

  constructor() {
    super();
    this.told = '';
    this.wrong = null;
    this.sending = false;
  }

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (changed.has('house')) this.begin();
  }

  /** An empty form. */
  protected abstract begin(): void;

  /** An entry stands in the record. */
  protected abstract wrote(scene: RecordScene, typed: T): void;

  /** The same entry sent again is the same entry: after a lost answer nothing is written twice. */
  protected async post(typed: T): Promise<void> {
    this.sending = true;
    this.told = '';
    try {
      const { scene, wrong } = await sendEntry(this.house, typed);
      if (scene !== null) {
        this.wrong = null;
        this.wrote(scene, typed);
      } else {
        this.wrong = { sentence: wrong?.sentence ?? say('web.line.lost'), blank: wrong?.blank ?? null };
      }
    } catch {
      this.wrong = { sentence: say('web.line.lost'), blank: null };
    } finally {
      this.sending = false;
    }
  }
}
