import { WordsText } from '../../widgets/retrieval/WordsText.tsx';
import type { ClassModel } from './model.ts';
import { words } from './words.en.ts';

const { title, about, none, missed, certain, lesson: readIt } = words.topics;

/** What the next meeting should be about, with the question that shows it. */
export function Topics({ model }: { readonly model: ClassModel }) {
  const topics = model.topics.value;
  const lessons = new Map(model.index.value?.lessons.map((one) => [one.id, one.title]));
  return (
    <section aria-labelledby="class-topics">
      <h2 id="class-topics">{title}</h2>
      <p class="muted">{about}</p>
      {topics.length === 0 ? (
        <p>{none}</p>
      ) : (
        <ol class="class-topics">
          {topics.map((topic) => {
            const asked = model.questions.value.get(topic.item);
            const counts = { missed: String(topic.missed), asked: String(topic.asked) };
            return (
              <li key={topic.concept}>
                {asked !== undefined && (
                  <p>
                    <WordsText words={asked.stem} />
                  </p>
                )}
                <p>
                  <strong>
                    {missed(counts)}
                    {topic.certain > 0 && certain({ certain: String(topic.certain) })}.
                  </strong>{' '}
                  {readIt}{' '}
                  <a href={`/lessons/${topic.lesson}/`}>
                    {lessons.get(topic.lesson) ?? topic.lesson}
                  </a>
                </p>
              </li>
            );
          })}
        </ol>
      )}
    </section>
  );
}
