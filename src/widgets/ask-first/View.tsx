import type { Signal } from '@preact/signals';
import { ASKED, type Asked } from '../../cases/answers.ts';
import { simulationView, type PictureProps } from '../../simulation/simulation-view.tsx';
import { makeModel, type AskFirstModel } from './model.ts';
import { answerWords, worthWords } from './print.ts';
import { sim } from './sim.ts';
import { Suspects } from './Suspects.tsx';
import { words } from './words.en.ts';

const Picture = ({ model }: PictureProps<AskFirstModel>) => <Suspects model={model} />;

interface QuestionProps {
  readonly id: string;
  readonly question: Asked;
  readonly model: AskFirstModel;
}

/** A question to press: what it is worth before, what the customer says after. Pressed again, it is taken back. */
function Question({ id, question, model }: QuestionProps) {
  const asked: Signal<boolean> = model.givens[question];
  return (
    <button
      type="button"
      id={id}
      class="ask-question"
      aria-pressed={asked.value}
      onClick={() => (asked.value = !asked.value)}
    >
      <strong>{words.questions[question]}</strong>
      <span>
        {asked.value
          ? answerWords(question, model.answers.value[question])
          : worthWords(model.worth(question))}
      </span>
    </button>
  );
}

export const View = simulationView({
  sim,
  tasks: () => import('./tasks.ts'),
  makeModel,
  Picture,
  below: () => import('./Below.tsx'),
  drawn: (model) =>
    Object.fromEntries(
      ASKED.map((question) => [
        question,
        (id: string) => <Question id={id} question={question} model={model} />,
      ]),
    ),
});
