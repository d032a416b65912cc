import type { Scene } from './scene';

/** Parts of a scene as they are sent to a page that has an earlier one: what is not there, or null in a list, stands as it stood. */
function joined<T extends object>(before: T, sent: Partial<T> | undefined): T {
  if (sent === undefined) return before;
  const whole = { ...before };
  for (const key of Object.keys(sent) as (keyof T)[]) {
    const [now, was] = [sent[key], before[key]];
    whole[key] = (Array.isArray(now) && Array.isArray(was) && now.length === was.length ? others(now, was) : now) as T[keyof T];
  }
  return whole;
}

function others(now: readonly unknown[], was: readonly unknown[]): readonly unknown[] {
  return now.every((one) => one === null) ? was : now.map((one, i) => one ?? was[i]);
}

/** A whole scene, from one that may be only what is otherwise than in the scene the page has. What stands as it stood is the same object. */
export function wholeScene(sent: Scene, before: Scene | null): Scene {
  if (sent.since === null || sent.since === undefined || before === null) return sent;
  const findings = (sent.order ?? []).flatMap((place) => (place >= 0 ? before.findings[place] : sent.findings[-1 - place]) ?? []);
  return { ...joined(before, { ...sent, view: undefined, plan: undefined } as Partial<Scene>), view: joined(before.view, sent.view), plan: joined(before.plan, sent.plan), findings, order: null, since: null };
}
