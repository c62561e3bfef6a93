package org.scalepan.ask.farm;

import java.util.Optional;
import java.util.function.DoubleFunction;
import org.scalepan.production.records.EditableRecords;
import org.scalepan.words.Message;

/**
 * One number in a farm's records that can be put to another value. Where several records make it together, or it follows from
 * others, it may stand beyond the limits of a single one; its own limits then reach as far as it does.
 *
 * @param id as a question names it, such as {@code feed:wheat-bran}
 * @param message as a sentence says it
 * @param unit of its value; empty for a share
 * @param present its value as recorded, or as the library fills it
 * @param least the lowest value that the records may have
 * @param most the highest
 * @param along what changes along with it, when anything does
 * @param at the records with this entry at a value between {@code least} and {@code most}
 */
public record RecordInput(
        String id,
        Message message,
        String unit,
        double present,
        double least,
        double most,
        Optional<Message> along,
        DoubleFunction<EditableRecords> at) {
    public RecordInput {
        least = present > 0 ? Math.min(least, present) : least;
        most = Math.max(most, present);
        if (!(least <= present && present <= most)) {
            throw new IllegalArgumentException(
                    id + " must lie within " + least + " and " + most + ", not at " + present);
        }
    }

    /** As an English sentence says it. */
    public String words() {
        return message.english();
    }

    /** A value moved into the limits of this entry. */
    public double within(double value) {
        return Math.min(most, Math.max(least, value));
    }
}
