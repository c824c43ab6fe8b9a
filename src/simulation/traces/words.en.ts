export const words = {
  event: (p: { event: string; code: string }) => `${p.event}: ${p.code}`,
};
