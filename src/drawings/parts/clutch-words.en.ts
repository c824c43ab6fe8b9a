/** In a clutch, in the drawings of its pack and of its piston. */
export const words = { piston: 'Piston', spring: 'Return spring' };
