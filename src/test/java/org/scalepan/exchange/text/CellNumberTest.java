package org.scalepan.exchange.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CellNumberTest {
    @Test
    void a_number_is_read_to_the_bit_as_the_parser_of_the_platform_reads_it() {
        Random random = new Random(20261125);
        for (int i = 0; i < 100_000; i++) {
            String cell = BigDecimal.valueOf(random.nextLong() >>> random.nextInt(63), random.nextInt(20))
                    .toPlainString();
            boolean accepted = cell.matches("-?\\d{1,15}(\\.\\d{1,25})?");
            assertEquals(accepted ? Double.parseDouble(cell) : Double.NaN, CellNumber.read(cell, '.'), 0.0, cell);
            assertEquals(
                    accepted ? Double.parseDouble(cell) : Double.NaN,
                    CellNumber.read(cell.replace('.', ','), ','),
                    0.0,
                    cell);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "0",
                "00012",
                "1e3",
                "2.5E-3",
                "-4",
                "-0",
                "123456789012345",
                "0.123456789012345",
                "0.30000000000000004",
                "0.00012345678901234567"
            })
    void exponents_signs_and_leading_zeros_are_numbers(String cell) {
        assertEquals(Double.parseDouble(cell), CellNumber.read(cell, '.'), 0.0);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", ".", "1.", ".5", "1,5", "1 000", "+1", "0x10", "NaN", "1e999", "1234567890123456", "1d"})
    void anything_else_is_not_a_number(String cell) {
        assertEquals(Double.NaN, CellNumber.read(cell, '.'));
    }

    @Test
    void with_a_decimal_comma_a_point_is_not_a_decimal_sign() {
        assertEquals(1.5, CellNumber.read("1,5", ','), 0.0);
        assertEquals(Double.NaN, CellNumber.read("1.5", ','));
    }
}
