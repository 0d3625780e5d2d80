import { createPrivateKey, X509Certificate } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import type { NetworkCertificate } from '../../records/device.ts';
import type { CertificateFiles, NetworkFiles } from '../../store/files/networkFiles.ts';
import { makeCertificate, stillServes } from './makeCertificate.ts';

/** Where the certificate comes from: made here, or two PEM files. */
export type CertificateWish = 'self' | { readonly certificate: string; readonly key: string };

/** A certificate with its key, ready to be shown to phones. */
export interface ReadyCertificate extends CertificateFiles {
  readonly told: NetworkCertificate;
}

/**
 * The certificate that was wished for. One made here is kept in the data folder and made anew only where it does not name
 * all `addresses` or ends soon, so that its fingerprint stays.
 * @returns `certificate-unusable` where a given one cannot be read, has ended, or its key is not its own
 */
export async function networkCertificate(
  files: NetworkFiles,
  wish: CertificateWish,
  addresses: readonly string[],
  now: Date,
): Promise<Result<ReadyCertificate>> {
  if (wish !== 'self') return givenCertificate(wish, now);
  const kept = await files.certificate();
  if (kept !== null && stillServes(kept.certificate, addresses, now)) return ok(ready(kept, true));
  const made = await makeCertificate(addresses, now);
  await files.keepCertificate(made);
  return ok(ready(made, true));
}

async function givenCertificate(
  wish: Exclude<CertificateWish, 'self'>,
  now: Date,
): Promise<Result<ReadyCertificate>> {
  const unusable = (why: string, file = wish.certificate) =>
    fail(failure('certificate-unusable', { file, why }));
  let file = wish.certificate;
  try {
    const certificate = await readFile(file, 'utf8');
    const read = new X509Certificate(certificate);
    file = wish.key;
    const key = await readFile(file, 'utf8');
    if (!read.checkPrivateKey(createPrivateKey(key)))
      return unusable('its key belongs to another certificate');
    if (Date.parse(read.validTo) <= now.getTime()) return unusable(`it ended on ${read.validTo}`);
    return ok(ready({ certificate, key }, false));
  } catch (error) {
    const why =
      error instanceof Error && 'code' in error && error.code === 'ENOENT'
        ? 'it is not there'
        : 'it cannot be read';
    return unusable(why, file);
  }
}

function ready(files: CertificateFiles, own: boolean): ReadyCertificate {
  const read = new X509Certificate(files.certificate);
  const until = new Date(read.validTo).toISOString();
  return { ...files, told: { fingerprint: read.fingerprint256, until, own } };
}
