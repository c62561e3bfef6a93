package org.scalepan.web.bulk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class OrderedParallelTest {
    private static OrderedParallel.TaskSource<Integer> numbers(int count) {
        Iterator<Integer> numbers = IntStream.range(0, count).iterator();
        return () -> numbers.hasNext() ? Optional.of(numbers.next()) : Optional.empty();
    }

    private static long threads() {
        return Thread.getAllStackTraces().keySet().stream()
                .filter(thread -> thread.getName().equals("rows") && thread.isAlive())
                .count();
    }

    /** Some tasks take far longer than later ones. */
    private static int slowlySquared(int number) {
        if (number % 50 == 0) {
            try {
                Thread.sleep(5);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }
        return number * number;
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 8})
    void results_come_in_the_order_of_their_tasks_whichever_completes_first(int processors) throws IOException {
        List<Integer> results = new ArrayList<>();

        OrderedParallel.run(processors, numbers(1000), OrderedParallelTest::slowlySquared, results::add);

        assertEquals(IntStream.range(0, 1000).mapToObj(i -> i * i).toList(), results);
        assertNoThreadIsLeft();
    }

    @Test
    void no_task_gives_no_result() throws IOException {
        OrderedParallel.run(2, numbers(0), OrderedParallelTest::slowlySquared, unused -> {
            throw new AssertionError("a result of nothing");
        });
    }

    @Test
    void a_slow_consumer_limits_how_far_an_endless_source_is_read() {
        AtomicInteger taken = new AtomicInteger();
        List<Integer> ahead = new ArrayList<>();
        OrderedParallel.TaskSource<Integer> endless = () -> Optional.of(taken.getAndIncrement());

        assertThrows(
                IOException.class,
                () -> OrderedParallel.run(2, endless, number -> number, number -> {
                    ahead.add(taken.get() - number);
                    if (number == 200) {
                        throw new IOException("the client has left");
                    }
                }));

        assertTrue(ahead.stream().allMatch(tasks -> tasks <= 10), ahead::toString);
        assertNoThreadIsLeft();
    }

    @Test
    void an_exception_of_the_work_is_thrown_when_its_result_is_due() {
        List<Integer> results = new ArrayList<>();

        IllegalStateException thrown = assertThrows(
                IllegalStateException.class,
                () -> OrderedParallel.run(4, numbers(100), OrderedParallelTest::failing, results::add));

        assertEquals("task 40", thrown.getMessage());
        assertEquals(Stream.iterate(0, i -> i + 1).limit(40).toList(), results);
        assertNoThreadIsLeft();
    }

    /** A pool says that it has ended a moment before its last thread has. */
    private static void assertNoThreadIsLeft() {
        long until = System.nanoTime() + 5_000_000_000L;
        while (threads() > 0 && System.nanoTime() < until) {
            Thread.onSpinWait();
        }
        assertEquals(0, threads(), "no thread is left behind");
    }

    private static int failing(int number) {
        if (number == 40) {
            throw new IllegalStateException("task 40");
        }
        return number;
    }
}
