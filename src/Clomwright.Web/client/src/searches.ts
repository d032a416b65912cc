import type { ChoicesAnswer } from './days-scene';
import type { HouseLine } from './line';
import type { FallAnswer } from './stress-scene';

/** What a person asks to be searched for: the push at which the house falls, and other ways and weeks. Each is of the house it was begun for. */
export class Searches {
  fall: FallAnswer | null = null;
  falling = false;
  choices: ChoicesAnswer | null = null;
  trying = false;

  /** The revision that the search for the fall is of. */
  fallOf = -1;

  /** Counted up whenever what is tried becomes of another house. */
  private tries = 0;

  constructor(private readonly changed: () => void) {}

  search(line: HouseLine, revision: number): void {
    this.fallOf = revision;
    this.fall = null;
    this.falling = true;
    this.changed();
    line.fall(
      (answer) => {
        if (this.fallOf !== revision) return;
        this.fall = answer;
        this.changed();
      },
      () => {
        if (this.fallOf !== revision) return;
        this.falling = false;
        this.changed();
      },
    );
  }

  giveUp(line: HouseLine | null): void {
    line?.giveUp();
    this.fall = null;
    this.falling = false;
    this.changed();
  }

  tryOthers(line: HouseLine | null): void {
    const of = ++this.tries;
    this.choices = null;
    this.trying = true;
    this.changed();
    line?.choices(
      (answer) => {
        if (this.tries !== of) return;
        this.choices = answer;
        this.changed();
      },
      () => {
        if (this.tries !== of) return;
        this.trying = false;
        this.changed();
      },
    );
  }

  stopTrying(line: HouseLine | null): void {
    this.tries++;
    line?.stopTrying();
    if (this.choices === null && !this.trying) return;
    this.choices = null;
    this.trying = false;
    this.changed();
  }

  /** Another house, or none. */
  forget(): void {
    this.tries++;
    this.fallOf = -1;
    this.fall = this.choices = null;
    this.falling = this.trying = false;
    this.changed();
  }
}
