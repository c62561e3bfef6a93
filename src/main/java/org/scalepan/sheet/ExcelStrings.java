package org.scalepan.sheet;

import java.util.LinkedHashMap;
import java.util.Map;

/** The texts of a workbook, each of which is kept once (ECMA-376, part 1, section 18.4). */
final class ExcelStrings {
    /** Excel calls a file broken whose cell holds more. */
    private static final int MOST_TEXT = 32_767;

    private final Map<String, Integer> numbers = new LinkedHashMap<>();

    /** The number of a text. */
    int number(String text) {
        String kept = text.length() <= MOST_TEXT ? text : text.substring(0, MOST_TEXT - 1) + "…";
        Integer next = numbers.size();
        Integer known = numbers.putIfAbsent(kept, next);
        return known == null ? next : known;
    }

    byte[] part() {
        XmlPart part = new XmlPart().open("sst", "xmlns", ExcelFile.MAIN);
        numbers.keySet()
                .forEach(text -> part.open("si")
                        .open("t", "xml:space", "preserve")
                        .text(text)
                        .close()
                        .close());
        return part.bytes();
    }
}
