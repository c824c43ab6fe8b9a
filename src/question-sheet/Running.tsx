import type { ComponentChildren } from 'preact';
import type { Shown } from './address.ts';
import type { Made } from './model.ts';
import { words } from './words.en.ts';

const { paper: said } = words;

interface RunningProps {
  readonly made: Made;
  readonly of: Shown;
  /** Stands on the right of each page. */
  readonly beside?: ComponentChildren;
  readonly children: ComponentChildren;
}

/** What is printed, under a line that comes back on every page: the head of a table is the one thing all browsers repeat. */
export function Running({ made, of, beside, children }: RunningProps) {
  const { seed } = made.choice;
  return (
    <table class="paper" role="presentation">
      <thead>
        <tr>
          <td>
            <div class="paper-running">
              <span>
                <strong>{said.running[of]}</strong>, {said.seed({ seed, version: made.version })}
              </span>
              {beside}
            </div>
          </td>
        </tr>
      </thead>
      <tbody>
        <tr>
          <td>{children}</td>
        </tr>
      </tbody>
    </table>
  );
}
