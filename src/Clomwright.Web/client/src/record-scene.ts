/** What the server tells of the site record: `RecordScene` there. */
export interface NamedKey {
  key: string;
  name: string;
}

export interface WrittenDay {
  id: string;
  date: string;
  dateInWords: string;
  line: string;
  raised: string;
  batches: string;
  people: string;
  hours: string;
  lift: string;
  stopped: string;
  done: NamedKey[];
  notes: string;
}

export interface RecordScene {
  name: string;
  today: string;
  trouble: string | null;
  standing: string;
  days: WrittenDay[];
  others: string[];
  corrected: string;
  tasks: NamedKey[];
  stops: NamedKey[];
}

/** A day as it is typed. */
export interface TypedDay {
  id: string;
  corrects: string | null;
  struck: string | null;
  date: string;
  raised: string;
  batches: string;
  people: string;
  hours: string;
  lift: string;
  stopped: string;
  done: string[];
  notes: string;
}

const letters = '0123456789abcdefghjkmnpqrstvwxyz';

/** An id of an entry, made here, so that the same entry sent twice is one. */
export function newId(): string {
  const random = crypto.getRandomValues(new Uint8Array(10));
  const id = [...random].map((byte) => letters[byte % letters.length]).join('');
  return `${id.slice(0, 5)}-${id.slice(5)}`;
}
