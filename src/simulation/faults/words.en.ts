export const words = {
  fault: 'Fault',
  severity: 'How bad the fault is',
  healthy: 'healthy',
  worst: 'the worst there is',
  between: 'part way to the worst',
};
