export const words = {
  title: 'Two filters of one shape, cut open',
  parts: { maker: ['*Maker’s part'], unknown: ['*Part of unknown origin'] },
  pleats: (p: { pleats: string }) => `*${p.pleats} pleats`,
  media: { maker: 'of felt', unknown: 'half the media' },
  seam: { maker: ['seam: no light'], unknown: ['seam: light', 'comes through'] },
  neck: { maker: ['neck seal', 'fills its bore'], unknown: ['neck seal', 'leaves a gap'] },
  mouth: 'mouth',
  describe: (p: { maker: string; unknown: string }) =>
    `Two filters cut open beside each other, with the same shell, the same neck and the same mouth. The maker’s part has ${p.maker} pleats, its seam lets no light out, and its neck seal fills the bore that it is pushed into. The part of unknown origin has ${p.unknown} pleats of the same depth, so half the media. Light comes through its seam, and its neck seal leaves a gap, where the pump would draw air.`,
};
