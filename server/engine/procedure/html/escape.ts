const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Text of a person made safe for element content and for quoted attributes; control signs become a visible mark. */
export const escaped = (text: string): string =>
  text
    .replace(/[&<>"']/g, (sign) => entities[sign]!)
    .replace(
      /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g,
      '\ufffd',
    );
