import { X509Certificate } from 'node:crypto';
import { isIP } from 'node:net';
import type { CertificateFiles } from '../../store/files/networkFiles.ts';

/** How long a certificate of ours holds, days: from memory, some phones refuse longer ones than 398 days. */
const holdsDays = 397;
/** It is made anew once it holds for fewer days. */
const renewedDays = 30;
const dayMs = 86_400_000;

/** A certificate for these addresses that signs itself: elliptic curve P-256, SHA-256. */
export async function makeCertificate(addresses: readonly string[], now: Date): Promise<CertificateFiles> {
  // heavy, and asked for by few
  const { generate } = await import('selfsigned');
  const made = await generate([{ name: 'commonName', value: 'Stonetone' }], {
    keyType: 'ec',
    curve: 'P-256',
    algorithm: 'sha256',
    notBeforeDate: new Date(now.getTime() - dayMs),
    notAfterDate: new Date(now.getTime() + holdsDays * dayMs),
    extensions: [
      { name: 'basicConstraints', cA: false, critical: true },
      { name: 'keyUsage', digitalSignature: true, critical: true },
      { name: 'extKeyUsage', serverAuth: true },
      { name: 'subjectAltName', altNames: addresses.map((ip) => ({ type: 7, ip })) },
    ],
  });
  return { certificate: made.cert, key: made.private };
}

/** Whether a certificate of ours still serves: it names all these addresses and holds for a while yet. */
export function stillServes(certificate: string, addresses: readonly string[], now: Date): boolean {
  const read = new X509Certificate(certificate);
  const leftDays = (Date.parse(read.validTo) - now.getTime()) / dayMs;
  return (
    leftDays > renewedDays &&
    addresses.every((address) => isIP(address) > 0 && read.checkIP(address) !== undefined)
  );
}
