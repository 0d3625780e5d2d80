import type { FailureEntry } from './failureEntry.ts';

/** What may stand between a phone or tablet and the program. */
export const deviceFailures = {
  'not-let-in': {
    sentence: 'This device is not let in.',
    remedy: 'On the machine that runs Stonetone open Phones, and type the code that it shows there.',
  },
  'this-machine-only': {
    sentence: 'This is done on the machine that runs Stonetone, not on a phone or tablet.',
    remedy: 'Go to that machine; everything that happens at stone, press and proofs can be done here.',
  },
  'code-wrong': {
    sentence: 'That is not the code.',
    remedy:
      'Look at the other screen and type all six digits again; {left} more tries, then it needs a new code.',
  },
  'code-over': {
    sentence: 'No code holds any more: it was used, its time is over, or it was tried too often.',
    remedy: 'Ask for a new code on the machine that runs Stonetone, under Phones.',
  },
  'tries-too-many': {
    sentence: 'Too many codes were tried.',
    remedy: 'Wait {minutes} minutes, then ask for a new code and type it once.',
  },
  'network-closed': {
    sentence: 'No phone can reach this machine: {why}.',
    remedy: 'Have the machine on the network of the room, and start the program with --lan.',
  },
  'address-not-here': {
    sentence: 'The address {address} is none of this machine.',
    remedy: 'Leave --address out to use all private addresses, or name one that this machine has.',
  },
  'certificate-unusable': {
    sentence: 'The certificate {file} cannot be used: {why}.',
    remedy:
      'Give a PEM certificate with --certificate and its unlocked PEM key with --key, or --certificate self.',
  },
} as const satisfies Record<string, FailureEntry>;
