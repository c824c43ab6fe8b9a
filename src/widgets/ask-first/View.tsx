import { ASKED } from '../../cases/answers.ts';
import { NAMES } from '../../diagnosis/hypotheses.ts';
import { Ask } from '../../simulation/share-list/Ask.tsx';
import { ShareList } from '../../simulation/share-list/ShareList.tsx';
import { simulationView, type PictureProps } from '../../simulation/simulation-view.tsx';
import { Car } from './Car.tsx';
import { makeModel, OFF, type AskFirstModel } from './model.ts';
import { answerWords, nameOf, worthWords } from './print.ts';
import { sim } from './sim.ts';
import { words } from './words.en.ts';

function Picture({ model }: PictureProps<AskFirstModel>) {
  const shares = model.list.value;
  const listed = NAMES.map((name, i) => {
    const share = shares[i] ?? 0;
    return { id: name, name: nameOf(name), share, off: share < OFF };
  });
  return <ShareList listed={listed} words={words.list} />;
}

export const View = simulationView({
  sim,
  tasks: () => import('./tasks.ts'),
  makeModel,
  Picture,
  below: () => import('./Below.tsx'),
  drawn: (model) => ({
    car: (id) => <Car {...{ id, model }} />,
    ...Object.fromEntries(
      ASKED.map((question) => [
        question,
        (id: string) => (
          <Ask
            id={id}
            asked={model.givens[question]}
            words={words.questions[question]}
            under={
              model.givens[question].value
                ? answerWords(question, model.answers.value[question])
                : worthWords(model.worth(question))
            }
          />
        ),
      ]),
    ),
  }),
});
