/** The planner with its table: what is it, how sure, and which test next. */
import { hypothesesOf, type Hypothesis } from './cells.ts';
import { findingsOf, fitOf, type Finding, type Fit } from './findings.ts';
import { rankSteps, rankTests, type Ranked } from './next-test.ts';
import { weigh, type Posterior } from './posterior.ts';
import type { Question } from './request.ts';
import type { Table } from './table.ts';

/** What the planner says to a question. */
export interface Advice {
  readonly faults: readonly Finding[];
  readonly next: readonly Ranked[];
  /** Works `next` out a test at a time. */
  readonly ranking: () => Generator<undefined, readonly Ranked[]>;
  readonly fit: Fit;
  readonly posterior: Posterior;
}

/** From this share of the top name on, the planner stops asking. */
export const SURE = 0.9;

/** A planner for a table; made once, asked often. */
export function plannerOf(table: Table): (question: Question) => Advice {
  const hypotheses: readonly Hypothesis[] = hypothesesOf(table);
  return ({ readings, state, priors }) => {
    const posterior = weigh(hypotheses, readings, priors);
    let ranked: readonly Ranked[] | undefined;
    return {
      faults: findingsOf(posterior),
      // Most of the work, and not everybody asks for it.
      get next() {
        return (ranked ??= rankTests(posterior, state));
      },
      ranking: () => rankSteps(posterior, state),
      fit: fitOf(posterior),
      posterior,
    };
  };
}
