import { bringSuspects } from '../../cases/bay-list.ts';
import { BAY_TESTS } from '../../cases/bay-tests.ts';
import { NAMES } from '../../diagnosis/hypotheses.ts';
import { ShareList } from '../../simulation/share-list/ShareList.tsx';
import { simulationView, type PictureProps } from '../../simulation/simulation-view.tsx';
import { Clock } from './Clock.tsx';
import { makeModel, OFF, type TestOrderModel } from './model.ts';
import { nameOf } from './print.ts';
import { sim } from './sim.ts';
import { TestButton } from './TestButton.tsx';
import { words } from './words.en.ts';

/** The minutes spent, and what is left of the list for them. */
function Picture({ model }: PictureProps<TestOrderModel>) {
  const shares = model.list.value;
  const listed = NAMES.map((name, i) => {
    const share = shares[i] ?? 0;
    return { id: name, name: nameOf(name), share, off: share < OFF };
  });
  return (
    <figure class="test-order">
      <Clock model={model} />
      <ShareList listed={listed} words={words.list} />
    </figure>
  );
}

const Simulation = simulationView({
  sim,
  tasks: () => import('./tasks.ts'),
  makeModel,
  Picture,
  below: () => import('./Below.tsx'),
  drawn: (model) =>
    Object.fromEntries(
      BAY_TESTS.map((one) => [
        one.key,
        (id: string) => <TestButton id={id} one={one} model={model} />,
      ]),
    ),
});

/** What each test can say was worked out when the page was built, and comes with the island. */
export function View({ suspects }: { readonly suspects: string }) {
  bringSuspects(suspects);
  return <Simulation />;
}
