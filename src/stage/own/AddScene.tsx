import { useSignal } from '@preact/signals';
import { useRef } from 'preact/hooks';
import { readPasted } from '../../meeting/pasted.ts';
import { passageText, type Asked } from '../../quiz/asked.ts';
import type { OwnScene } from '../../storage/meetings/own-meeting.ts';
import { useUnits } from '../../ui/use-units.ts';
import type { OfSite } from './of-site.ts';
import { words } from './words.en.ts';

const { add: said } = words;

interface AddSceneProps {
  readonly base: string;
  readonly site: OfSite;
  readonly full: boolean;
  readonly add: (scene: OwnScene) => void;
}

/** Four ways to one more scene: words, a vote, a link, a question of the course. */
export function AddScene({ base, site, full, add }: AddSceneProps) {
  if (full) return <p class="muted">{said.full}</p>;
  return (
    <section class="own-add" aria-labelledby="own-add-title">
      <h3 id="own-add-title">{said.title}</h3>
      <p>
        <button
          type="button"
          class="quiet"
          onClick={() => add({ kind: 'say', heading: '', lines: [''], notes: '' })}
        >
          {said.say}
        </button>{' '}
        <button
          type="button"
          class="quiet"
          onClick={() =>
            add({
              ...{ kind: 'vote', heading: said.newHeading.vote, stem: '' },
              ...{ options: ['', ''], right: 0, why: [], notes: '' },
            })
          }
        >
          {said.vote}
        </button>
      </p>
      <FromLink base={base} controls={site.controls} add={add} />
      <FromBank base={base} site={site} add={add} />
    </section>
  );
}

interface FromLinkProps extends Pick<AddSceneProps, 'base' | 'add'> {
  readonly controls: OfSite['controls'];
}

function FromLink({ base, controls, add }: FromLinkProps) {
  const wrong = useSignal('');
  const field = useRef<HTMLInputElement>(null);
  const take = (): void => {
    const pasted = readPasted(field.current?.value ?? '', new URL(base, location.href).href);
    switch (pasted.kind) {
      case 'simulation':
      case 'case':
        add({ ...pasted, heading: said.newHeading[pasted.kind], notes: '' });
        break;
      // What was pasted stays, to be mended.
      case 'page':
        wrong.value = said.linkFaults.page(controls);
        return;
      default:
        wrong.value = said.linkFaults[pasted.kind];
        return;
    }
    wrong.value = '';
    if (field.current) field.current.value = '';
  };
  return (
    <div>
      <label for="own-link">{said.link}</label>
      <input
        ref={field}
        id="own-link"
        type="text"
        inputMode="url"
        autoComplete="off"
        aria-invalid={wrong.value !== ''}
        aria-describedby="own-link-how own-link-wrong"
        onInput={() => (wrong.value = '')}
      />
      <p id="own-link-how" class="muted">
        {said.linkHow(controls)}
      </p>
      <p id="own-link-wrong" class="field-error" role="alert">
        {wrong.value}
      </p>
      <button type="button" class="quiet" onClick={take}>
        {said.linkGo}
      </button>
    </div>
  );
}

function FromBank({ base, site, add }: Pick<AddSceneProps, 'base' | 'site' | 'add'>) {
  const system = useUnits();
  const lesson = useSignal('');
  const votes = useSignal<readonly Asked[] | 'loading' | 'failed'>([]);
  const chosen = useSignal('');
  const choose = async (id: string): Promise<void> => {
    lesson.value = id;
    if (id === '') {
      votes.value = [];
      return;
    }
    votes.value = 'loading';
    const { votesOf } = await import('./load-questions.ts');
    const came = await votesOf(base, id);
    if (lesson.peek() !== id) return;
    votes.value = came ?? 'failed';
    chosen.value = came?.[0]?.id ?? '';
  };
  const now = votes.value;
  return (
    <div>
      <label for="own-lesson">{said.lesson}</label>
      <select
        id="own-lesson"
        value={lesson.value}
        onChange={({ currentTarget }) =>
          void choose(currentTarget.value).catch(() => (votes.value = 'failed'))
        }
      >
        <option value="">{said.choose}</option>
        {site.lessons.map(({ id, title }) => (
          <option key={id} value={id}>
            {title}
          </option>
        ))}
      </select>
      <p role="status">
        {now === 'loading' && said.loading}
        {now === 'failed' && said.failed}
        {Array.isArray(now) && now.length === 0 && lesson.value !== '' && said.noVotes}
      </p>
      {typeof now !== 'string' && now.length > 0 && (
        <>
          <label for="own-question">{said.question}</label>
          <select
            id="own-question"
            value={chosen.value}
            onChange={({ currentTarget }) => (chosen.value = currentTarget.value)}
          >
            {now.map(({ id, stem }) => (
              <option key={id} value={id}>
                {passageText(stem, system)}
              </option>
            ))}
          </select>
          <p>
            <button
              type="button"
              class="quiet"
              onClick={() =>
                add({
                  kind: 'question',
                  heading: said.newHeading.question,
                  lesson: lesson.value,
                  id: chosen.value,
                  notes: '',
                })
              }
            >
              {said.questionGo}
            </button>
          </p>
        </>
      )}
    </div>
  );
}
