import type { words as en } from './words.en.ts';

export const words: typeof en = {
  pistonSpring:
    'El fluido empuja el pistón hacia la derecha y el resorte lo empuja de regreso. Cada flecha está en la cara que empuja, y las tres van a la misma escala.',
  clutchReleased:
    'Suelto: el resorte mantiene el pistón atrás y los discos giran libres. Los espacios entre los discos se dibujan más grandes de lo que son.',
  clutchApplied: 'Aplicado: el pistón aprieta los discos, y el tambor y la maza giran juntos.',
  transferSealWhole:
    'Un sello de paso entero lleva el fluido del cuerpo de válvulas a la caja sin perder nada.',
  transferSealSplit:
    'El mismo sello, rajado, con el fluido caliente en ralentí. Lo que se escapa corre por la junta y regresa al cárter. La grieta se dibuja mucho más grande de lo que es, en el sello y bajo la lupa.',
  pumpRegulator:
    'Una transmisión sana en ralentí caliente. La bomba alimenta la línea, y lo que la línea no necesita sale por el regulador. Aquí no se dibujan los juegos.',
  spoolValve:
    'Una válvula de carrete trabajando; esta alimenta un embrague que ya está casi lleno. El mando empuja un extremo, la presión del embrague y el resorte empujan el otro, y los bordes abren el paso a la línea o a la descarga.',
  hydraulicPath:
    'Todo el camino, del cárter al embrague, con el embrague delantero aplicado. Es un mapa: los tamaños y las distancias no van a escala.',
  airRig:
    'Aire en un circuito sano, mojado. Lo que entra por el orificio es lo que se escapa por los anillos, y el manómetro conserva el resto. El camino al tambor está acortado y falta la mitad de abajo.',
  panLevel:
    'Un solo llenado, y no falta nada: en la ventana queda entre las marcas, frío queda abajo de MIN. El cárter es inventado, y las alturas se dibujan más grandes que los anchos.',
  sealingRings:
    'Dos anillos pasan el fluido de la camisa fija a la flecha que gira. El embrague está lleno, así que lo que todavía corre es lo que pasa por los anillos. El espacio de cada anillo se dibuja mucho más grande de lo que es.',
};
