package org.scalepan.sheet;

import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A formula as people type it into an English Excel, without its equals sign: commas between arguments, {@code Sheet!A1} for a
 * cell of another sheet.
 */
public record Formula(String typed) {
    /** Functions that came after the file format of Excel was fixed, and carry a prefix in its files ([MS-XLSX], section 2.2.2). */
    private static final Set<String> LATER = Set.of("WEBSERVICE", "FILTERXML", "ENCODEURL", "NUMBERVALUE");
    /** Functions that Calc keeps under the name of the vendor who brought them (OpenFormula has none of them). */
    private static final Set<String> OF_A_VENDOR = Set.of("WEBSERVICE", "FILTERXML", "ENCODEURL");

    private static final Pattern PART = Pattern.compile("(?<text>\"(?:[^\"]|\"\")*\")"
            + "|(?<function>[A-Z][A-Z0-9.]*)\\("
            + "|(?:(?<sheet>[A-Za-z][A-Za-z0-9]*)!)?(?<cell>\\$?[A-Z]{1,2}\\$?[0-9]+)"
            + "|(?<comma>,)");

    /** As a file of Excel holds it (ECMA-376, part 1, section 18.17). */
    public String excel() {
        return PART.matcher(typed).replaceAll(part -> {
            String function = part.group(2);
            return Matcher.quoteReplacement(
                    function != null && LATER.contains(function) ? "_xlfn." + part.group() : part.group());
        });
    }

    /** As a file of Calc holds it (OpenDocument 1.3, part 4). */
    public String calc() {
        Matcher matcher = PART.matcher(typed);
        StringBuilder out = new StringBuilder("of:=");
        while (matcher.find()) {
            matcher.appendReplacement(out, Matcher.quoteReplacement(calc(matcher)));
        }
        return matcher.appendTail(out).toString();
    }

    private static String calc(Matcher part) {
        String function = part.group("function");
        String cell = part.group("cell");
        if (function != null) {
            return (OF_A_VENDOR.contains(function) ? "COM.MICROSOFT." : "") + function + "(";
        }
        if (cell != null) {
            String sheet = part.group("sheet");
            return "[" + (sheet == null ? "" : "$" + sheet) + "." + cell + "]";
        }
        return part.group("comma") != null ? ";" : part.group();
    }
}
