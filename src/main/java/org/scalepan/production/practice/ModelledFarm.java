package org.scalepan.production.practice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.scalepan.factors.Grade;
import org.scalepan.factors.ReferenceFarm;
import org.scalepan.factors.ReferenceFarm.PracticeInput;
import org.scalepan.factors.ReferenceFarm.UncountedInput;
import org.scalepan.production.Gap;
import org.scalepan.production.Inventory;
import org.scalepan.production.records.EditableRecords;
import org.scalepan.words.Message;

/**
 * A reference farm with its year computed: what published practice gives by the rules that records are computed by. It is no study, and
 * nobody's farm.
 *
 * @param farm the practice, with the rows behind each number
 * @param records the same as records of a farm, its ranges uncertain numbers
 * @param inventory what they come to
 */
public record ModelledFarm(ReferenceFarm farm, EditableRecords records, Inventory inventory) {

    static ModelledFarm of(ReferenceFarm farm, EditableRecords records, Inventory computed) {
        return new ModelledFarm(farm, records, withUncounted(farm, computed));
    }

    /** What the practice leaves out is a gap of the inventory, also where lines of the same kind are recorded. */
    private static Inventory withUncounted(ReferenceFarm farm, Inventory computed) {
        List<Gap> gaps = new ArrayList<>(computed.gaps());
        for (UncountedInput input : farm.uncounted()) {
            gaps.removeIf(gap -> gap.field().equals(input.field()) && gap.kind() != Gap.Kind.FILLED);
            gaps.add(
                    input.bounds().isEmpty()
                            ? Gap.cutOff(input.field(), Gap.ALL, Message.verbatim(input.why()))
                            : Gap.notCounted(input.field(), input.bounds(), Message.verbatim(input.why())));
        }
        return computed.withGaps(gaps);
    }

    /** The ids of all rows that its inputs rest on, each once. */
    public List<String> rows() {
        return farm.inputs().stream()
                .flatMap(input -> input.rowIds().stream())
                .distinct()
                .toList();
    }

    /** The lowest grade of its inputs. */
    public Optional<Grade> lowestGrade() {
        return farm.inputs().stream()
                .map(PracticeInput::grade)
                .flatMap(Optional::stream)
                .reduce((one, other) -> one.isAtLeast(other) ? other : one);
    }
}
