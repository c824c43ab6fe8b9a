import {
  LONGEST,
  MOST_OPTIONS,
  whyOf,
  type OwnScene,
  type OwnVote,
} from '../../storage/meetings/own-meeting.ts';
import { BankQuestion } from './BankQuestion.tsx';
import { CaseAt, SimulationAt } from './FromSite.tsx';
import type { OfSite } from './of-site.ts';
import { words } from './words.en.ts';

const { editor } = words;

interface SceneFormProps {
  /** The folder that the site stands in. */
  readonly base: string;
  readonly site: OfSite;
  readonly scene: OwnScene;
  readonly index: number;
  readonly last: boolean;
  readonly put: (scene: OwnScene) => void;
  readonly move: (by: -1 | 1) => void;
  readonly remove: () => void;
}

/** One scene, to be written and moved about. */
export function SceneForm(props: SceneFormProps) {
  const { base, site, scene, index, last, put, move, remove } = props;
  const number = String(index + 1);
  const id = `own-${number}`;
  return (
    <fieldset class="own-scene">
      <legend>
        {editor.scene(number)}: {editor.kinds[scene.kind]}
      </legend>
      <Field
        id={`${id}-heading`}
        label={editor.heading}
        most={LONGEST.heading}
        value={scene.heading}
        put={(heading) => put({ ...scene, heading })}
      />
      <Inner {...{ base, site, id, scene, put }} />
      <label for={`${id}-notes`}>{editor.notes}</label>
      <textarea
        id={`${id}-notes`}
        rows={3}
        maxLength={LONGEST.notes}
        value={scene.notes}
        onInput={({ currentTarget }) => put({ ...scene, notes: currentTarget.value })}
      />
      <p class="own-buttons">
        <button
          type="button"
          class="quiet"
          disabled={index === 0}
          aria-label={editor.up(number)}
          onClick={() => move(-1)}
        >
          {editor.upShort}
        </button>{' '}
        <button
          type="button"
          class="quiet"
          disabled={last}
          aria-label={editor.down(number)}
          onClick={() => move(1)}
        >
          {editor.downShort}
        </button>{' '}
        <button type="button" class="quiet" aria-label={editor.remove(number)} onClick={remove}>
          {editor.removeShort}
        </button>
      </p>
    </fieldset>
  );
}

interface InnerProps extends Pick<SceneFormProps, 'base' | 'site'> {
  readonly id: string;
  readonly scene: OwnScene;
  readonly put: (scene: OwnScene) => void;
}

function Inner({ base, site, id, scene, put }: InnerProps) {
  switch (scene.kind) {
    case 'say':
      return (
        <>
          {filled(scene.lines, 3).map((line, i, lines) => (
            <Field
              key={i}
              id={`${id}-line-${i}`}
              label={editor.line(String(i + 1))}
              most={LONGEST.line}
              value={line}
              put={(text) => put({ ...scene, lines: lines.with(i, text) })}
            />
          ))}
        </>
      );
    case 'vote':
      return <VoteFields id={id} scene={scene} put={put} />;
    case 'question':
      return (
        <p>
          {editor.question}{' '}
          {site.lessons.find((lesson) => lesson.id === scene.lesson)?.title ?? scene.lesson}:{' '}
          <BankQuestion base={base} lesson={scene.lesson} id={scene.id} />
        </p>
      );
    case 'simulation':
      return (
        <p>
          {editor.from} <SimulationAt base={base} path={scene.href} />
        </p>
      );
    case 'case':
      return (
        <p>
          {editor.from} <CaseAt base={base} search={scene.search} cases={site.cases} />
        </p>
      );
  }
}

/** A text for each field, nothing where nothing was typed. */
const filled = (texts: readonly string[], fields: number): string[] =>
  Array.from({ length: fields }, (_, i) => texts[i] ?? '');

function VoteFields({
  id,
  scene,
  put,
}: Pick<InnerProps, 'id' | 'put'> & { readonly scene: OwnVote }) {
  const options = filled(scene.options, MOST_OPTIONS);
  const whys = options.map((_, i) => whyOf(scene, i));
  return (
    <>
      <Field
        id={`${id}-stem`}
        label={editor.stem}
        most={LONGEST.line * 2}
        value={scene.stem}
        put={(stem) => put({ ...scene, stem })}
      />
      {options.map((option, i) => {
        const name = String(i + 1);
        const right = scene.right === i;
        const why = whys[i] ?? '';
        return (
          <div class="own-option" key={i}>
            <Field
              id={`${id}-option-${i}`}
              label={editor.option(name)}
              most={LONGEST.line}
              value={option}
              put={(text) => put({ ...scene, options: options.with(i, text) })}
            />
            <label class="own-right">
              <input
                type="radio"
                name={`${id}-right`}
                checked={right}
                onChange={() => put({ ...scene, why: whys, right: i })}
              />
              {editor.right(name)}
            </label>
            {/* Of an option that is not there yet nobody says why. */}
            {option + why !== '' && (
              <Field
                id={`${id}-why-${i}`}
                label={editor.why(name, right)}
                most={LONGEST.why}
                value={why}
                put={(text) => put({ ...scene, why: whys.with(i, text) })}
              />
            )}
          </div>
        );
      })}
    </>
  );
}

interface FieldProps {
  readonly id: string;
  readonly label: string;
  readonly most: number;
  readonly value: string;
  readonly put: (text: string) => void;
}

const Field = ({ id, label, most, value, put }: FieldProps) => (
  <>
    <label for={id}>{label}</label>
    <input
      id={id}
      type="text"
      autoComplete="off"
      maxLength={most}
      value={value}
      onInput={({ currentTarget }) => put(currentTarget.value)}
    />
  </>
);
