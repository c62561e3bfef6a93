package org.scalepan.factors.table;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * A CSV file as it was read: what its rows share. Where a cell begins is located only when a fault must be reported, because nearly all
 * rows have none.
 */
public final class CsvPage {
    private static final Pattern LINE_END = Pattern.compile("\r\n|\n|\r");

    private final String file;
    private final Map<String, Integer> columns = new HashMap<>();
    private final String text;

    /**
     * @param file how the file is named to a person
     * @param header the names of its columns
     * @param text the whole file
     */
    public CsvPage(String file, List<String> header, String text) {
        this.file = file;
        this.text = text;
        header.forEach(name -> columns.put(name, columns.size()));
    }

    String file() {
        return file;
    }

    public boolean has(String column) {
        return columns.containsKey(column);
    }

    /** The index of a column, or -1 when the file has none of this name. */
    int index(String column) {
        return columns.getOrDefault(column, -1);
    }

    /** The names of the columns, in the order of the file. */
    List<String> header() {
        return columns.entrySet().stream()
                .sorted(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .toList();
    }

    Fault fault(long line, String column, String what, String right) {
        return new Fault(file, line, start(line, column), what, right);
    }

    /** The character (from 1) at which a cell begins; 1 for a column that the line does not reach. */
    int start(long line, String column) {
        List<Integer> starts =
                cellStarts(text.lines().skip(line - 1).findFirst().orElse(""));
        int index = index(column);
        return index >= 0 && index < starts.size() ? starts.get(index) : 1;
    }

    public static String[] lines(String text) {
        return LINE_END.split(text, -1);
    }

    /** The character (from 1) at which each cell of a raw line begins; commas inside quotes do not separate cells. */
    private static List<Integer> cellStarts(String line) {
        List<Integer> starts = new ArrayList<>();
        starts.add(1);
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '"') {
                quoted = !quoted;
            } else if (c == ',' && !quoted) {
                starts.add(i + 2);
            }
        }
        return starts;
    }
}
