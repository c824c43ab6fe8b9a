import { LINES, LISTED, type Line } from '../../cases/frame-list.ts';
import { Ask } from '../../simulation/share-list/Ask.tsx';
import { ShareList } from '../../simulation/share-list/ShareList.tsx';
import { simulationView, type PictureProps } from '../../simulation/simulation-view.tsx';
import { useUnits } from '../../ui/use-units.ts';
import { makeModel, type FreezeFrameModel } from './model.ts';
import { nameOf, underLine } from './print.ts';
import { sim } from './sim.ts';
import { words } from './words.en.ts';

function Picture({ model }: PictureProps<FreezeFrameModel>) {
  const shares = model.list.value;
  const listed = LISTED.map((name, i) => {
    const share = shares[i] ?? 0;
    return { id: name, name: nameOf(name), share, off: share === 0 };
  });
  return <ShareList listed={listed} words={words.list} />;
}

interface LineProps {
  readonly id: string;
  readonly line: Line;
  readonly model: FreezeFrameModel;
}
/** A line of the job to read: what it is worth before, what it says after. */
function LineToRead({ id, line, model }: LineProps) {
  return (
    <Ask
      id={id}
      asked={model.givens[line]}
      words={words.lines[line]}
      under={underLine(model, line, useUnits())}
    />
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
      LINES.map((line) => [line, (id: string) => <LineToRead id={id} line={line} model={model} />]),
    ),
});
