export const words = {
  lead: (p: { outside: string }) =>
    `Each kind of driving has a temperature of its own, where the fluid gives off as much heat as it takes in. At ${p.outside} outside:`,
  each: (p: { kind: string; temp: string }) => `${p.kind} ${p.temp}`,
  rest: 'Pulling is stop and go under load. Idling ends near where the engine’s coolant is held, since the cooler sits in it.',
  invented: (p: {
    capacity: string;
    degree: string;
    span: string;
    loss: string;
    exchange: string;
    coolant: string;
    idling: string;
    gentle: string;
    pulling: string;
  }) =>
    `All invented for the training transmission: ${p.capacity} to warm it by ${p.degree}, ${p.loss} given off when it is ${p.span} warmer than the air, ${p.exchange} exchanged when coolant and fluid are ${p.span} apart, coolant held at ${p.coolant}; idling makes ${p.idling} of heat, gentle driving ${p.gentle}, pulling ${p.pulling}.`,
  command:
    'Where the crack lets go comes from “Does the clutch hold?”, with the command held fixed at its idle values. A controller that asks for more as you give throttle pulls away hotter than this.',
};
