package org.scalepan.spark;

import java.io.BufferedReader;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.SplittableRandom;
import java.util.regex.Pattern;
import org.scalepan.AnswerLibrary;

/**
 * Writes invented rows for tests and measurements: the farms of the template with other amounts, and now and then a row that is wrong. A
 * row is a function of its number alone.
 */
public final class GeneratedRows {
    /** Columns whose amounts may be any; the others are shares, years and days. */
    private static final Pattern AMOUNT = Pattern.compile(".*(kg|kg_per_year|amount|heads|tonne_km|water_m3)");
    /** A prime, so that wrong rows fall on every farm of the template. */
    private static final long ONE_WRONG_IN = 101;

    private final List<String> header;
    private final List<String[]> farms;

    private GeneratedRows(List<String> lines) {
        this.header = List.of(lines.get(0).split(",", -1));
        this.farms = lines.stream().skip(1).map(line -> line.split(",", -1)).toList();
    }

    /** @param arguments how many rows; a folder to write them to; into how many files */
    public static void main(String[] arguments) throws IOException {
        GeneratedRows generated = new GeneratedRows(template());
        long rows = Long.parseLong(arguments[0]);
        long files = Long.parseLong(arguments[2]);
        Path folder = Files.createDirectories(Path.of(arguments[1]));
        for (long file = 0; file < files; file++) {
            Path path = folder.resolve(String.format(Locale.ROOT, "rows-%04d.csv", file));
            try (BufferedWriter out = Files.newBufferedWriter(path)) {
                out.write("id," + String.join(",", generated.header) + "\n");
                for (long row = rows * file / files + 1; row <= rows * (file + 1) / files; row++) {
                    out.write(row + "," + generated.row(row) + "\n");
                }
            }
        }
    }

    private static List<String> template() throws IOException {
        try (BufferedReader in = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(AnswerLibrary.class.getResourceAsStream("/footprints-template.csv")),
                StandardCharsets.UTF_8))) {
            return in.lines().toList();
        }
    }

    private String row(long number) {
        if (number % ONE_WRONG_IN == 0) {
            return number % 2 == 0 ? "insects,too short" : String.join(",", wrong());
        }
        SplittableRandom random = new SplittableRandom(number);
        String[] farm = farms.get((int) (number % farms.size()));
        List<String> cells = new ArrayList<>();
        for (int i = 0; i < header.size(); i++) {
            boolean varied = AMOUNT.matcher(header.get(i)).matches() && !farm[i].isEmpty();
            cells.add(varied ? varied(farm[i], random) : farm[i]);
        }
        return String.join(",", cells);
    }

    private List<String> wrong() {
        List<String> cells = new ArrayList<>(List.of(farms.get(0)));
        cells.set(header.indexOf("product"), "mealwurm");
        return cells;
    }

    private static String varied(String cell, SplittableRandom random) {
        double factor = 0.8 + 0.4 * random.nextDouble();
        return cell.matches("\\d+(\\.\\d+)?")
                ? String.format(Locale.ROOT, "%.3f", Double.parseDouble(cell) * factor)
                : cell;
    }
}
