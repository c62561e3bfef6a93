package org.scalepan.web.http;

import java.io.ByteArrayOutputStream;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.concurrent.TimeoutException;
import java.util.function.IntConsumer;
import org.eclipse.jetty.http.HttpException;
import org.eclipse.jetty.http.HttpStatus;
import org.scalepan.input.FieldError;

/**
 * A request body with a limit. Transport errors, such as a premature end or invalid chunks, are the client's and become a 4xx problem;
 * otherwise they would look like a server error.
 */
public final class BoundedInput extends FilterInputStream {
    private static final int BLOCK = 8_192;

    BoundedInput(InputStream in) {
        super(in);
    }

    /**
     * Reads the whole body; refuses it as soon as it exceeds the limit.
     *
     * @param taking called with the number of bytes of each block before it is stored; may refuse it
     */
    byte[] upTo(int most, IntConsumer taking) {
        ByteArrayOutputStream whole = new ByteArrayOutputStream();
        byte[] block = new byte[BLOCK];
        for (int read = read(block, 0, BLOCK); read >= 0; read = read(block, 0, BLOCK)) {
            if (whole.size() + read > most) {
                throw tooLong("The body is too long", most);
            }
            taking.accept(read);
            whole.write(block, 0, read);
        }
        return whole.toByteArray();
    }

    /** The refusal of a body beyond the limit, which names the limit. */
    public static ProblemException tooLong(String title, long most) {
        return new ProblemException(Problem.plain(
                413,
                "refused",
                title,
                "a body may have at most " + most / 1_048_576 + " MB; send less at once, or in parts"));
    }

    @Override
    public int read() {
        try {
            return super.read();
        } catch (IOException | RuntimeException e) {
            throw broken(e);
        }
    }

    @Override
    public int read(byte[] block, int from, int length) {
        try {
            return super.read(block, from, length);
        } catch (IOException | RuntimeException e) {
            throw broken(e);
        }
    }

    private static ProblemException broken(Exception fault) {
        for (Throwable cause = fault; cause != null; cause = cause.getCause()) {
            boolean slow = cause instanceof TimeoutException
                    || (cause instanceof HttpException http && http.getCode() == HttpStatus.REQUEST_TIMEOUT_408);
            if (slow) {
                return new ProblemException(Problem.plain(
                        HttpStatus.REQUEST_TIMEOUT_408,
                        "too-slow",
                        "The body comes too slowly",
                        "the body must come at " + Limits.SLOWEST_SENDING + " bytes a second or faster"));
            }
        }
        return new ProblemException(Problem.badBody(List.of(FieldError.at(
                "", "the body ended too early or is not framed as HTTP asks for", List.of(), List.of()))));
    }
}
