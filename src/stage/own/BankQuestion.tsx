import { useEffect, useState } from 'preact/hooks';
import { passageText } from '../../quiz/asked.ts';
import type { Passage } from '../../quiz/passage.ts';
import { useUnits } from '../../ui/use-units.ts';

interface BankQuestionProps {
  /** The folder that the site stands in. */
  readonly base: string;
  readonly lesson: string;
  readonly id: string;
}

/** A question of the course in its own words, once they are here. */
export function BankQuestion({ base, lesson, id }: BankQuestionProps) {
  const system = useUnits();
  const [stem, setStem] = useState<Passage>([]);
  useEffect(() => {
    const load = async (): Promise<void> => {
      const { votesOf } = await import('./load-questions.ts');
      const votes = await votesOf(base, lesson);
      setStem(votes?.find((asked) => asked.id === id)?.stem ?? []);
    };
    load().catch(() => undefined);
  }, [lesson, id]);
  return <>{passageText(stem, system)}</>;
}
