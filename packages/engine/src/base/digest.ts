/**
 * A digest of a set of strings that does not depend on their order: two independent 32-bit hashes of each (FNV-1a and a
 * multiplicative one) added up. It guards against mistakes, not against malice; the checker reruns the set anyway.
 */
export class SetDigest {
  private a = 0;
  private b = 0;

  add(text: string): void {
    let x = 0x811c9dc5;
    let y = 0x9747b28c;
    for (let i = 0; i < text.length; i++) {
      const c = text.charCodeAt(i);
      x = Math.imul(x ^ c, 0x01000193);
      y = Math.imul(y ^ (c + i), 0x85ebca6b);
      y ^= y >>> 13;
    }
    this.a = (this.a + (x >>> 0)) >>> 0;
    this.b = (this.b + (y >>> 0)) >>> 0;
  }

  hex(): string {
    return this.a.toString(16).padStart(8, '0') + this.b.toString(16).padStart(8, '0');
  }
}
