/** What stands over every sheet of a report. */

export interface ReportHead {
  /** Formulas without "=": the job in words, and the criteria. */
  readonly job: string;
  readonly criteria: string;
  /** Lines of the book: where it is invented, they say so. */
  readonly about: readonly string[];
}

export function heading(title: string, { job, criteria, about }: ReportHead): string[] {
  return [title, `=${job}`, `="Criteria: "&${criteria}`, ...about];
}
