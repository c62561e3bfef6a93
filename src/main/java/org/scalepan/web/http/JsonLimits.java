package org.scalepan.web.http;

import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;

/** Limits of a JSON text. The parser enforces them; its messages are translated here into terms of the request. */
final class JsonLimits extends StreamReadConstraints {

    private static final long serialVersionUID = 1L;

    JsonLimits() {
        super(Limits.DEPTH, -1, Limits.NUMBER_DIGITS, Limits.TEXT_CHARACTERS, Limits.NAME_CHARACTERS, Limits.TOKENS);
    }

    @Override
    public void validateNestingDepth(int depth) throws StreamConstraintsException {
        keep(
                depth <= Limits.DEPTH,
                "objects and lists in the body may lie at most " + Limits.DEPTH + " deep in each other");
    }

    @Override
    public void validateTokenCount(long count) throws StreamConstraintsException {
        keep(count <= Limits.TOKENS, "the body may have at most " + Limits.TOKENS + " names, values and brackets");
    }

    @Override
    public void validateFPLength(int length) throws StreamConstraintsException {
        validateIntegerLength(length);
    }

    @Override
    public void validateIntegerLength(int length) throws StreamConstraintsException {
        keep(
                length <= Limits.NUMBER_DIGITS,
                "a number in the body may have at most " + Limits.NUMBER_DIGITS + " digits");
    }

    @Override
    public void validateStringLength(int length) throws StreamConstraintsException {
        keep(
                length <= Limits.TEXT_CHARACTERS,
                "a text in the body may have at most " + Limits.TEXT_CHARACTERS + " characters");
    }

    @Override
    public void validateNameLength(int length) throws StreamConstraintsException {
        keep(
                length <= Limits.NAME_CHARACTERS,
                "a name in the body may have at most " + Limits.NAME_CHARACTERS + " characters");
    }

    private static void keep(boolean within, String limit) throws StreamConstraintsException {
        if (!within) {
            throw new StreamConstraintsException(limit);
        }
    }
}
