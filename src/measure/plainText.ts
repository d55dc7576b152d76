const VULGAR: Readonly<Record<string, string>> = {
  '¼': '1/4',
  '½': '1/2',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
  '⅓': '1/3',
  '⅔': '2/3',
};

/**
 * Text with the marks that keyboards, phones and word processors put in brought back to plain ones:
 * curly and prime marks to `'` and `"`, one-character fractions to `n/d`, every dash to `-`, every space
 * to one blank.
 *
 * @example plainText('8′ 2¼″') //=> "8' 2 1/4\""
 */
export function plainText(text: string): string {
  return text
    .replace(/[¼½¾⅛⅜⅝⅞⅓⅔]/g, (mark) => ` ${VULGAR[mark]}`)
    .replace(/[⁄∕]/g, '/')
    .replace(/[\u2018\u2019\u2032\u02b9\u00b4`]/g, "'")
    .replace(/[\u201c\u201d\u2033\u02ba]|''/g, '"')
    .replace(/[\u2010-\u2015\u2212]/g, '-')
    .replace(/[\s\u00a0\u2009\u202f]+/g, ' ')
    .trim();
}
