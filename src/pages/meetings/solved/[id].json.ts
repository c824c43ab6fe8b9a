/** What a simulation is handed that was solved when the site was built: in a lesson by its page, on the stage by this file. */
import type { APIRoute, GetStaticPaths } from 'astro';
import { simulations } from '../../../lessons/simulations.ts';
import { solvedFor } from './_solved.ts';

export const getStaticPaths = (() =>
  Object.values(simulations).map(({ id }) => ({ params: { id } }))) satisfies GetStaticPaths;

export const GET: APIRoute = ({ params }) =>
  new Response(JSON.stringify(solvedFor(params['id'] ?? '')), {
    headers: { 'content-type': 'application/json' },
  });
