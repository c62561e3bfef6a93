package org.scalepan.literature;

import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.scalepan.factors.Library;

/** The year that ages are counted to: the library's own, so that an answer does not change with the calendar. */
final class LibraryYear {
    private static final Pattern YEAR = Pattern.compile("^(\\d{4})\\b.*");

    private LibraryYear() {}

    static OptionalInt of(Library library) {
        Matcher matcher = YEAR.matcher(library.version().version());
        return matcher.matches() ? OptionalInt.of(Integer.parseInt(matcher.group(1))) : OptionalInt.empty();
    }
}
