package org.scalepan.exchange.text;

import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;

/** Limits of a JSON text. The parser enforces them; its messages are translated here into terms of the request. */
final class JsonLimits extends StreamReadConstraints {

    private static final long serialVersionUID = 1L;

    JsonLimits() {
        super(
                TextLimits.DEPTH,
                -1,
                TextLimits.NUMBER_DIGITS,
                TextLimits.TEXT_CHARACTERS,
                TextLimits.NAME_CHARACTERS,
                TextLimits.TOKENS);
    }

    @Override
    public void validateNestingDepth(int depth) throws StreamConstraintsException {
        keep(
                depth <= TextLimits.DEPTH,
                "objects and lists in the body may lie at most " + TextLimits.DEPTH + " deep in each other");
    }

    @Override
    public void validateTokenCount(long count) throws StreamConstraintsException {
        keep(
                count <= TextLimits.TOKENS,
                "the body may have at most " + TextLimits.TOKENS + " names, values and brackets");
    }

    @Override
    public void validateFPLength(int length) throws StreamConstraintsException {
        validateIntegerLength(length);
    }

    @Override
    public void validateIntegerLength(int length) throws StreamConstraintsException {
        keep(
                length <= TextLimits.NUMBER_DIGITS,
                "a number in the body may have at most " + TextLimits.NUMBER_DIGITS + " digits");
    }

    @Override
    public void validateStringLength(int length) throws StreamConstraintsException {
        keep(
                length <= TextLimits.TEXT_CHARACTERS,
                "a text in the body may have at most " + TextLimits.TEXT_CHARACTERS + " characters");
    }

    @Override
    public void validateNameLength(int length) throws StreamConstraintsException {
        keep(
                length <= TextLimits.NAME_CHARACTERS,
                "a name in the body may have at most " + TextLimits.NAME_CHARACTERS + " characters");
    }

    private static void keep(boolean within, String limit) throws StreamConstraintsException {
        if (!within) {
            throw new StreamConstraintsException(limit);
        }
    }
}
