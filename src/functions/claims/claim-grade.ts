/** Grades as reports write them: a number, or a word that the criteria have for one grade alone. */
import { knownCriteria } from "../../core/audit/verdict/grade.js";

export interface WrittenGrade {
  readonly grade: number;
  /** By its word: then it is ours, whichever way the report counts. */
  readonly isWord: boolean;
}

export function writtenGrade(text: string, criteria: string): WrittenGrade | undefined {
  if (/\d/.test(text)) {
    const grade = numberedGrade(text);
    return grade === undefined ? undefined : { grade, isWord: false };
  }
  const meant = new Set(wordsOf(text).flatMap((word) => ofWord(criteria).get(word) ?? []));
  const [grade] = meant;
  return meant.size === 1 && grade !== undefined ? { grade, isWord: true } : undefined;
}

const wordsOf = (text: string): string[] => text.toLowerCase().match(/\p{L}{4,}/gu) ?? [];

/** Words that the criteria have for one grade alone. */
function ofWord(criteria: string): ReadonlyMap<string, number> {
  const byWord = new Map<string, Set<number>>();
  for (const { words, grade } of knownCriteria(criteria)?.rows ?? [])
    for (const word of wordsOf(words)) byWord.set(word, (byWord.get(word) ?? new Set()).add(grade));
  return new Map([...byWord].flatMap(([word, grades]) => (grades.size === 1 ? [[word, [...grades][0]!]] : [])));
}

/** "3", "2 of 4", "grade 4", "3 - repair": one whole number from 0 to 4, of a scale of 4 where it names one. */
function numberedGrade(text: string): number | undefined {
  const [, before = "", digit, behind = ""] = /^(\D*)([0-4])(?!\d)(.*)$/s.exec(text) ?? [];
  // "-1", ".5", "2.5" and "1-2" are no grades.
  if (digit === undefined || /^[-−.,]$/.test(before.trim()) || /^[.,]\d/.test(behind)) return undefined;
  const scale = /^\s*(?:of|out of|\/)\s*(\d+)/i.exec(behind)?.[1];
  if (scale === undefined ? /^\s*(?:[-–—]|to|or)\s*\d/i.test(behind) : scale !== "4") return undefined;
  return Number(digit);
}
