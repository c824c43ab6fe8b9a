import type { words as en } from './words.en.ts';

export const words: typeof en = {
  newer: 'Hay una versión nueva de este sitio. Recarga cuando te acomode.',
  reload: 'Recargar ahora',
  later: 'Después',
  closeOthers:
    'Este sitio está abierto en otra pestaña o ventana. Ciérrala primero, para no cortar lo que tengas ahí, y luego toca Recargar ahora.',
  closeAll:
    'La versión nueva no contestó. Cierra todas las pestañas de este sitio; la siguiente que abras ya la trae.',
};
