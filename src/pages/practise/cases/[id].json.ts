/** One file for each written case. Its page fetches it when somebody opens the case. */
import type { APIRoute, GetStaticPaths } from 'astro';
import { caseFile } from '../../../cases/case-file.ts';
import { writtenCases, type WrittenCase } from '../../../cases/written.ts';
import { source } from '../../../language/languages.ts';
import { lessonsIn } from '../../../lessons/written.ts';
import type { CasePageFile } from '../../../practice/bench-case.ts';

export const getStaticPaths = (() => {
  const lessons = lessonsIn(source);
  return writtenCases().map((written) => ({
    params: { id: written.id },
    props: { written, lesson: lessons.find(({ id }) => id === written.lesson) },
  }));
}) satisfies GetStaticPaths;

interface Props {
  readonly written: WrittenCase;
  readonly lesson: ReturnType<typeof lessonsIn>[number] | undefined;
}

export const GET: APIRoute<Props> = ({ props: { written, lesson } }) => {
  const next = lesson ? { href: `/lessons/${lesson.id}/`, title: lesson.title } : null;
  const file: CasePageFile = { ...caseFile(written), next };
  return new Response(JSON.stringify(file), { headers: { 'content-type': 'application/json' } });
};
