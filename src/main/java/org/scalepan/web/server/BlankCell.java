package org.scalepan.web.server;

import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import org.scalepan.web.compare.CellRoutes;
import org.scalepan.web.http.Answer;
import org.scalepan.web.http.Problem;

/** The address of a spreadsheet cell with a name left blank: no route has it, but a cell still wants one line of text. */
final class BlankCell {
    private static final Map<String, String> ADDRESSES = Map.of(
            "/v1/value", "/v1/value/{indicator}/{product}",
            "/v1/ratio", "/v1/ratio/{indicator}/{product}/{reference}");

    private BlankCell() {}

    /** What is missing; empty for any other address. */
    static Optional<String> words(String path) {
        return ADDRESSES.keySet().stream()
                .filter(start -> path.equals(start) || path.startsWith(start + "/"))
                .findFirst()
                .map(start -> "a name is missing in the address, which is " + ADDRESSES.get(start));
    }

    static void answer(Context context, Problem problem) {
        context.status("200".equals(context.queryParam(CellRoutes.ON_ERROR)) ? 200 : problem.status());
        SecurityHeaders.set(context::header, Answer.TEXT, "");
        context.contentType(Answer.TEXT);
        context.result(problem.line().getBytes(StandardCharsets.UTF_8));
    }
}
