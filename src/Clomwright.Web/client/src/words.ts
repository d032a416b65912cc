import { html, type TemplateResult } from 'lit';

let words: Record<string, string> = {};

/** Takes the words that the server speaks. */
export async function loadWords(): Promise<void> {
  const answer = await fetch('/api/words');
  if (!answer.ok) throw new Error(`${answer.status} /api/words`);
  words = (await answer.json()) as Record<string, string>;
  document.documentElement.lang = words['lang'] ?? 'en';
}

/** The words of a key with its places filled in. */
export function say(key: string, filled: Record<string, string | number> = {}): string {
  return pieces(key)
    .map((piece) => (typeof piece === 'string' ? piece : String(filled[piece.place] ?? `{${piece.place}}`)))
    .join('');
}

/** The same with pieces of page in the places. */
export function sayWith(key: string, filled: Record<string, unknown>): TemplateResult[] {
  return pieces(key).map((piece) => (typeof piece === 'string' ? html`${piece}` : html`${filled[piece.place]}`));
}

function pieces(key: string): (string | { place: string })[] {
  const text = words[key] ?? key;
  return text
    .split(/(\{\w+\})/)
    .filter((part) => part !== '')
    .map((part) => (/^\{\w+\}$/.test(part) ? { place: part.slice(1, -1) } : part));
}

/** Takes words that came with the page itself. */
export function takeWords(given: Record<string, string>): void {
  words = given;
}
