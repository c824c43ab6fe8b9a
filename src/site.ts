/** What the trade writes on the work order. */
export const siteName = 'Slips When Hot';

export interface Place {
  readonly path: string;
  readonly title: string;
}

export const places: readonly Place[] = [
  { path: '/course/', title: 'Course' },
  { path: '/practise/', title: 'Practise' },
  { path: '/measure/', title: 'Measure' },
  { path: '/model/', title: 'How the model works' },
  { path: '/glossary/', title: 'Glossary' },
  { path: '/sources/', title: 'Sources' },
];
