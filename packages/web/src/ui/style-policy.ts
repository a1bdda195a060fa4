// Some libraries (the editor above all) write style sheets by script. A page made of files cannot send a fresh nonce, so
// the page makes one itself, before any note is shown, and from then on the browser refuses every other inline style.
function narrowStyles(): string {
  const nonce = crypto.randomUUID();
  const told = document.createElement('meta');
  told.setAttribute('property', 'csp-nonce');
  told.nonce = nonce;
  document.head.append(told);
  // The development server writes styles of its own and knows no nonce.
  if (import.meta.env.PROD) {
    const policy = document.createElement('meta');
    policy.httpEquiv = 'Content-Security-Policy';
    policy.content = `style-src 'self' 'nonce-${nonce}'`;
    document.head.append(policy);
  }
  return nonce;
}

/** What a style sheet made by script must carry to be accepted; for the editor's `cspNonce`. */
export const styleNonce = narrowStyles();
