/** The bank without its words, for whoever plans what to ask. */
import type { APIRoute } from 'astro';
import { bankIndex } from '../../lessons/bank-index.ts';

export const GET: APIRoute = () =>
  new Response(JSON.stringify(bankIndex()), { headers: { 'content-type': 'application/json' } });
