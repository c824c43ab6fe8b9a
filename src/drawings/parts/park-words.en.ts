/** From the lever or the controller to the park gear, in the drawing of the pawl and in those of range selection. */
export const words = {
  controller: 'Controller',
  holds: 'Park holds',
  out: 'Park is out',
  actuator: 'Park actuator',
  plate: 'Detent plate',
  cable: 'Cable',
  spring: 'Return spring',
  cone: 'Cone',
  pawl: 'Pawl',
  gear: 'Park gear',
};
