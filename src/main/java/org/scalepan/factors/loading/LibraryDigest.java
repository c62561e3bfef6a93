package org.scalepan.factors.loading;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.scalepan.cite.CslJson;
import org.scalepan.cite.Reference;
import org.scalepan.factors.ReferenceFarm;
import org.scalepan.factors.table.Row;
import org.scalepan.factors.table.Table;

/** The digest of a library's content, independent of quoting, line ends and the order of files. */
public final class LibraryDigest {
    private static final int HEX_DIGITS = 16;
    private static final char CELL = '\u001F';
    private static final char ROW = '\u001E';

    private LibraryDigest() {}

    public static String of(Map<String, Table> tables, List<Reference> references, List<ReferenceFarm> farms) {
        MessageDigest sha;
        try {
            sha = MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every JDK has SHA-256", e);
        }
        new TreeMap<>(tables).values().forEach(table -> {
            StringBuilder text = new StringBuilder(table.schema().path()).append(ROW);
            for (Row row : table.rows()) {
                table.schema()
                        .fields()
                        .forEach(field -> text.append(row.cell(field.name())).append(CELL));
                text.append(ROW);
            }
            sha.update(text.toString().getBytes(StandardCharsets.UTF_8));
        });
        sha.update(CslJson.write(references).toString().getBytes(StandardCharsets.UTF_8));
        farms.stream()
                .sorted(Comparator.comparing(ReferenceFarm::id))
                .forEach(farm -> sha.update((farm + "" + ROW).getBytes(StandardCharsets.UTF_8)));
        return HexFormat.of().formatHex(sha.digest()).substring(0, HEX_DIGITS);
    }
}
