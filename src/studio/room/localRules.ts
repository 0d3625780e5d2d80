/** Who decides: stands beside every figure of this folder. */
export const localRules = {
  air: 'An estimate only. Local codes, the safety data sheets, ventilation designed by somebody who may, and fit-tested protection come first; no figure here clears a room for anybody.',
  lift: 'A screening figure only. Local codes, a person trained in lifting work, and what a doctor told you come first.',
};
