import { of, type Objective } from './objective.ts';

/** Of the lessons that exist in Spanish. */
export const objectives: readonly Objective[] = [
  ...of(
    'hot-fluid-thin-fluid',
    'hot-fluid',
    'Decir qué es la viscosidad cinemática y qué es la dinámica, y cuál de las dos manda en una fuga.',
    'Leer en los dos números publicados de un aceite qué tan delgado está a cualquier temperatura del rango.',
    'Comparar dos aceites por su índice de viscosidad.',
    'Decir qué le hace el aceite delgado a una fuga y a la bomba.',
  ),
];
