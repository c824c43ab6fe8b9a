import { useLayoutEffect, useRef } from 'preact/hooks';
import type { Scene } from '../meeting/meeting.ts';
import { ChartPicture } from '../widgets/retrieval/ChartPicture.tsx';
import { WordsText } from '../widgets/retrieval/WordsText.tsx';
import { CarScene } from './CarScene.tsx';
import { Figure } from './Figure.tsx';
import type { StageModel } from './model.ts';
import { SimulationScene } from './SimulationScene.tsx';
import { VoteScene } from './VoteScene.tsx';
import { words } from './words.en.ts';

interface SceneViewProps {
  readonly model: StageModel;
  readonly base: string;
}

/** What stands on the wall: made afresh for each scene, by its key. */
export function SceneView({ model, base }: SceneViewProps) {
  const scene = model.scene.value;
  const at = model.place.value.scene;
  const head = useRef<HTMLHeadingElement>(null);
  useLayoutEffect(() => head.current?.focus({ preventScroll: true }), []);
  if (scene === undefined) return null;
  return (
    <div class={`stage-scene scene-${scene.kind}`}>
      <h2 ref={head} tabIndex={-1}>
        {scene.heading}
      </h2>
      <div class={hasPicture(scene) ? 'stage-beside' : undefined}>
        {scene.lines.length > 0 && (
          <ul class="stage-lines">
            {scene.lines.map((line, i) => (
              <li key={i}>
                <WordsText words={line} />
              </li>
            ))}
          </ul>
        )}
        <Body {...{ model, base, scene, at }} />
      </div>
    </div>
  );
}

const hasPicture = (scene: Scene): boolean =>
  (scene.kind === 'say' || scene.kind === 'picture') &&
  (scene.drawing !== undefined || scene.chart !== undefined);

interface BodyProps extends SceneViewProps {
  readonly scene: Scene;
  readonly at: number;
}

function Body({ model, base, scene, at }: BodyProps) {
  const step = model.step.value;
  switch (scene.kind) {
    case 'say':
    case 'picture':
      return (
        <>
          {scene.drawing !== undefined && <Figure scene={at} />}
          {scene.chart !== undefined && (
            <ChartPicture chart={scene.chart} asTable={words.vote.asTable} />
          )}
        </>
      );
    case 'simulation':
      return <SimulationScene base={base} scene={scene} running={step === 'run'} />;
    case 'vote':
      return <VoteScene model={model} scene={scene} step={step ?? 'ask'} />;
    case 'case':
      return <CarScene scene={scene} opened={step === 'open'} />;
  }
}
