/** What the server tells of a day: `TodayScene` there. */
export interface TodayScene {
  name: string;
  today: string;
  date: string;
  made: string;
  standing: string;
  plan: string;
  at: number | null;
  heightToday: string;
  top: string[];
  lifts: TodayLift[];
  ready: string[];
  crew: { people: { name: string; before: string; after: string }[]; posts: string[] } | null;
  crewNote: string;
  weather: string;
  weatherDo: string[];
  calls: { who: string; number: string; dial: string; for: string }[];
  callNotes: string[];
  cautions: string[];
  written: { id: string; line: string; raised: string; people: string; batches: string; notes: string } | null;
}

export interface TodayLift {
  name: string;
  to: string;
  toOther: string;
  from: string;
  batches: string;
  each: string;
  below: string;
  setIn: { key: string; what: string; height: string; station: string }[];
}

/** What stands in the document itself. */
export interface Given {
  mode: 'today' | 'in' | 'stranger';
  key: string;
  name: string;
  role: 'own' | 'reader' | 'logger' | '';
  words: Record<string, string>;
  scene: TodayScene | null;
  /** In a saved file: what was ticked and not sent when it was saved. */
  kept?: Kept;
}

/** A day as it is typed here; what the server takes. */
export interface Entry {
  id: string;
  corrects: string | null;
  date: string;
  raised: string;
  people: string;
  batches: string;
  notes: string;
}

/** An entry that is not sent, and why the machine did not take it, if it did not. */
export interface Waiting {
  entry: Entry;
  why?: string;
  /** The blank that it is about, where it is about one. */
  blank?: string | null;
}

/** What this browser keeps. */
export interface Kept {
  scene: TodayScene | null;
  ticks: Record<string, string[]>;
  waiting: Waiting[];
  draft: Entry | null;
}
