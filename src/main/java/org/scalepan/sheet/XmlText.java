package org.scalepan.sheet;

/** Text that may stand in XML. */
public final class XmlText {
    private XmlText() {}

    /** The text with a blank in place of each character that XML forbids (XML 1.0, production 2). */
    public static String allowed(String text) {
        if (text.codePoints().allMatch(XmlText::isAllowed)) {
            return text;
        }
        StringBuilder allowed = new StringBuilder(text.length());
        text.codePoints().forEach(letter -> allowed.appendCodePoint(isAllowed(letter) ? letter : ' '));
        return allowed.toString();
    }

    private static boolean isAllowed(int letter) {
        return (letter >= ' ' && letter < 0xD800)
                || letter == '\t'
                || letter == '\n'
                || letter == '\r'
                || (letter >= 0xE000 && letter < 0xFFFE)
                || letter > 0xFFFF;
    }
}
