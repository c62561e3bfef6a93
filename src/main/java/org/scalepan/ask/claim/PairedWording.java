package org.scalepan.ask.claim;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.scalepan.ask.Side;
import org.scalepan.factors.Library;
import org.scalepan.literature.Borrowed;
import org.scalepan.literature.PairedStudy;

/** Says of the ratios that single papers give whether they reach what is claimed. */
final class PairedWording {
    private final Library library;
    private final ClaimQuestion question;
    private final Side side;
    private final List<PairedFinding> paired;

    PairedWording(Library library, ClaimQuestion question, Side side, List<PairedFinding> paired) {
        this.library = library;
        this.question = question;
        this.side = side;
        this.paired = paired;
    }

    /** {@code 0 of 1 ratio out of one paper reaches 100 times: 5.5 to 13 in Oonincx & de Boer 2012.} */
    Optional<String> sentence() {
        if (paired.isEmpty() || question.claimed().times().isEmpty()) {
            return Optional.empty();
        }
        long agreeing = paired.stream()
                .filter(one -> one.reaches(question.times()) == PairedFinding.Reach.YES)
                .count();
        long straddling = paired.stream()
                .filter(one -> one.reaches(question.times()) == PairedFinding.Reach.STRADDLES)
                .count();
        String found = paired.stream().map(this::found).collect(Collectors.joining("; "));
        return Optional.of(agreeing + " of " + paired.size() + (paired.size() == 1 ? " ratio" : " ratios")
                + " out of one paper " + (paired.size() == 1 ? "is" : "are")
                + (question.times() == 1 ? " above 1" : " at least " + question.timesInWords() + " times")
                + (straddling > 0 ? ", " + straddling + " lies about it" : "") + ": "
                + found + ".");
    }

    private String found(PairedFinding one) {
        String said = one.band() + " times " + BasisWording.of(one.basis());
        // What is computed here is not the paper's own sentence, and must not be quoted as if it were.
        return one.study().origin() == PairedStudy.Origin.PRINTED
                ? said + " in " + label(one.study().study()) + " (printed" + borrowed(one, "; ") + ")"
                : said + ", computed here from two results of "
                        + label(one.study().study()) + " with their spreads" + borrowed(one, ", ");
    }

    /** Which side the paper did not measure itself: {@code its beef is that of de Vries & de Boer 2010}. */
    private String borrowed(PairedFinding one, String before) {
        if (one.study().borrowed().isGathered()) {
            return before + "both out of the literature";
        }
        return Stream.concat(
                        one.study().borrowed().product().map(from -> takenFrom(side.words(), from)).stream(),
                        one
                                .study()
                                .borrowed()
                                .reference()
                                .map(from -> takenFrom(question.referenceWords(), from))
                                .stream())
                .map(text -> before + text)
                .collect(Collectors.joining());
    }

    private String takenFrom(String words, String from) {
        return "its " + words + " is "
                + (from.equals(Borrowed.LITERATURE) ? "out of the literature" : "that of " + label(from));
    }

    private String label(String source) {
        return library.reference(source).map(reference -> reference.label()).orElse(source);
    }
}
