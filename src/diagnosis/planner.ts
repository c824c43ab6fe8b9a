/** The planner with its table: what is it, how sure, and which test next. */
import { hypothesesOf, type Hypothesis } from './cells.ts';
import { findingsOf, fitOf, MANY, type Finding, type Fit } from './findings.ts';
import { rankTests, type Ranked } from './next-test.ts';
import { weigh, type Posterior } from './posterior.ts';
import type { Question } from './request.ts';
import type { Table } from './table.ts';
import { twoFaults } from './two-faults.ts';

/** What the planner says to a question. */
export interface Advice {
  readonly faults: readonly Finding[];
  readonly next: readonly Ranked[];
  readonly fit: Fit;
  readonly posterior: Posterior;
}

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
      fit: fitOf(
        posterior,
        posterior.numbers < MANY ? undefined : twoFaults(hypotheses, posterior, readings),
      ),
      posterior,
    };
  };
}
