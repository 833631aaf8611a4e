/** One digest for everything that must be the same on every machine. */
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import canonicalize from 'canonicalize';

/**
 * SHA-256 (FIPS 180-4) of the value's canonical JSON (RFC 8785), as 64 small hex figures.
 * @throws RangeError when the value has no JSON form.
 */
export function digestOf(value: unknown): string {
  const text = canonicalize(value);
  if (text === undefined) throw new RangeError('This value has no JSON form, so it has no digest.');
  return bytesToHex(sha256(utf8ToBytes(text)));
}
