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
  others: { id: string; line: string; canStrike: boolean }[];
  corrected: string;
  tasks: NamedKey[];
  stops: NamedKey[];
  parts: string[];
  measures: NamedKey[];
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

/** A test, something that came, or something measured in the wall, as it is typed; or an entry struck out. */
export interface TypedOther {
  id: string;
  kind: 'test' | 'delivery' | 'as-built';
  date: string;
  what: string;
  of: string;
  found: string;
  measured: string;
  asOrdered: string;
  corrects?: string;
  struck?: string;
}

/** Sends an entry; the same sent again is the same. */
export async function sendEntry(house: string, typed: TypedDay | TypedOther): Promise<{ scene: RecordScene | null; wrong: { sentence: string | null; blank: string | null } | null }> {
  const answer = await fetch(`/api/houses/${encodeURIComponent(house)}/record`, { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify(typed) });
  const body = (await answer.json()) as RecordScene & { trouble?: string | null; blank?: string | null };
  return answer.ok ? { scene: body, wrong: null } : { scene: null, wrong: { sentence: body.trouble ?? null, blank: body.blank ?? null } };
}

const letters = '0123456789abcdefghjkmnpqrstvwxyz';

/** An id of an entry, made here, so that the same entry sent twice is one. */
export function newId(): string {
  const random = crypto.getRandomValues(new Uint8Array(10));
  const id = [...random].map((byte) => letters[byte % letters.length]).join('');
  return `${id.slice(0, 5)}-${id.slice(5)}`;
}
