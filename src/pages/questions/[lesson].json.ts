/** One file for each lesson that has questions. The page fetches it when the reader presses start. */
import type { APIRoute, GetStaticPaths } from 'astro';
import { questionBank, questionFile } from '../../lessons/question-bank.ts';

export const getStaticPaths = (() =>
  [...new Set(questionBank().map(({ lesson }) => lesson))].map((lesson) => ({
    params: { lesson },
  }))) satisfies GetStaticPaths;

export const GET: APIRoute = ({ params }) =>
  new Response(questionFile(params['lesson'] ?? ''), {
    headers: { 'content-type': 'application/json' },
  });
