/**
 * The content-security policy of the page, as the text of its meta tag.
 *
 * Scripts run from the page's own files alone, or, in the one file, when their hash is named; nothing made from a
 * string runs. Inline styles stay allowed because charts carry a style element and style attributes of their own.
 */
export function contentPolicy(scriptSource: string): string {
  return [
    "default-src 'none'",
    `script-src ${scriptSource}`,
    "style-src 'self' 'unsafe-inline'",
    "img-src 'self' data: blob:",
    "font-src 'self' data:",
    "worker-src 'self' blob:",
    "connect-src 'self' data: blob:",
    "manifest-src 'self'",
    "base-uri 'none'",
    "form-action 'none'",
  ].join("; ");
}
