package org.scalepan.web.server;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;
import org.scalepan.factors.loading.LibraryLoad;
import org.scalepan.factors.loading.LibraryLoader;

/**
 * A cached comparison, compared with constant bytes of the same length from the same server without our code: responses per second and
 * times in microseconds, alternating, so that other load affects both.
 */
public final class CachedLoad {
    private static final String COMPARISON = "/v1/comparison?products=mealworm,house-cricket&against=beef";
    private static final int CONNECTIONS = 4;
    private static final long ROUND_NANOSECONDS = 2_000_000_000;

    private CachedLoad() {}

    private record Round(double perSecond, long median, long p99) {}

    /** @param args rounds */
    public static void main(String[] args) throws IOException {
        int rounds = args.length > 0 ? Integer.parseInt(args[0]) : 7;
        int[] length = {0};
        try (WebServer server = new WebServer(((LibraryLoad.Loaded) LibraryLoader.bundled()).library())) {
            server.jetty().insertHandler(new Constant(length));
            server.start("127.0.0.1", 0);
            try (KeepAliveConnection first = new KeepAliveConnection(server.port(), COMPARISON)) {
                length[0] = first.ask();
            }
            List<Round> constant = new ArrayList<>();
            List<Round> cached = new ArrayList<>();
            for (int round = 0; round < rounds + 2; round++) {
                constant.add(round(server.port(), "/constant"));
                cached.add(round(server.port(), COMPARISON));
            }
            // The first two rounds warm up.
            print("constant", constant.subList(2, constant.size()));
            print("cached", cached.subList(2, cached.size()));
            double[] ratios = new double[rounds];
            for (int round = 0; round < rounds; round++) {
                ratios[round] = cached.get(round + 2).perSecond / constant.get(round + 2).perSecond;
            }
            System.out.printf("ratio %.2f%n", middle(ratios));
        }
    }

    private static void print(String name, List<Round> rounds) {
        System.out.printf(
                "%s %.0f/s p50 %.0f us p99 %.0f us%n",
                name,
                middle(rounds.stream().mapToDouble(Round::perSecond).toArray()),
                middle(rounds.stream().mapToDouble(Round::median).toArray()) / 1000,
                middle(rounds.stream().mapToDouble(Round::p99).toArray()) / 1000);
    }

    private static double middle(double[] values) {
        Arrays.sort(values);
        return values[values.length / 2];
    }

    private static Round round(int port, String path) {
        long start = System.nanoTime();
        List<CompletableFuture<long[]>> clients = new ArrayList<>();
        for (int i = 0; i < CONNECTIONS; i++) {
            clients.add(CompletableFuture.supplyAsync(() -> times(port, path, start), task -> new Thread(task).start()));
        }
        long[] all = clients.stream()
                .flatMapToLong(client -> Arrays.stream(client.join()))
                .sorted()
                .toArray();
        return new Round(
                all.length * 1e9 / ROUND_NANOSECONDS, all[all.length / 2], all[(int) (all.length * 0.99)]);
    }

    private static long[] times(int port, String path, long start) {
        long[] times = new long[1024];
        int count = 0;
        try (KeepAliveConnection connection = new KeepAliveConnection(port, path)) {
            for (long now = System.nanoTime(); now - start < ROUND_NANOSECONDS; ) {
                connection.ask();
                long then = System.nanoTime();
                times = count < times.length ? times : Arrays.copyOf(times, 2 * count);
                times[count++] = then - now;
                now = then;
            }
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
        return Arrays.copyOf(times, count);
    }

    /** Constant bytes, of the length of the first request. */
    private static final class Constant extends Handler.Wrapper {
        private final int[] length;

        Constant(int[] length) {
            this.length = length;
        }

        @Override
        public boolean handle(Request request, Response response, Callback callback) throws Exception {
            if (!request.getHttpURI().getPath().equals("/constant")) {
                return super.handle(request, response, callback);
            }
            response.getHeaders().put(HttpHeader.CONTENT_TYPE, "application/json");
            response.getHeaders().put(HttpHeader.CONTENT_LENGTH, length[0]);
            response.write(true, ByteBuffer.wrap(new byte[length[0]]), callback);
            return true;
        }
    }
}
