import type { words as en } from './words.en.ts';

export const words: typeof en = {
  noScript:
    'Esta simulación necesita JavaScript, y aquí está apagado. La imagen muestra cómo empieza. Todo lo que enseña está también en el texto.',
  asleep:
    'Esta simulación no ha despertado: su programa no ha llegado. Recarga la página cuando tengas conexión. Mientras tanto, la imagen muestra cómo empieza.',
  onPaper:
    'Una simulación, impresa como estaba. Para moverla, abre la dirección que está arriba en esta página.',
  ran: 'Lo que pasó:',
  given: ({ label, value }) => (label.endsWith('?') ? `${label} ${value}` : `${label}: ${value}`),
  runWith: (givens) =>
    givens.endsWith('.') ? `En marcha con ${givens}` : `En marcha con ${givens}.`,
  ranOnPaper:
    'Una simulación, impresa al final de su marcha. Ponla en marcha antes de imprimir, y aquí sale tu resultado. Para moverla, abre la dirección que está arriba en esta página.',
};
