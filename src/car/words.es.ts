import type { words as en } from './words.en.ts';

const circuits = { forward: 'Avance', reverse: 'Reversa', high: 'Alta' };

export const words: typeof en = {
  trainingTransmission: 'transmisión de práctica',
  faults: {
    transferSeal: 'Sello de paso partido',
    hardLip: 'Labio del pistón endurecido',
    clutchControl: 'La válvula de control del embrague se cae en caliente',
    sealingRings: 'Anillos de sellado gastados',
    pistonSeal: 'Sello del pistón cortado',
    pumpWear: 'Bomba gastada',
    regulatorBore: 'Orificio del regulador gastado',
    pressureControl: 'Control de presión bajo',
    filter: 'Filtro tapado',
    lowFluid: 'Nivel de aceite bajo',
    thinFluid: 'Aceite vencido o equivocado',
    feedRestriction: 'Alimentación restringida, o cable desajustado',
    openPort: 'Falta un tapón o un balín de retención',
    frictionWear: 'Discos gastados',
    turbineSensor: 'Señal falsa de velocidad de turbina',
  },
  circuits,
  ranges: { park: 'Park', reverse: 'Reversa', neutral: 'Neutral', drive: 'Drive' },
  clutches: {
    forward: 'embrague de avance',
    reverse: 'embrague de reversa',
    high: 'embrague de alta',
  },
  taps: { line: 'Línea', ...circuits },
  demands: {
    standing: 'Detenido con cambio puesto',
    gentle: 'Arranque suave',
    firm: 'Arranque fuerte',
  },
  verdicts: { ok: 'bien', low: 'baja', gone: 'demasiado baja para agarrar' },
  shopTests: {
    'cold-idle': 'Frío, ralentí',
    'cold-load': 'Frío, con carga',
    'hot-idle': 'Caliente, ralentí',
    'hot-load': 'Caliente, con carga',
  },
  fluids: {
    standard: 'Estándar',
    'low-viscosity': 'Baja viscosidad',
    'ultra-low': 'Viscosidad ultrabaja',
  },
  events: {
    'range selected': 'Rango seleccionado',
    'engagement finished': 'Acoplamiento terminado',
    'engagement not finished': 'Acoplamiento sin terminar',
    'pressure raised': 'Presión aumentada',
    'code stored': 'Código guardado',
    'clutch vented': 'Embrague vaciado',
    'neutral commanded': 'Neutral ordenado',
    'park commanded': 'Park ordenado',
    'default gear held': 'Un solo cambio sostenido',
    'clutch filled': 'Embrague lleno',
    'turbine stopped': 'Turbina detenida',
    'brake released': 'Freno suelto',
  },
};
