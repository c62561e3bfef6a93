package org.scalepan.cite;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ch.difty.kris.KRis;
import ch.difty.kris.domain.RisRecord;
import java.util.Collection;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.scalepan.Libraries;

/** RIS as another program reads it: the whole bibliography is read back with KRis 0.5.3, which is not ours. */
class RisImportTest {
    private static final List<Reference> REFERENCES =
            List.copyOf(Libraries.bundled().references().values());

    private static List<RisRecord> imported() {
        return KRis.processList(Ris.write(REFERENCES).lines().toList());
    }

    @Test
    void every_reference_of_the_library_is_imported_once_and_in_order() {
        assertTrue(REFERENCES.size() > 100, "there is something to import");
        assertEquals(
                REFERENCES.stream().map(Reference::id).toList(),
                imported().stream().map(RisRecord::getLabel).toList());
    }

    @Test
    void title_authors_year_and_doi_arrive_as_they_were_sent() {
        List<RisRecord> imported = imported();
        for (int i = 0; i < imported.size(); i++) {
            Reference sent = REFERENCES.get(i);
            RisRecord got = imported.get(i);
            assertEquals(OneLine.of(sent.title()), got.getTitle(), sent.id());
            assertEquals(sent.doi().orElse(null), got.getDoi(), sent.id());
            assertEquals(
                    sent.year().isPresent() ? Integer.toString(sent.year().getAsInt()) : null,
                    got.getPublicationYear(),
                    sent.id());
            assertTrue(got.getAuthors().size() >= sent.authors().size(), sent.id());
        }
        assertEquals(
                List.of("Oonincx, Dennis G. A. B.", "de Boer, Imke J. M."),
                KRis.processList(Ris.write(List.of(SampleReferences.oonincx()))
                                .lines()
                                .toList())
                        .stream()
                        .map(RisRecord::getAuthors)
                        .flatMap(Collection::stream)
                        .toList());
    }
}
