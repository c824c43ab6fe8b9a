import { useEffect, useState } from 'preact/hooks';
import type { Session, Summary } from '../../quiz/session.ts';
import { words } from './player/words.en.ts';
import type { Returns } from './returns.ts';
import { judgement, Sureness } from './Sureness.tsx';

export interface ObjectiveLink {
  readonly id: string;
  readonly text: string;
  /** Where it is taught. */
  readonly href: string;
}

interface OverProps {
  readonly summary: Summary;
  readonly objectives: readonly ObjectiveLink[];
  readonly session: Session;
}

/** How it went: marks, how sure against how often right, and what to come back to, the surest errors first. */
export function Over({ summary, objectives, session }: OverProps) {
  const { calibration, again } = summary;
  const weak = [...new Set(again.flatMap((a) => a.objectives))].flatMap(
    (id) => objectives.find((o) => o.id === id) ?? [],
  );
  return (
    <div class="retrieval-over">
      <p>
        {words.result(summary)} {judgement(calibration, again.length === 0)}
      </p>
      <Sureness calibration={calibration} />
      {weak.length > 0 && (
        <>
          <h3>{words.again}</h3>
          <ul>
            {weak.map(({ id, text, href }) => (
              <li key={id}>
                <a class="way" href={href}>
                  {text}
                </a>
              </li>
            ))}
          </ul>
        </>
      )}
      {again.length > 0 && <ComeBack session={session} />}
    </div>
  );
}

/** When they are asked again. Its line stands empty until the answers are read, so that nothing below it moves. */
function ComeBack({ session }: { readonly session: Session }) {
  const [returns, setReturns] = useState<Returns | undefined>(undefined);
  useEffect(() => {
    // Without a connection it may not come, and then nothing is said of it.
    void import('./returns.ts')
      .then(({ returnsOf }) => returnsOf(session))
      .then(setReturns, () => undefined);
  }, [session]);
  return (
    <p class="retrieval-returns" role="status">
      {returns && (
        <>
          {words.returns(returns)} <a href="/practise/today/">{words.today}</a>.
        </>
      )}
    </p>
  );
}
