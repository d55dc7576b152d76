const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/**
 * Text that can stand in an SVG as content or as an attribute's value; characters XML forbids are dropped.
 *
 * @example escapeXml('<script>1 & 2</script>') //=> '&lt;script&gt;1 &amp; 2&lt;/script&gt;'
 */
export function escapeXml(text: string): string {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what XML 1.0 forbids.
  const allowed = text.replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g, '');
  return allowed.replace(/[&<>"']/g, (char) => entities[char]!);
}
