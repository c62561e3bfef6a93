package org.scalepan.ask.claim;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.scalepan.ask.Side;
import org.scalepan.factors.Library;
import org.scalepan.literature.Borrowed;
import org.scalepan.literature.PairedStudy;
import org.scalepan.words.DisplayName;
import org.scalepan.words.Language;
import org.scalepan.words.Listing;
import org.scalepan.words.Message;

/** Says of the ratios that single papers give whether they reach what is claimed. */
final class PairedWording {
    private final Library library;
    private final ClaimQuestion question;
    private final Side side;
    private final List<PairedFinding> paired;
    private final Language language;

    PairedWording(Library library, ClaimQuestion question, Side side, List<PairedFinding> paired, Language language) {
        this.language = language;
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
        int straddling = reaching(PairedFinding.Reach.STRADDLES);
        String key = (question.times() == 1 ? "paired-claim.above" : "paired-claim.times")
                + (straddling > 0 ? ".straddling" : "");
        return Optional.of(language.say(
                key,
                "agreeing",
                reaching(PairedFinding.Reach.YES),
                "n",
                paired.size(),
                "times",
                question.timesInWords(),
                "straddling",
                straddling,
                "found",
                Listing.semicolons(paired.stream().map(this::found).toList())));
    }

    private int reaching(PairedFinding.Reach reach) {
        return (int) paired.stream()
                .filter(one -> one.reaches(question.times()) == reach)
                .count();
    }

    private Message found(PairedFinding one) {
        // What is computed here is not the paper's own sentence, and must not be quoted as if it were.
        String origin = one.study().origin() == PairedStudy.Origin.PRINTED ? "printed" : "computed";
        List<Message> borrowed = borrowed(one);
        return Message.of(
                "paired-found." + origin + (borrowed.isEmpty() ? "" : ".borrowed"),
                "band",
                one.band(language),
                "basis",
                BasisWording.of(one.basis()),
                "label",
                label(one.study().study()),
                "borrowed",
                origin.equals("printed") ? Listing.semicolons(borrowed) : Listing.commas(borrowed));
    }

    /** Which side the paper did not measure itself: {@code its beef is that of de Vries & de Boer 2010}. */
    private List<Message> borrowed(PairedFinding one) {
        Borrowed borrowed = one.study().borrowed();
        if (borrowed.isGathered()) {
            return List.of(Message.of("borrowed.both"));
        }
        return Stream.concat(
                        borrowed.product().map(from -> takenFrom(side.name(), from)).stream(),
                        borrowed.reference().map(from -> takenFrom(question.referenceName(), from)).stream())
                .toList();
    }

    private Message takenFrom(DisplayName name, String from) {
        return from.equals(Borrowed.LITERATURE)
                ? Message.of("borrowed.literature", "name", name)
                : Message.of("borrowed.from", "name", name, "label", label(from));
    }

    private String label(String source) {
        return library.reference(source).map(reference -> reference.label()).orElse(source);
    }
}
