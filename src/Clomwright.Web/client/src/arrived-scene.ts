// A frame that came in another size, and the papers that change for it, as the server sends them.
import type { FaceView, FindingLine, PierLine, Point } from './scene';

/** How far the trying is, then what was found; or what is wrong with what was written, and at which blank. */
export interface ArrivedAnswer {
  share: number;
  scene: ArrivedScene | null;
  trouble: string | null;
  blank: string | null;
}

export interface ArrivedScene {
  revision: number;
  today: string;
  opening: string;
  line: string;
  /** What came, in words for the site record. */
  came: string;
  /** The opening as it is drawn, on every picture. */
  drawn: Point[][];
  /** Left and right of what every picture shows, m on the view. */
  across: readonly [number, number];
  bottom: number;
  top: number;
  ways: WayCard[];
}

export interface WayCard {
  kind: 'asitcame' | 'shift' | 'sill' | 'refuse';
  what: string;
  says: string;
  good: boolean;
  /** What would be wrong in the description; such a way cannot be taken. */
  wrong: string | null;
  breaks: FindingLine[];
  changed: FindingLine[];
  view: FaceView;
  piers: PierLine[];
}

/** The papers beside those that were handed out. */
export interface IssueScene {
  name: string;
  saved: boolean;
  next: string;
  paper: string;
  sizes: string[];
  now: IssueList;
  last: IssueList | null;
}

export interface IssueList {
  letter: string;
  line: string;
  changes: boolean;
  sheets: IssuePart[];
  takeDown: IssuePart[];
}

export interface IssuePart {
  part: 'site' | 'office' | 'templates';
  heading: string;
  sheets: { key: string; number: string; title: string; letter: string; mark: string; count: number }[];
}
