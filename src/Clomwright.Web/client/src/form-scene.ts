// A part of the house as a form, and the ground, as the server sends them. Every word and every written number arrives as text.
import type { DiagnosticLine, Figure, PlanKey, Point } from './scene';

export interface FormAnswer {
  revision: number;
  parts: FormPart[];
}

export interface FormPart {
  path: string;
  title: string;
  lines: FormPiece[][];
  inner: FormPart[];
  adds: FormAdd[];
  canGo: boolean;
  ordered: boolean;
  said: string[];
}

export type FormPiece = { words: string; blank: null } | { words: null; blank: FormBlank };

export interface FormBlank {
  key: string;
  label: string;
  text: string;
  choices: { value: string; label: string }[];
  suggestions: string[];
  trouble: string | null;
}

export interface FormAdd {
  path: string;
  way: string;
  label: string;
  asks: FormBlank[];
}

/** Lengths in metres, east and north of the drawing's origin. */
export interface GroundScene {
  plan: PlanKey;
  points: { at: Point; label: string }[];
  peg: Point;
  figures: Figure[];
  section: SectionView;
  bodies: { name: string; blank: FormBlank }[];
  questions: { question: string; ask: string; answer: string | null; blanks: FormBlank[] }[];
  limits: { body: string; rule: string; name: string; entered: string | null; blanks: FormBlank[] }[];
  /** The findings of the whole house, counted. */
  house: string;
  diagnostics: DiagnosticLine[];
}

/** Lengths in metres, outward and up. */
export interface SectionView {
  label: string;
  parts: { kind: 'cob' | 'stem' | 'trench' | 'beam' | 'floor'; outline: Point[] }[];
  lines: { kind: 'floor' | 'grade' | 'frost' | 'damp'; from: Point; to: Point; words: string }[];
  /** Left, right, bottom, top. */
  extent: readonly [number, number, number, number];
}
