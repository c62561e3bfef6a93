package org.scalepan.web.bulk;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.net.InetSocketAddress;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.SocketChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.scalepan.factors.loading.LibraryLoad;
import org.scalepan.factors.loading.LibraryLoader;
import org.scalepan.web.server.WebServer;

/** Rows a second through POST /v1/footprints compared with reading and writing the same file, alternating. */
public final class BulkTimes {
    private BulkTimes() {}

    /** @param args rows; rounds; with "file" as third the file is only written, to the path that follows */
    public static void main(String[] args) throws IOException, InterruptedException {
        int rows = Integer.parseInt(args[0]);
        int rounds = Integer.parseInt(args[1]);
        try (WebServer server = new WebServer(((LibraryLoad.Loaded) LibraryLoader.bundled()).library())) {
            server.start("127.0.0.1", 0);
            HttpClient client = HttpClient.newHttpClient();
            URI base = URI.create("http://127.0.0.1:" + server.port());
            String template = client.send(
                            HttpRequest.newBuilder(base.resolve("/v1/footprints/template.csv"))
                                    .build(),
                            HttpResponse.BodyHandlers.ofString())
                    .body();
            if (args.length > 3) {
                write(template, rows, Path.of(args[3]));
                return;
            }
            Path file = Files.createTempFile("rows", ".csv");
            write(template, rows, file);
            double[] service = new double[rounds];
            double[] plain = new double[rounds];
            double[] ratios = new double[rounds];
            for (int round = -1; round < rounds; round++) {
                double ours = rows / seconds(() -> post(server.port(), file));
                double theirs = rows / seconds(() -> copy(file));
                if (round >= 0) {
                    service[round] = ours;
                    plain[round] = theirs;
                    ratios[round] = ours / theirs;
                }
            }
            Files.delete(file);
            System.out.printf(
                    "service %.0f rows/s, plain %.0f rows/s, ratio %.3f%n", middle(service), middle(plain), middle(ratios));
        }
    }

    private static void write(String template, int rows, Path file) throws IOException {
        List<String> lines = template.lines().toList();
        try (var out = Files.newBufferedWriter(file)) {
            out.write(lines.get(0) + "\r\n");
            for (int row = 0; row < rows; row++) {
                out.write(lines.get(1 + row % (lines.size() - 1)) + "\r\n");
            }
        }
    }

    /** Over a plain socket: a full HTTP client would use half of a machine with two processors. */
    private static void post(int port, Path file) throws IOException {
        try (FileChannel rows = FileChannel.open(file);
                SocketChannel connection = SocketChannel.open(new InetSocketAddress("127.0.0.1", port))) {
            String head = "POST /v1/footprints HTTP/1.1\r\nHost: 127.0.0.1\r\nConnection: close\r\nContent-Type: text/csv\r\n"
                    + "Content-Length: " + rows.size() + "\r\n\r\n";
            connection.write(ByteBuffer.wrap(head.getBytes(StandardCharsets.US_ASCII)));
            for (long sent = 0; sent < rows.size(); ) {
                sent += rows.transferTo(sent, rows.size() - sent, connection);
            }
            ByteBuffer answer = ByteBuffer.allocateDirect(1 << 16);
            byte[] status = new byte[12];
            connection.read(answer);
            answer.flip().get(status);
            if (!new String(status, StandardCharsets.US_ASCII).equals("HTTP/1.1 200")) {
                throw new IOException("answered " + new String(status, StandardCharsets.US_ASCII));
            }
            while (connection.read(answer.clear()) >= 0) {}
        }
    }

    private static void copy(Path file) throws IOException {
        try (CsvReader<de.siegmar.fastcsv.reader.CsvRecord> in = CsvReader.builder().ofCsvRecord(file);
                CsvWriter out = CsvWriter.builder().build(new java.io.OutputStreamWriter(
                        OutputStream.nullOutputStream(), StandardCharsets.UTF_8))) {
            in.forEach(record -> out.writeRecord(record.getFields()));
        }
    }

    private interface Work {
        void run() throws IOException, InterruptedException;
    }

    private static double seconds(Work work) throws IOException, InterruptedException {
        long start = System.nanoTime();
        work.run();
        return (System.nanoTime() - start) / 1e9;
    }

    private static double middle(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }
}
